import { describe, expect, it } from 'vitest';
import { sheetJson } from '../../../../src/document/sheet.ts';
import { inputAround } from '../sheet-input.ts';

// Regulation (EC) No 1907/2006, Annex II, 3.2.1 and 3.2.2; generic cut-off values of CLP Annex I, Table 1.1 (read);
// CLP Annex II, 2.10 (read) for mixtures that are not classified. See hazard-data/eu-clp/sheet/cut-offs.json for what is
// from memory.

const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
/** Makes the mixture a classified one without touching the ingredient in question. */
const irritant = { name: 'base', percent: 50, hazards: ['Eye Irrit. 2'], source: 'test' };

const listed = async (
  line: Record<string, unknown>,
  more: Record<string, unknown> = {},
  classified = true,
  basis: 'eu-clp' | 'un-ghs' = 'eu-clp',
): Promise<boolean> => {
  const formula = [{ name: 'trial', source: 'test', ...line }, ...(classified ? [irritant] : []), water];
  const input = await inputAround({ formula, ...more }, {}, basis);
  expect(input.classification.hazards.length > 0).toBe(classified);
  const { table = [] } = sheetJson(input).sections[2]!.items[0]!;
  return table.some(row => row.Substance === 'trial');
};

describe('which substances section 3.2 indicates', () => {
  it.each([
    ['Acute Tox. 3 (oral)', 0.1],
    ['Acute Tox. 4 (oral)', 1],
    ['Skin Corr. 1B', 1],
    ['Skin Irrit. 2', 1],
    ['Eye Dam. 1', 1],
    ['Resp. Sens. 1', 0.1],
    ['Resp. Sens. 1A', 0.01],
    ['Skin Sens. 1B', 0.1],
    ['Skin Sens. 1A', 0.01],
    ['Muta. 1B', 0.1],
    ['Muta. 2', 1],
    ['Carc. 2', 0.1],
    ['Repr. 2', 0.1],
    ['Lact.', 0.1],
    ['STOT SE 3 (narcotic effects)', 1],
    ['STOT RE 2', 1],
    ['Asp. Tox. 1', 1],
    ['Aquatic Acute 1', 0.1],
    ['Aquatic Chronic 1', 0.1],
    ['Aquatic Chronic 3', 1],
    ['Ozone 1', 0.1],
  ] as const)('%s from %f %', async (hazard, from) => {
    expect(await listed({ hazards: [hazard], percent: from })).toBe(true);
    // A class that the mixture takes from it is a cause and is listed below its cut-off as well.
    if (!/^(?:Muta|Carc|Ozone)/u.test(hazard))
      expect(await listed({ hazards: [hazard], percent: Number((from * 0.9).toFixed(4)) })).toBe(false);
  });

  it('divides the cut-off of aquatic classes by the M-factor', async () => {
    const line = { hazards: ['Aquatic Chronic 1'], 'm-factors': { chronic: 10 } };
    expect(await listed({ ...line, percent: 0.01 })).toBe(true);
    expect(await listed({ ...line, percent: 0.009 })).toBe(false);
  });

  it('takes a lower specific limit, and a tenth of that of a sensitizer', async () => {
    const eye = { hazards: ['Eye Dam. 1'], limits: ['Eye Dam. 1; C >= 0.5'] };
    expect(await listed({ ...eye, percent: 0.5 })).toBe(true);
    expect(await listed({ hazards: ['Eye Dam. 1'], percent: 0.5 })).toBe(false);
    const skin = { hazards: ['Skin Sens. 1A'], limits: ['Skin Sens. 1A; C >= 0.0015'] };
    expect(await listed({ ...skin, percent: 0.00015 })).toBe(true);
    expect(await listed({ ...skin, percent: 0.00014 })).toBe(false);
  });

  it('counts hazards of a mixture that is not classified by 3.2.2', async () => {
    expect(await listed({ hazards: ['Skin Irrit. 2'], percent: 1 }, {}, false)).toBe(true);
    expect(await listed({ hazards: ['Skin Irrit. 2'], percent: 0.99 }, {}, false)).toBe(false);
    expect(await listed({ hazards: ['Skin Sens. 1B'], percent: 0.1 }, {}, false)).toBe(true);
    expect(await listed({ hazards: ['Acute Tox. 3 (oral)'], percent: 0.5 }, {}, false)).toBe(false);
  });

  it('indicates PBT substances and endocrine disruptors from 0.1 %, and those with a Union limit', async () => {
    const of = (more: Record<string, unknown>) => ({ sds: { ingredients: [{ of: 'trial', ...more }] } });
    for (const key of ['pbt', 'endocrine', 'candidate-list']) {
      expect(await listed({ hazards: [], percent: 0.1 }, of({ [key]: 'supplier sheet' }))).toBe(true);
      expect(await listed({ hazards: [], percent: 0.09 }, of({ [key]: 'supplier sheet' }))).toBe(false);
    }
    const limit = { list: 'Union limit', value: '5 mg/m3' };
    expect(await listed({ hazards: [], percent: 0.05 }, of({ limits: [{ ...limit, union: true }] }))).toBe(
      true,
    );
    expect(await listed({ hazards: [], percent: 0.05 }, of({ limits: [limit] }))).toBe(false);
    expect(
      await listed({ hazards: [], percent: 0.9 }, of({ limits: [{ ...limit, union: true }] }), false),
    ).toBe(false);
  });

  it('counts by GHS Table 1.5.1 on a sheet to the GHS', async () => {
    expect(await listed({ hazards: ['Acute Tox. 3 (oral)'], percent: 0.5 }, {}, true, 'un-ghs')).toBe(false);
    expect(await listed({ hazards: ['Acute Tox. 3 (oral)'], percent: 1 }, {}, true, 'un-ghs')).toBe(true);
  });
});
