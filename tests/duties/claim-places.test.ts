import { describe, expect, it } from 'vitest';
import { claimsOf } from '../../src/draft/claim-findings.ts';
import { parseRecordText } from '../../src/record/load.ts';
import { en } from '../../src/words/en/index.ts';

const env = { statFile: () => ({ kind: 'missing' }) as const, readFile: () => new Uint8Array() };
const none = {
  signalWord: null,
  pictograms: [],
  hazardStatements: [],
  precautionaryStatements: [],
  supplemental: [],
  omitted: [],
  missing: [],
  conditional: [],
  proposed: [],
  unused: [],
};

const text = [
  'labelwright: product/1',
  'name: Eco-friendly Cleaner',
  'code: X-1',
  'form: liquid',
  'formula:',
  '  - {name: water, percent: 100}',
  'copy:',
  "  tagline: 'Kills germs; it''s made in the USA'",
  '  directions:',
  '    - Apply to the wall.',
  '    - >-',
  '      Wait, then rinse. Prevents',
  '      mold for weeks.',
  '',
].join('\n');

describe('where a claim stands', () => {
  const read = parseRecordText(text, 'x.yaml', env);
  if (!read.ok) throw new Error(JSON.stringify(read.diagnostics));
  const claims = claimsOf(read.value, none);

  it.each([
    ['Eco-friendly', 'name', 2, 7],
    ['Kills germs', 'copy.tagline', 8, 13],
    ['made in the USA', 'copy.tagline', 8, 32],
    ['Prevents mold', 'copy.directions[1]', 12, 25],
  ])('%s', (words, path, line, column) => {
    const claim = claims.find(each => each.words === words);
    expect(claim).toMatchObject({ path });
    const lines = text.split('\n');
    expect(lines[line - 1]!.slice(column - 1, column + 2)).toBe(words.slice(0, 3));
    expect([claim!.at.line, claim!.at.column]).toEqual([line, column]);
  });

  it('has nothing to say of plain words, and leaves the record as it was', () => {
    expect(claims).toHaveLength(4);
    expect(read.value.copy.directions[0]).toBe('Apply to the wall.');
    for (const each of claims) expect(en.claim(each)).toContain(each.words);
  });
});
