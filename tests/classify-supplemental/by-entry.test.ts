import { describe, expect, it } from 'vitest';
import { asked, codes, supplementalOf } from './_context.ts';

const line = (name: string, cas: string, percent: number) => ({ name, cas, percent });
const corrosive = {
  name: 'corrosive part',
  percent: 10,
  hazards: ['Skin Corr. 1B', 'Eye Dam. 1'],
  source: 'test',
};
const harmful = { name: 'harmful part', percent: 60, hazards: ['Acute Tox. 4 (oral)'], source: 'test' };

describe('EUH031 and EUH032 at the limits that CLP Annex VI Table 3 lists', () => {
  // Annex VI Table 3 (ATP 23): sodium hypochlorite C >= 5 %, ammonium polysulphides C >= 1 %,
  // troclosene sodium C >= 10 %, cadmium cyanide EUH032 C >= 1 %.
  it.each([
    ['sodium hypochlorite', '7681-52-9', 5, 'EUH031'],
    ['ammonium polysulphides', '9080-17-5', 1, 'EUH031'],
    ['troclosene sodium', '2893-78-9', 10, 'EUH031'],
    ['cadmium cyanide', '542-83-6', 1, 'EUH032'],
  ])('%s, CAS %s, from %s percent', async (name, cas, limit, code) => {
    const at = await supplementalOf([line(name, cas, limit), corrosive]);
    expect(codes(at)).toContain(code);
    expect(at.statements.find(each => each.code === code)!.because).toMatchObject({
      total: limit,
      limit,
      kind: 'sum',
    });
    expect(codes(await supplementalOf([line(name, cas, limit - 0.01), corrosive]))).not.toContain(code);
  });

  it('takes 1 % for an entry without a limit, or asks where the record chooses so', async () => {
    const metabisulfite = (percent: number) => [
      line('sodium metabisulphite', '7681-57-4', percent),
      corrosive,
    ];
    expect(codes(await supplementalOf(metabisulfite(1)))).toContain('EUH031');
    expect(codes(await supplementalOf(metabisulfite(0.99)))).not.toContain('EUH031');
    const choosing = await supplementalOf(metabisulfite(1), { choices: { 'euh-entry-limit': 'ask' } });
    expect(codes(choosing)).not.toContain('EUH031');
    expect(asked(choosing)).toContain('EUH031');
  });

  // Annex II, opening of part 1: "substances and mixtures classified for physical, health or environmental hazards"
  it('stays off a mixture that is not classified', async () => {
    const unclassified = await supplementalOf([
      { name: 'mild solvent', percent: 50, cas: '67-64-1', hazards: [], source: 'test' },
      line('troclosene sodium', '2893-78-9', 0.0001),
    ]);
    expect(codes(unclassified)).toEqual([]);
  });
});

// Annex II 1.2.5: "equal to, or greater than 0,1 %"
it('EUH070 from 0.1 % of a substance so labelled', async () => {
  expect(codes(await supplementalOf([line('pyrithione sodium', '15922-78-8', 0.1), harmful]))).toContain(
    'EUH070',
  );
  expect(
    codes(await supplementalOf([line('pyrithione sodium', '15922-78-8', 0.099), harmful])),
  ).not.toContain('EUH070');
});

describe('EUH066 (Annex II 1.2.4)', () => {
  // Annex VI Table 3 prints EUH066 for acetone and ethyl acetate.
  it('is given from a fifth of such substances together and asked below', async () => {
    expect(
      codes(await supplementalOf([line('acetone', '67-64-1', 12), line('ethyl acetate', '141-78-6', 8)])),
    ).toContain('EUH066');
    const less = await supplementalOf([line('acetone', '67-64-1', 15), harmful]);
    expect(codes(less)).not.toContain('EUH066');
    expect(asked(less)).toContain('EUH066');
  });

  // 1.2.4: "which do not meet the criteria for skin irritancy"
  it('is not given beside skin corrosion or irritation', async () => {
    const both = await supplementalOf([line('acetone', '67-64-1', 50), corrosive]);
    expect([...codes(both), ...asked(both)]).not.toContain('EUH066');
  });
});

describe('EUH071 (Annex II 1.2.6)', () => {
  // Annex VI Table 3 prints EUH071 for glutaral and formic acid.
  it('passes on from a substance that is corrosive to the respiratory tract', async () => {
    expect(codes(await supplementalOf([line('glutaral', '111-30-8', 20)]))).toContain('EUH071');
  });

  it('is asked for a corrosive mixture without inhalation data (b)', async () => {
    const mixture = await supplementalOf([corrosive]);
    expect(codes(mixture)).not.toContain('EUH071');
    expect(asked(mixture)).toContain('EUH071');
  });
});
