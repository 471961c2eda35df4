import { describe, expect, it } from 'vitest';
import { asked, codes, supplementalOf, wordsOf } from './_context.ts';

const line = (name: string, cas: string, percent: number) => ({ name, cas, percent });
const known = (name: string, cas: string | null, percent: number, hazards: string[] = []) => ({
  name,
  ...(cas ? { cas } : {}),
  percent,
  hazards,
  source: 'test',
});

describe('EUH206: more than 1 % active chlorine, sold to the general public (Annex II 2.6)', () => {
  // One mole of hypochlorite oxidizes as one mole of Cl2: 70.90 / 74.44 = 0.9525.
  const bleach = (percent: number) => [line('sodium hypochlorite', '7681-52-9', percent)];
  it.each([
    [1.06, true, ['EUH206'], []],
    [1.04, true, [], []],
    [1.06, undefined, [], ['EUH206']],
    [1.06, false, [], []],
  ])('%s percent sodium hypochlorite, general public %s', async (percent, generalPublic, due, open) => {
    const found = await supplementalOf(
      bleach(percent),
      generalPublic === undefined ? {} : { soldAs: { generalPublic } },
    );
    expect(codes(found).filter(code => code === 'EUH206')).toEqual(due);
    expect(asked(found).filter(code => code === 'EUH206')).toEqual(open);
  });

  it('adds up different sources of active chlorine', async () => {
    const both = [
      line('sodium hypochlorite', '7681-52-9', 0.6),
      line('calcium hypochlorite', '7778-54-3', 0.6),
    ];
    expect(codes(await supplementalOf(both, { soldAs: { generalPublic: true } }))).toContain('EUH206');
  });
});

describe('EUH204 and EUH205 (Annex II 2.4, 2.5)', () => {
  it('names isocyanates at any concentration, by number or by name', async () => {
    expect(codes(await supplementalOf([line('MDI', '101-68-8', 0.01)]))).toContain('EUH204');
    expect(codes(await supplementalOf([known('isocyanate prepolymer', null, 5)]))).toContain('EUH204');
    expect(
      codes(await supplementalOf([known('troclosene, a chlorinated isocyanurate', null, 5)])),
    ).not.toContain('EUH204');
  });

  it('names listed epoxy constituents and asks for the molecular weight of others', async () => {
    expect(codes(await supplementalOf([line('epoxy resin', '25068-38-6', 20)]))).toContain('EUH205');
    const other = await supplementalOf([known('solid epoxy resin', null, 20)]);
    expect(codes(other)).not.toContain('EUH205');
    expect(asked(other)).toContain('EUH205');
  });

  // 2.8: where the label bears the statement of 2.4 or 2.5, EUH208 may be left off for that substance.
  it('does not repeat the same substance in EUH208', async () => {
    const found = codes(await supplementalOf([known('MDI', '101-68-8', 0.2, ['Skin Sens. 1'])]));
    expect(found).toContain('EUH204');
    expect(found).not.toContain('EUH208');
  });
});

describe('EUH203: soluble chromium (VI) in cement above 0.0002 % (Annex II 2.3)', () => {
  const cement = known('Portland cement', '65997-15-1', 50, ['Skin Irrit. 2', 'Eye Dam. 1']);
  // Cr is 51.996 / 194.19 = 26.78 % of potassium chromate.
  const chromate = (percent: number) => known('potassium chromate', '7789-00-6', percent, ['Carc. 1B']);

  it('counts chromate by weight of the cement', async () => {
    expect(codes(await supplementalOf([cement, chromate(0.0004)], { form: 'solid' }))).toContain('EUH203');
    expect(codes(await supplementalOf([cement, chromate(0.0003)], { form: 'solid' }))).not.toContain(
      'EUH203',
    );
  });

  it('asks where the record names no chromate, and not where the mixture sensitizes skin', async () => {
    expect(asked(await supplementalOf([cement], { form: 'solid' }))).toContain('EUH203');
    const sensitizing = await supplementalOf([cement, known('hardener', null, 5, ['Skin Sens. 1'])], {
      form: 'solid',
    });
    expect([...codes(sensitizing), ...asked(sensitizing)]).not.toContain('EUH203');
  });
});

// 2.1: "exceeding 0,15 %", as weight of the metal; lead is 64.1 % of lead chromate.
it('EUH201 asks whether a mixture with lead is a paint', async () => {
  expect(asked(await supplementalOf([line('lead chromate', '7758-97-6', 0.24)]))).toContain('EUH201');
  expect(asked(await supplementalOf([line('lead chromate', '7758-97-6', 0.23)]))).not.toContain('EUH201');
});

describe('EUH209 and EUH209A (Annex II 2.9)', () => {
  const chlorinated = line('dichloromethane', '75-09-2', 50);
  const flashPoint = (written: string) => ({ properties: { 'flash-point': written } });

  it.each([
    ['none', 'Flam. Liq. 2', 5.1, ['EUH209']],
    ['none', 'Flam. Liq. 2', 5, []],
    ['none', 'Flam. Liq. 3', 5.1, ['EUH209A']],
    ['93 C (closed cup)', 'Flam. Liq. 3', 5.1, ['EUH209A']],
    ['60 C (closed cup)', 'Flam. Liq. 3', 5.1, []],
    ['94 C (closed cup)', 'Flam. Liq. 3', 5.1, []],
  ])('flash point %s, %s at %s percent', async (written, hazard, percent, due) => {
    const found = await supplementalOf(
      [chlorinated, known('solvent', null, percent, [hazard])],
      flashPoint(written),
    );
    expect(codes(found).filter(code => code.startsWith('EUH209'))).toEqual(due);
  });
});

describe('titanium dioxide (Annex II 2.12)', () => {
  const paint = (percent: number) => [known('titanium dioxide', '13463-67-7', percent)];

  // The Court of Justice confirmed the annulment of the classification on 1 August 2025 (C-71/23 P and C-82/23 P).
  it('is not labelled by default, and a warning says why', async () => {
    const found = await supplementalOf(paint(5), { form: 'solid' });
    expect(codes(found)).toEqual([]);
    expect(asked(found)).toContain('EUH212');
    expect(wordsOf(found.questions[0]!.warning)).toContain('C-71/23 P');
  });

  // European Chemicals Agency, 20 September 2021: solid mixtures from 1 %, and EUH210 beside it.
  it('is labelled from 1 % where the record takes the other reading', async () => {
    const choices = { 'titanium-dioxide': 'apply' };
    expect(codes(await supplementalOf(paint(1), { form: 'solid', choices }))).toEqual(['EUH210', 'EUH212']);
    expect(codes(await supplementalOf(paint(0.99), { form: 'solid', choices }))).toEqual([]);
    expect(asked(await supplementalOf(paint(1), { choices }))).toEqual(['EUH211']);
  });
});
