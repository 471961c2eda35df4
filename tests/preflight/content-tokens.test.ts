import { describe, expect, it } from 'vitest';
import { operationsOf } from '../../src/preflight/content-tokens.ts';

const parse = (source: string) => operationsOf(new TextEncoder().encode(source));

// Examples follow ISO 32000-1 7.3: numbers, strings, names, arrays, dictionaries.
describe('operationsOf', () => {
  it('reads numbers as ISO 32000-1 7.3.3 writes them', () => {
    const [operation] = parse('34.5 -3.62 +123.6 4. -.002 0 re');
    expect(operation).toEqual({
      operator: 're',
      operands: [34.5, -3.62, 123.6, 4, -0.002, 0].map(value => ({ kind: 'number', value })),
    });
  });

  it('reads strings with nesting, escapes, octal codes and hexadecimal digits', () => {
    const bytes = (source: string) => {
      const [operand] = parse(`${source} Tj`)[0]!.operands;
      return operand?.kind === 'string' ? String.fromCharCode(...operand.bytes) : undefined;
    };
    expect(bytes('(a (nested) pair)')).toBe('a (nested) pair');
    expect(bytes('(\\(\\)\\\\\\n\\053\\53)')).toBe('()\\\n++');
    expect(bytes('<901FA3>')).toBe('\u0090\u001f£');
    expect(bytes('<90 1FA>')).toBe('\u0090\u001f\u00a0');
  });

  it('reads names, arrays, dictionaries and comments', () => {
    const [first, second] = parse('/Lime#20Green cs % BT (x) Tj\n/P <</MCID 3 /A [/B (c)]>> BDC');
    expect(first).toEqual({ operator: 'cs', operands: [{ kind: 'name', value: 'Lime Green' }] });
    const dict = second!.operands[1]!;
    expect(dict.kind === 'dict' && [...dict.entries.keys()]).toEqual(['MCID', 'A']);
  });

  it.each(['[ 1 2', '<< /A 1', '[ BT ]', ') Tj'])('refuses %s', source => {
    expect(() => parse(source)).toThrow(SyntaxError);
  });
});
