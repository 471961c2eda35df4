import { describe, expect, it } from 'vitest';
import { noFiles } from '../../src/record/files.ts';
import { parseRecordValue } from '../../src/record/load.ts';

const amountOf = (percent: unknown) => {
  const outcome = parseRecordValue(
    {
      labelwright: 'product/1',
      name: 'A',
      code: 'A',
      form: 'liquid',
      formula: [
        { name: 'x', percent },
        { name: 'water', amount: 'balance' },
      ],
    },
    noFiles,
  );
  if (!outcome.ok) return outcome.diagnostics.map(({ message, hint }) => `${message} -> ${hint}`).join();
  const { amount } = outcome.value.formula[0]!;
  if (amount.kind !== 'percent') throw new Error('no percent');
  const { low, high, lowOpen, highOpen } = amount;
  return `${lowOpen ? '(' : '['}${low.value}, ${high.value}${highOpen ? ')' : ']'}`;
};

// Ways in which section 3 of supplier sheets prints concentrations; CLP Annex II 3.2 and App. D ask for ranges, not
// for one way to write them.
describe('percentages as supplier sheets print them', () => {
  it.each([
    ['5-10', '[5, 10]'],
    ['5 - 10 %', '[5, 10]'],
    ['5–10%', '[5, 10]'],
    ['5 % - 10 %', '[5, 10]'],
    ['5 to 10 %', '[5, 10]'],
    ['>= 5 - < 10', '[5, 10)'],
    ['≥5 – <10 %', '[5, 10)'],
    ['> 5 - <= 10', '(5, 10]'],
    ['≥ 2.5 - ≤ 10 % w/w', '[2.5, 10]'],
    ['< 1', '[0, 1)'],
    ['<1 %', '[0, 1)'],
    ['<= 5', '[0, 5]'],
    ['≤ 5', '[0, 5]'],
    ['1.5 %', '[1.5, 1.5]'],
    ['3 wt%', '[3, 3]'],
    [1.5, '[1.5, 1.5]'],
    [[1, 2], '[1, 2]'],
  ])('%j', (written, read) => {
    expect(amountOf(written)).toBe(read);
  });

  it.each([
    ['> 5', /no upper end/],
    ['>= 5 %', /no upper end/],
    ['10-5', /higher end/],
    ['< 5 - 10', /wrong way round/],
    ['5 - 110', /not between 0 and 100/],
    ['1,5 - 2', /decimal comma.*`1\.5`/],
    ['≤ 5,5', /decimal comma.*`5\.5`/],
    ['ca. 5', /write the range/],
    ['trace', /not a number/],
    ['5 - 10 - 15', /./],
    ['-5', /not between/],
  ])('%j is refused', (written, said) => {
    expect(amountOf(written)).toMatch(said);
    expect(amountOf(written)).not.toMatch(/^[[(]/);
  });
});
