import { describe, expect, it } from 'vitest';
import { withBuildingBlocks } from '../../src/classify/building-blocks.ts';
import { type BasisId, basisIds, loadBasis } from '../../src/reference/basis.ts';
import type { Basis } from '../../src/reference/thresholds.ts';
import { classifyLines } from '../support/cases.ts';

type Line = Readonly<Record<string, unknown>>;

const part = (percent: number, hazard: string | null, more: Line = {}): Line => ({
  name: `constituent ${percent} ${hazard}`,
  percent,
  hazards: hazard ? [hazard] : [],
  source: 'invented',
  ...more,
});

async function codes(
  lines: readonly Line[],
  off: readonly string[],
  properties: Line = {},
  basis: BasisId = 'un-ghs',
) {
  const choices = off.map(id => ({ reading: `building-block-${id}`, take: 'off', reason: 'authority' }));
  const more = { choices, properties: { 'flash-point': 'none', ...properties } };
  const { hazards } = await classifyLines([...lines, { name: 'water', amount: 'balance' }], basis, more);
  return hazards.map(({ code }) => code);
}

async function basisOf(id: BasisId): Promise<Basis> {
  const loaded = await loadBasis(id, '2026-11-25');
  if (!loaded.ok) throw new Error(id);
  return loaded.value;
}

const thin = { 'kinematic-viscosity-40C': '14 mm2/s' };

// UN GHS tables 3.1.1, 3.2.3, 3.3.3, 4.1.3, 2.6.1 and 3.10.3.3, worked by hand.
const situations: readonly (readonly [
  block: string,
  what: string,
  lines: readonly Line[],
  on: string[],
  off: string[],
  properties?: Line,
])[] = [
  // 100 / (60 / 2500) = 4167 mg/kg: above 2000, up to 5000.
  [
    'acute-5',
    'a value in Category 5',
    [part(60, null, { ate: { oral: '2500 mg/kg' } })],
    ['Acute Tox. 5'],
    [],
  ],
  // Table 3.1.2 converts Category 5 to 2500 mg/kg.
  ['acute-5', 'a listed Category 5', [part(60, 'Acute Tox. 5 (oral)')], ['Acute Tox. 5'], []],
  // 100 / (20 / 500 + 75 / 2500) = 1429 mg/kg; without the second term 100 / (20 / 500) = 2500 mg/kg.
  [
    'acute-5',
    'a sum to which a value in Category 5 adds',
    [part(20, 'Acute Tox. 4 (oral)'), part(75, null, { ate: { oral: '2500 mg/kg' } })],
    ['Acute Tox. 4'],
    [],
  ],
  // 500 / 0.6 = 833 mg/kg.
  ['acute-5', 'Category 4', [part(60, 'Acute Tox. 4 (oral)')], ['Acute Tox. 4'], ['Acute Tox. 4']],
  // From 1 to below 10 % of Category 2.
  ['skin-3', 'a little of an irritant', [part(5, 'Skin Irrit. 2')], ['Skin Irrit. 3'], []],
  ['skin-3', '10 % of Category 3', [part(10, 'Skin Irrit. 3')], ['Skin Irrit. 3'], []],
  ['skin-3', '10 % of Category 2', [part(10, 'Skin Irrit. 2')], ['Skin Irrit. 2'], ['Skin Irrit. 2']],
  // Note b; without the split the category is 2.
  ['eye-2b', '10 % of 2B', [part(10, 'Eye Irrit. 2B')], ['Eye Irrit. 2B'], ['Eye Irrit. 2']],
  ['eye-2b', '10 % of 2A', [part(10, 'Eye Irrit. 2A')], ['Eye Irrit. 2A'], ['Eye Irrit. 2']],
  ['eye-2b', '3 % of Category 1', [part(3, 'Eye Dam. 1')], ['Eye Dam. 1'], ['Eye Dam. 1']],
  ['asp-2', '10 % of Category 2', [part(10, 'Asp. Tox. 2')], ['Asp. Tox. 2'], [], thin],
  ['asp-2', '10 % of Category 1', [part(10, 'Asp. Tox. 1')], ['Asp. Tox. 1'], ['Asp. Tox. 1'], thin],
  ['aquatic-acute-2-3', '25 % of Acute 2', [part(25, 'Aquatic Acute 2')], ['Aquatic Acute 2'], []],
  ['aquatic-acute-2-3', '25 % of Acute 3', [part(25, 'Aquatic Acute 3')], ['Aquatic Acute 3'], []],
  // 10 x 2.5 % = 25 %.
  ['aquatic-acute-2-3', '2.5 % of Acute 1', [part(2.5, 'Aquatic Acute 1')], ['Aquatic Acute 2'], []],
  [
    'aquatic-acute-2-3',
    '25 % of Acute 1',
    [part(25, 'Aquatic Acute 1')],
    ['Aquatic Acute 1'],
    ['Aquatic Acute 1'],
  ],
  [
    'flam-liq-4',
    'a flash point of 93 C',
    [part(1, null)],
    ['Flam. Liq. 4'],
    [],
    { 'flash-point': '93 C (closed cup)' },
  ],
  [
    'flam-liq-4',
    'a flash point of 60 C',
    [part(1, null)],
    ['Flam. Liq. 3'],
    ['Flam. Liq. 3'],
    { 'flash-point': '60 C (closed cup)' },
  ],
];

describe('building blocks of the UN text', () => {
  const named = situations.map(([block, what, lines, on, off, properties = {}]) => ({
    block,
    what,
    lines,
    on,
    off,
    properties,
  }));

  it.each(named)('$block: $what', async ({ block, lines, on, off, properties }) => {
    expect(await codes(lines, [], properties)).toEqual(on);
    expect(await codes(lines, [block], properties)).toEqual(off);
  });

  it('can be left out together', async () => {
    const lines = [part(5, 'Skin Irrit. 2'), part(10, 'Eye Irrit. 2B'), part(25, 'Aquatic Acute 2')];
    expect(await codes(lines, [])).toEqual(['Skin Irrit. 3', 'Eye Irrit. 2B', 'Aquatic Acute 2']);
    expect(await codes(lines, ['eye-2b', 'skin-3'])).toEqual(['Eye Irrit. 2', 'Aquatic Acute 2']);
  });

  // 29 CFR 1910.1200 Tables A.3.3 and B.6.1 have 2B and Category 4 without a choice.
  it('leave the law of the United States as it is', async () => {
    const lines = [part(10, 'Eye Irrit. 2B')];
    const flash = { 'flash-point': '93 C (closed cup)' };
    expect(await codes(lines, ['eye-2b', 'flam-liq-4'], flash, 'us-hcs')).toEqual([
      'Flam. Liq. 4',
      'Eye Irrit. 2B',
    ]);
  });
});

describe('withBuildingBlocks', () => {
  const take =
    (...off: readonly string[]) =>
    (id: string) =>
      off.includes(id) ? 'off' : 'on';
  const all = ['acute-5', 'skin-3', 'eye-2b', 'asp-2', 'aquatic-acute-2-3', 'flam-liq-4'].map(
    id => `building-block-${id}`,
  );

  it.each(basisIds)('gives %s itself where nothing is left out', async id => {
    const basis = await basisOf(id);
    expect(withBuildingBlocks(basis, take())).toBe(basis);
  });

  it.each(['us-hcs', 'eu-clp'] as const)('gives %s itself, which has no building blocks', async id => {
    const basis = await basisOf(id);
    expect(withBuildingBlocks(basis, take(...all))).toBe(basis);
  });

  it('makes each set of choices once, whatever their order', async () => {
    const basis = await basisOf('un-ghs');
    const one = withBuildingBlocks(basis, take(all[0]!, all[2]!));
    expect(withBuildingBlocks(basis, take(all[2]!, all[0]!))).toBe(one);
    expect(withBuildingBlocks(basis, take(all[0]!))).not.toBe(one);
  });

  it('leaves the basis as it was, and every figure that is not of the block', async () => {
    const basis = await basisOf('un-ghs');
    const before = structuredClone(basis);
    const bare = withBuildingBlocks(basis, take(...all));
    expect(basis).toEqual(before);
    const touched = ['acuteToxicity', 'skin', 'eye', 'aspiration', 'aquatic', 'flammableLiquids'];
    for (const key of Object.keys(basis) as (keyof Basis)[])
      if (!touched.includes(key)) expect(bare[key]).toBe(basis[key]);
    const { acuteToxicity } = bare;
    for (const key of ['oral', 'dermal', 'gas', 'vapour', 'mist'] as const) {
      expect(Object.keys(acuteToxicity.categories[key])).toEqual(['1', '2', '3', '4']);
      expect(acuteToxicity.countsUpTo[key]).toBe(acuteToxicity.categories[key]['4']);
    }
    expect(bare.skin).toEqual({ ...before.skin, mild: null });
  });
});
