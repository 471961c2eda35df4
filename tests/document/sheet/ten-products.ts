// Ten fictional products of the kinds that small makers sell, with real substances and what a shop measures: no text
// under `sds:`. Figures of the products are invented.

const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const source = 'supplier sheet (example)';
const pack = [{ id: 'pack', contents: '1 L' }];

type Line = Record<string, unknown>;
const line = (name: string, cas: string, percent: number, more: Line = {}): Line => ({
  name,
  cas,
  percent,
  ...more,
});
const supplied = (name: string, cas: string, percent: number, ...hazards: string[]): Line =>
  line(name, cas, percent, { hazards, source });
const seen = (color: string, odor: string) => ({ appearance: { color, odor }, packs: pack });

/** Records by the kind of product. */
export const tenProducts: Readonly<Record<string, Record<string, unknown>>> = {
  'methanol washer fluid': {
    ...seen('blue', 'alcohol'),
    properties: {
      density: '0.95 g/mL',
      'flash-point': '27 C (closed cup)',
      'initial-boiling-point': '78 C',
      'kinematic-viscosity-40C': '1.2 mm2/s',
    },
    formula: [line('methanol', '67-56-1', 34), line('ethylene glycol', '107-21-1', 1), water],
  },
  'hydrochloric acid cleaner': {
    ...seen('clear', 'pungent'),
    properties: { pH: 0.5, density: '1.06 g/mL', 'flash-point': 'none' },
    formula: [line('hydrochloric acid', '7647-01-0', 12), water],
  },
  'ammonia glass cleaner': {
    ...seen('clear', 'ammonia'),
    properties: { pH: 11, density: '0.99 g/mL', 'flash-point': 'none', 'initial-boiling-point': '95 C' },
    formula: [line('ammonium hydroxide', '1336-21-6', 1.2), line('2-butoxyethanol', '111-76-2', 4), water],
  },
  'ethanol surface cleaner': {
    ...seen('clear', 'alcohol'),
    properties: { density: '0.89 g/mL', 'flash-point': '20 C (closed cup)', 'initial-boiling-point': '79 C' },
    formula: [line('ethanol', '64-17-5', 62), water],
  },
  'hydrocarbon polish': {
    ...seen('pale yellow', 'mild hydrocarbon'),
    properties: {
      density: '0.82 g/mL',
      'flash-point': '62 C (closed cup)',
      'initial-boiling-point': '180 C',
      'kinematic-viscosity-40C': '3 mm2/s',
    },
    formula: [
      supplied('hydrotreated light distillates', '64742-47-8', 60, 'Asp. Tox. 1'),
      supplied('white mineral oil', '8042-47-5', 40),
    ],
  },
  'terpene and quaternary cleaner': {
    ...seen('milky', 'orange'),
    properties: { pH: 7, density: '0.99 g/mL', 'flash-point': '70 C (closed cup)' },
    formula: [
      line('d-limonene', '5989-27-5', 4),
      line('didecyldimethylammonium chloride', '7173-51-5', 2),
      water,
    ],
  },
  'oxygen powder': {
    ...seen('white', 'none'),
    form: 'solid',
    packs: [{ id: 'pack', contents: '1 kg' }],
    properties: {
      pH: { value: 10.6, method: '1 % in water' },
      density: '0.9 g/mL',
      'particle-characteristics': 'granules, below 1 % under 0.1 mm',
    },
    formula: [
      supplied('sodium percarbonate', '15630-89-4', 40, 'Ox. Sol. 2', 'Acute Tox. 4 (oral)', 'Eye Dam. 1'),
      supplied('sodium carbonate', '497-19-8', 60, 'Eye Irrit. 2'),
    ],
  },
  bleach: {
    ...seen('pale yellow', 'chlorine'),
    properties: { pH: 12.5, density: '1.08 g/mL', 'flash-point': 'none' },
    formula: [line('sodium hypochlorite', '7681-52-9', 6), line('sodium hydroxide', '1310-73-2', 0.4), water],
  },
  aerosol: {
    ...seen('clear', 'solvent'),
    form: 'aerosol',
    packs: [{ id: 'pack', contents: '400 g' }],
    properties: { density: '0.68 g/mL' },
    formula: [line('butane', '106-97-8', 40), line('acetone', '67-64-1', 60)],
  },
  'mild detergent': {
    ...seen('clear', 'lemon'),
    properties: { pH: 7, density: '1.02 g/mL', 'flash-point': 'none', 'initial-boiling-point': '100 C' },
    formula: [
      supplied('sodium laureth sulfate', '68891-38-3', 8, 'Skin Irrit. 2', 'Eye Dam. 1'),
      supplied('cocamidopropyl betaine', '61789-40-0', 2, 'Eye Dam. 1'),
      water,
    ],
  },
};
