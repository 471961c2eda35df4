import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/report/diagnostic.ts';
import { nearest } from '../../src/report/nearest.ts';
import { renderJson, renderText } from '../../src/report/render.ts';

const finding: Diagnostic = {
  code: 'bad-value',
  severity: 'error',
  message: '`1,5` has a decimal comma',
  hint: 'write `1.5`',
  at: { file: 'cleaner.yaml', line: 21, column: 14 },
  path: 'formula[1].percent',
  excerpt: '    percent: 1,5',
};

describe('renderText', () => {
  it('shows place, message, line with caret, and fix', () => {
    expect(renderText([finding])).toBe(
      [
        'cleaner.yaml:21:14: error: `1,5` has a decimal comma',
        '    percent: 1,5',
        '             ^',
        '  -> write `1.5`',
        '',
      ].join('\n'),
    );
  });

  it('puts the caret under the place in a long line', () => {
    const excerpt = `note: ${'x'.repeat(300)}Y${'z'.repeat(300)}`;
    const [, line, caret] = renderText([
      { ...finding, excerpt, at: { file: 'f', line: 1, column: 307 } },
    ]).split('\n');
    expect(line![caret!.indexOf('^')]).toBe('Y');
    expect(line!.length).toBeLessThan(120);
  });

  it('names the path where there is no line', () => {
    expect(renderText([{ ...finding, at: { file: 'record' }, excerpt: undefined }])).toMatch(
      /^record, formula\[1\]\.percent: error: /,
    );
  });

  it('lets no input steer the terminal', () => {
    const out = renderText([
      { ...finding, message: 'a\u001b[31mb', excerpt: '    percent: \u001b]0;x\u0007' },
    ]);
    expect([...out].filter(char => char < ' ' && char !== '\n')).toEqual([]);
  });

  it('cites the law where there is a paragraph', () => {
    expect(renderText([{ ...finding, cite: '16 CFR 500.19' }])).toContain('(16 CFR 500.19)');
  });
});

describe('renderJson', () => {
  it('holds the same facts as plain values', () => {
    expect(JSON.parse(JSON.stringify(renderJson([finding])))).toEqual([
      {
        code: 'bad-value',
        severity: 'error',
        message: '`1,5` has a decimal comma',
        hint: 'write `1.5`',
        file: 'cleaner.yaml',
        line: 21,
        column: 14,
        path: 'formula[1].percent',
        excerpt: '    percent: 1,5',
      },
    ]);
  });
});

describe('nearest', () => {
  it('finds the slip, and nothing where nothing is near', () => {
    expect(nearest('percnt', ['name', 'percent', 'cas'])).toBe('percent');
    expect(nearest('advised_against', ['advised-against', 'use'])).toBe('advised-against');
    expect(nearest('PH', ['pH', 'density'])).toBe('pH');
    expect(nearest('warranty', ['name', 'percent', 'cas'])).toBeNull();
  });
});
