import { afterAll, describe, expect, it } from 'vitest';
import { type SheetInput, sheetJson, sheetQuestions } from '../../../src/document/sheet.ts';
import { sheetTexts } from '../../../src/record/sheet-keys.ts';
import { inputAround } from './sheet-input.ts';

const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const line = (name: string, cas: string, percent: number, more: Record<string, unknown> = {}) => ({
  name,
  cas,
  percent,
  ...more,
});
const mild = (name: string, cas: string, percent: number) =>
  line(name, cas, percent, { hazards: ['Eye Irrit. 2'], source: 'supplier sheet (example)' });

/** Ten fictional products of the kinds that small makers sell. */
const products: Record<string, Record<string, unknown>> = {
  'methanol washer fluid': {
    properties: { 'flash-point': '27 C (closed cup)', 'initial-boiling-point': '78 C' },
    formula: [line('methanol', '67-56-1', 34), water],
  },
  'hydrochloric acid cleaner': {
    properties: { pH: 0.5 },
    formula: [line('hydrochloric acid', '7647-01-0', 12), water],
  },
  'ammonia glass cleaner': {
    properties: { pH: 11 },
    formula: [line('ammonium hydroxide', '1336-21-6', 1.2), line('2-butoxyethanol', '111-76-2', 4), water],
  },
  'ethanol surface cleaner': {
    properties: { 'flash-point': '20 C (closed cup)', 'initial-boiling-point': '79 C' },
    formula: [line('ethanol', '64-17-5', 62), water],
  },
  'hydrocarbon polish': {
    properties: { 'flash-point': '62 C (closed cup)', 'kinematic-viscosity-40C': '3 mm2/s' },
    formula: [
      line('hydrotreated light distillates', '64742-47-8', 60, {
        hazards: ['Asp. Tox. 1'],
        source: 'supplier sheet (example)',
      }),
      line('white mineral oil', '8042-47-5', 40, { hazards: [], source: 'supplier sheet (example)' }),
    ],
  },
  'terpene and quaternary cleaner': {
    properties: { pH: 7, 'flash-point': '70 C (closed cup)' },
    formula: [
      line('d-limonene', '5989-27-5', 4),
      line('didecyldimethylammonium chloride', '7173-51-5', 2),
      water,
    ],
  },
  'oxygen powder': {
    form: 'solid',
    formula: [
      line('sodium percarbonate', '15630-89-4', 40, {
        hazards: ['Ox. Sol. 2', 'Acute Tox. 4 (oral)', 'Eye Dam. 1'],
        source: 'supplier sheet (example)',
      }),
      mild('sodium carbonate', '497-19-8', 60),
    ],
  },
  bleach: {
    properties: { pH: 12.5 },
    formula: [line('sodium hypochlorite', '7681-52-9', 6), line('sodium hydroxide', '1310-73-2', 0.4), water],
  },
  aerosol: {
    form: 'aerosol',
    formula: [line('butane', '106-97-8', 40), line('acetone', '67-64-1', 60)],
  },
  'mild detergent': {
    properties: { pH: 7 },
    formula: [mild('sodium laureth sulfate', '68891-38-3', 8), water],
  },
};

const names = Object.keys(products);
const table = new Map<string, string[]>();
const letters = { filled: '+', searched: 's', open: 'o' } as const;

/** Every key filled with the note that it was searched for. */
const searchedFor = (): Record<string, unknown> => {
  const sds: Record<string, unknown> = {};
  for (const key of Object.keys(sheetTexts)) {
    const [group, member] = key.split('.') as [string, string | undefined];
    const entry = { searched: 'supplier sheets, 2026-11-20' };
    if (member === undefined) sds[group] = entry;
    else sds[group] = { ...(sds[group] as object), [member]: entry };
  }
  return sds;
};

const inputOf = (name: string, more: Record<string, unknown> = {}): Promise<SheetInput> =>
  inputAround({ ...products[name], ...more });

describe.each(names)('the sheet of %s', name => {
  it('has its state at every item, and few open ones without any text of the maker', async () => {
    const input = await inputOf(name);
    for (const { number, items } of sheetJson(input).sections)
      for (const { heading, letter, state } of items) {
        const row = `${number}${letter ?? ''} ${heading}`;
        table.set(row, [...(table.get(row) ?? []), letters[state]]);
      }
    // Of sections 1 to 11 only what is measured, or what no calculation can know, is open.
    const open = sheetQuestions(input).open.filter(({ section }) => section < 12 && section !== 9);
    expect(open.map(({ heading }) => heading).filter(heading => !ASKED.has(heading))).toEqual([]);
    expect(open.length).toBeLessThanOrEqual(8);
  });

  it('leaves no item open once every key says where it was searched for', async () => {
    const input = await inputOf(name, { sds: searchedFor() });
    expect(sheetQuestions(input).open).toEqual([]);
    // 29 CFR 1910.1200(g)(3): the mark says that nothing was found, only where something was sought.
    for (const { items } of sheetJson(input).sections)
      for (const { state, text } of items)
        expect(/no applicable information was found/iu.test(text ?? '')).toBe(state === 'searched');
  });
});

/** Items that only the maker or the reviewer can fill. */
const ASKED = new Set([
  'Restrictions on use',
  'Hazards not otherwise classified',
  'Common name and synonyms',
  'Impurities and stabilizing additives',
  'ACGIH Threshold Limit Value (TLV)',
  'Any other exposure limit or range used or recommended',
  'Chemical stability',
  'Possibility of hazardous reactions',
]);

afterAll(() => {
  const width = Math.max(...[...table.keys()].map(row => row.length));
  const rows = [...table].map(([row, states]) => `${row.padEnd(width)}  ${states.join(' ')}`);
  const counts = names.map((_, at) => [...table.values()].filter(states => states[at] === 'o').length);
  process.stdout.write(
    `\nAppendix D on ten products without a text of the maker (+ filled, s searched, o open)\n${names
      .map((name, at) => `${at + 1} ${name}: ${counts[at]} open`)
      .join('\n')}\n${rows.join('\n')}\n`,
  );
});
