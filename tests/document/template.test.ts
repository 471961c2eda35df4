import { describe, expect, it } from 'vitest';
import { compileTemplate, findAll, TemplateError, textOf } from '../../src/document/template.ts';

describe('templates', () => {
  it('escapes values and gives them back as written', () => {
    const name = `A < B & "C" 'd' =\``;
    const root = compileTemplate(
      '<article><h1>{{name}}</h1><p class="x" alt="{{name}}">a {{name}}</p></article>',
    ).fill({ name });
    expect(root.children).toEqual([
      { name: 'h1', attributes: {}, children: [name] },
      { name: 'p', attributes: { class: 'x', alt: name }, children: [`a ${name}`] },
    ]);
  });

  it('collapses white space as a browser does and keeps no-break spaces', () => {
    const root = compileTemplate(
      '<article>\n  <p>\n one\n  <strong>two</strong>  three <br>\n four&nbsp;5\n</p>\n</article>',
    ).fill({});
    const [paragraph] = findAll(root, ({ name }) => name === 'p');
    expect(paragraph!.children).toEqual([
      'one ',
      { name: 'strong', attributes: {}, children: ['two'] },
      ' three',
      { name: 'br', attributes: {}, children: [] },
      'four\u00a05',
    ]);
    expect(textOf(paragraph!)).toBe('one two three four\u00a05');
  });

  it('offers partials and helpers', () => {
    const template = compileTemplate(
      '<article>{{> line}}{{#each list}}<p>{{counted @index}}{{shout this}}</p>{{/each}}</article>',
      { line: '<p>{{join list ", "}}</p>' },
      { shout: (text: string) => text.toUpperCase() },
    );
    const root = template.fill({ list: ['a', 'b'] });
    expect(findAll(root, ({ name }) => name === 'p').map(textOf)).toEqual(['a, b', '1A', '2B']);
  });

  it.each([
    ['a missing field', '<article><p>{{nothing}}</p></article>'],
    ['an element outside the subset', '<article><div></div></article>'],
    ['an attribute outside the subset', '<article><p onclick="x">a</p></article>'],
    ['unbalanced tags', '<article><p>a</article>'],
    ['an open element', '<article><p>a</p>'],
    ['text outside text elements', '<article>a</article>'],
    ['two roots', '<p>a</p><p>b</p>'],
    ['an unknown entity', '<p>&nope;</p>'],
    ['a bare angle bracket', '<p>a < b</p>'],
  ])('refuses %s', (_, source) => {
    expect(() => compileTemplate(source).fill({})).toThrow(TemplateError);
  });
});
