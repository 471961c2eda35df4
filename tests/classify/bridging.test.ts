import { describe, expect, it } from 'vitest';
import { evidenceFindings } from '../../src/draft/evidence-findings.ts';
import type { BridgingPrinciple } from '../../src/record/product-record.ts';
import { type BasisId, loadBasis } from '../../src/reference/basis.ts';
import { classifyLines, readRecord, recordAround } from '../support/cases.ts';

type Entry = Readonly<Record<string, unknown>>;

const bridged = (hazardClass: string, result: string, principle: string, more: Entry = {}): Entry => ({
  class: hazardClass,
  result,
  kind: 'bridging',
  principle,
  method: 'compared with batch 26-1',
  source: 'report 26-114',
  ...more,
});

async function faults(entry: Entry, basis: BasisId = 'us-hcs', form = 'aerosol') {
  const record = readRecord(
    recordAround({ form, formula: [{ name: 'water', percent: 100 }], evidence: [entry] }),
  );
  const loaded = await loadBasis(basis, '2026-11-25');
  if (!loaded.ok) throw new Error(basis);
  return evidenceFindings(record, loaded.value);
}

const principles: readonly BridgingPrinciple[] = [
  'dilution',
  'batching',
  'concentration',
  'interpolation',
  'substantially-similar',
  'aerosols',
];

// Sections of 29 CFR 1910.1200 App. A with a Category 1 result of each.
const sections: readonly (readonly [number, string, string])[] = [
  [1, 'Acute Tox.', 'Acute Tox. 1 (oral)'],
  [2, 'Skin Corr.', 'Skin Corr. 1'],
  [3, 'Eye Dam.', 'Eye Dam. 1'],
  [4, 'Resp. Sens.', 'Resp. Sens. 1'],
  [4, 'Skin Sens.', 'Skin Sens. 1'],
  [5, 'Muta.', 'Muta. 1B'],
  [6, 'Carc.', 'Carc. 1B'],
  [7, 'Repr.', 'Repr. 1B'],
  [8, 'STOT SE', 'STOT SE 1'],
  [9, 'STOT RE', 'STOT RE 1'],
  [10, 'Asp. Tox.', 'Asp. Tox. 1'],
];

/** Sections for which a principle holds, as A.0.5.1.1 to A.0.5.1.6 list them. */
const lawful: Readonly<Record<BridgingPrinciple, readonly number[]>> = {
  dilution: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
  batching: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
  concentration: [1, 2, 3, 4, 8, 9, 10],
  interpolation: [1, 2, 3, 4, 8, 9, 10],
  'substantially-similar': [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
  aerosols: [1, 2, 3, 4, 8, 9],
};

const pairs = principles.flatMap(principle =>
  sections.map(
    ([section, name, result]) => [principle, name, result, lawful[principle].includes(section)] as const,
  ),
);

describe('bridging principles', () => {
  it.each(pairs)('%s for %s as A.0.5.1 lists it', async (principle, name, result, holds) => {
    expect((await faults(bridged(name, result, principle))).length === 0).toBe(holds);
  });

  it('are refused with place, fix and paragraph (A.5.3.3)', async () => {
    expect(await faults(bridged('Muta.', 'not classified', 'interpolation', { reason: 'tested' }))).toEqual([
      {
        code: 'bridging-not-allowed',
        severity: 'error',
        message: 'the bridging principle `interpolation` does not hold for Muta.',
        hint: 'for Muta. there are dilution, batching, substantially-similar',
        at: { file: 'record' },
        path: 'evidence[0].principle',
        cite: '29 CFR 1910.1200 App. A, A.5.3.3, A.0.5.1.4',
      },
    ]);
  });

  // A.0.5.1.3: a mixture in Category 1, made stronger, stays in Category 1.
  it.each(['Skin Irrit. 2', 'not classified'])('concentration does not give %s', async result => {
    const [fault] = await faults(bridged('Skin Corr.', result, 'concentration'));
    expect(fault?.cite).toBe('29 CFR 1910.1200 App. A, A.0.5.1.3');
  });

  // A.0.5.1.6: an aerosol form of a tested mixture.
  it('aerosols does not hold for a liquid', async () => {
    const [fault] = await faults(bridged('Skin Corr.', 'Skin Corr. 1', 'aerosols'), 'us-hcs', 'liquid');
    expect(fault?.cite).toBe('29 CFR 1910.1200 App. A, A.0.5.1.6');
  });

  // A.0.5 is of health hazards; App. B and CLP 5.1.3 have no bridging.
  it('hold for no physical class and not for the ozone layer', async () => {
    expect(await faults(bridged('Flam. Liq.', 'Flam. Liq. 2', 'dilution'))).toHaveLength(1);
    expect(await faults(bridged('Met. Corr.', 'not classified', 'batching'))).toHaveLength(1);
    expect(await faults(bridged('Ozone', 'Ozone 1', 'batching'), 'eu-clp')).toHaveLength(1);
  });

  it('are no matter where the basis does not know the class', async () => {
    expect(await faults(bridged('Ozone', 'Ozone 1', 'batching'), 'us-hcs')).toEqual([]);
    expect(await faults(bridged('Aquatic Acute', 'Aquatic Acute 1', 'aerosols'), 'us-hcs')).toEqual([]);
  });

  // CLP 1.1.3.7 does not name 4.1.
  it('hold for the aquatic classes but for aerosols', async () => {
    for (const principle of principles)
      expect(await faults(bridged('Aquatic Acute', 'Aquatic Acute 1', principle), 'eu-clp')).toHaveLength(
        principle === 'aerosols' ? 1 : 0,
      );
  });

  it('do not concern tests', async () => {
    const { principle: _, ...test } = bridged('Flam. Liq.', 'Flam. Liq. 2', 'dilution', { kind: 'test' });
    expect(await faults(test)).toEqual([]);
  });
});

const irritant = { name: 'irritant', percent: 50, hazards: ['Skin Irrit. 2'] };
const water = { name: 'water', amount: 'balance' };

describe('bridged results', () => {
  it('cite the paragraph of their class and of their principle', async () => {
    const cites = async (basis: BasisId, entry: Entry) =>
      (await classifyLines([irritant, water], basis, { evidence: [entry] })).otherClasses.find(
        each => each.class === 'Skin Corr./Irrit.',
      )!.because;
    const entry = bridged('Skin Irrit.', 'not classified', 'dilution');
    expect(await cites('us-hcs', entry)).toMatchObject({
      rule: 'bridging from a similar tested mixture by dilution',
      cite: '29 CFR 1910.1200 App. A, A.2.3.2, A.0.5.1.1',
    });
    expect((await cites('eu-clp', entry)).cite).toBe('CLP Annex I, 3.2.3.2, 1.1.3.1');
    expect((await cites('un-ghs', entry)).cite).toBe('UN GHS, 3.2.3.2, 1.3.2.3');
    const { principle: _, ...test } = bridged('Skin Irrit.', 'not classified', 'dilution', { kind: 'test' });
    expect(await cites('us-hcs', test)).toMatchObject({
      rule: 'test on the mixture itself',
      cite: '29 CFR 1910.1200 App. A, A.2.3.1',
    });
  });

  it('by a principle that does not hold leave the calculation as it is', async () => {
    const mutagen = { name: 'mutagen', percent: 1, hazards: ['Muta. 1B'] };
    const evidence = [bridged('Muta.', 'not classified', 'interpolation', { reason: 'tested' })];
    const { hazards, warnings } = await classifyLines([mutagen, water], 'us-hcs', { evidence });
    expect(hazards.map(({ code }) => code)).toEqual(['Muta. 1B']);
    expect(warnings).toContainEqual(
      expect.objectContaining({
        id: 'evidence-not-used',
        text: 'evidence on Muta. is not used: the bridging principle `interpolation` does not hold for Muta.',
        cite: '29 CFR 1910.1200 App. A, A.5.3.3, A.0.5.1.4',
      }),
    );
  });

  // A.10.3.2.1: not less than 10 % of aspiration toxicants.
  it.each([
    [10, true],
    [9.99, false],
  ])('by dilution need 10 %% of aspiration toxicants: %d', async (percent, holds) => {
    const toxicant = { name: 'white spirit', percent, hazards: ['Asp. Tox. 1'] };
    const evidence = [bridged('Asp. Tox.', 'Asp. Tox. 1', 'dilution')];
    const { hazards, warnings } = await classifyLines([toxicant, water], 'us-hcs', { evidence });
    expect(hazards.some(({ code }) => code === 'Asp. Tox. 1')).toBe(holds);
    const unused = warnings.filter(({ id }) => id === 'evidence-not-used').map(({ cite }) => cite);
    expect(unused).toEqual(holds ? [] : ['29 CFR 1910.1200 App. A, A.10.3.2.1']);
  });
});
