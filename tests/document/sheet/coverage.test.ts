import { afterAll, describe, expect, it } from 'vitest';
import { type SheetInput, sheetJson, sheetQuestions } from '../../../src/document/sheet.ts';
import { sheetTexts } from '../../../src/record/sheet-keys.ts';
import { inputAround } from './sheet-input.ts';
import { tenProducts } from './ten-products.ts';

const names = Object.keys(tenProducts);
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
  inputAround({ ...tenProducts[name], ...more });

const openItems = (input: SheetInput): readonly string[] =>
  sheetJson(input).sections.flatMap(({ number, items }) =>
    items.filter(({ state }) => state === 'open').map(({ key }) => `${number} ${key}`),
  );

describe.each(names)('the sheet of %s', name => {
  it('has its state at every item, and few open ones without any text of the maker', async () => {
    const input = await inputOf(name);
    for (const { number, items } of sheetJson(input).sections)
      for (const { heading, letter, state } of items) {
        const row = `${number}${letter ?? ''} ${heading}`;
        table.set(row, [...(table.get(row) ?? []), letters[state]]);
      }
    expect(openItems(input).length).toBeLessThanOrEqual(8);
    const { open } = sheetQuestions(input);
    // Of sections 1 to 11 only what is measured, or what no calculation can know, is open.
    const asked = open
      .filter(({ section }) => section < 12 && section !== 9)
      .flatMap(({ headings }) => headings);
    expect(asked.filter(heading => !ASKED.has(heading))).toEqual([]);
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
]);

// A supplier in the Union with what Annex II, 1.3 and 1.4 ask of one. Invented.
const europe = {
  ufi: 'N1QV-R02N-J00M-WQD5',
  maker: {
    name: 'Tallow Lane Batch Works',
    address: ['48 Tallow Lane', 'Sampleton, OH 44000'],
    telephone: '+1 216 555 0142',
    emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
    'eu-supplier': {
      name: 'Harbour Row Imports Ltd',
      role: 'importer',
      address: ['7 Harbour Row', 'Dublin, Ireland'],
      telephone: '+353 1 555 0117',
      email: 'sheets@harbour-row.example',
      emergency: [{ body: 'Advisory body', country: 'IE', telephone: '+353 1 555 0118', hours: '24 hours' }],
    },
  },
};

const union = new Map<string, string[]>();

// Most of what is open is asked of lists and assessments that Annex II names and nobody can calculate: limits of Union
// and Member States, DNELs, PBT and endocrine assessments, waste codes, acts, ADR.
describe.each(names)('the sheet to Annex II of %s', name => {
  const of = (more: Record<string, unknown> = {}) =>
    inputAround({ ...tenProducts[name], ...europe, ...more }, {}, 'eu-clp');

  it('has its state at every item', async () => {
    const input = await of();
    for (const { number, items } of sheetJson(input).sections)
      for (const { heading, state } of items) {
        const row = /^\d/u.test(heading) ? heading : `${number}. ${heading}`;
        union.set(row, [...(union.get(row) ?? []), letters[state]]);
      }
    expect(openItems(input).length).toBeLessThanOrEqual(26);
    // Nothing of sections 4 to 7 and 10 is open: hazard, form and ingredients say it.
    expect(openItems(input).filter(item => /^(?:[4-6]|10) /u.test(item))).toEqual([]);
  });

  it('leaves no item open once every key says where it was searched for', async () => {
    expect(openItems(await of({ sds: searchedFor() }))).toEqual([]);
  });
});

function shown(title: string, rows: ReadonlyMap<string, readonly string[]>): string {
  const width = Math.max(...[...rows.keys()].map(row => row.length));
  const open = (at: number) => [...rows.values()].filter(states => states[at] === 'o').length;
  return `
${title} on ten products without a text of the maker (+ filled, s searched, o open)
${names.map((name, at) => `${at + 1} ${name}: ${open(at)} items open`).join('\n')}
${[...rows].map(([row, states]) => `${row.padEnd(width)}  ${states.join(' ')}`).join('\n')}
`;
}

afterAll(() => {
  process.stdout.write(shown('Appendix D', table) + shown('Annex II', union));
});
