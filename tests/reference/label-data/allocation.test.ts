import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compileAllocations } from '../../../src/generate/allocation.ts';
import { hazardClasses, hazardCode } from '../../../src/notation/classes.ts';
import { basisIds } from '../../../src/reference/basis.ts';
import { allocatedGroups } from '../../../src/reference/label-data/allocation.ts';
import { findRow } from '../../../src/reference/label-data/find-row.ts';
import { loadLabelData } from '../../../src/reference/label-data/load-label-data.ts';

const hazardData = join(import.meta.dirname, '../../../hazard-data');
const law = { 'us-hcs': 'us', 'eu-clp': 'clp', 'un-ghs': 'ghs' } as const;

/** Categories for which a basis gives no label elements of its own, and where that is said. */
const without: Readonly<Record<string, readonly string[]>> = {
  // Type G has no label elements: CLP Tables 2.8.1 and 2.15.1. Plain "Expl." and "Press. Gas" wait for a test or group.
  all: ['Expl.', 'Press. Gas', 'Self-react. G', 'Org. Perox. G'],
  // Explosives by division up to GHS Rev. 8, by category from Rev. 9 (2.1).
  'us-hcs': ['Expl. 1', 'Expl. 2A', 'Expl. 2B', 'Expl. 2C'],
  'eu-clp': ['Expl. 1', 'Expl. 2A', 'Expl. 2B', 'Expl. 2C', 'Eye Irrit. 2B'],
  'un-ghs': ['Unst. Expl.', 'Expl. 1.1', 'Expl. 1.2', 'Expl. 1.3', 'Expl. 1.4', 'Expl. 1.5', 'Expl. 1.6'],
};

describe('generated label data', () => {
  const files = compileAllocations(hazardData);
  it.each(Object.keys(files))('%s is what the readings and decisions give', path => {
    expect(readFileSync(join(hazardData, path), 'utf8')).toBe(files[path]);
  });
});

describe('merged readings of Appendix C, C.4', () => {
  const read = (path: string) => JSON.parse(readFileSync(join(hazardData, path), 'utf8'));
  const allocation = read('us-hcs/allocation.json');

  it('keeps what was not taken, with a reason, for every code on which the readings differ', () => {
    const rename = (name: string) => {
      const { classNames } = read('sources/us-hcs/precautions/decisions.json');
      const from = Object.keys(classNames).find(each => name === each || name.startsWith(`${each} `));
      return from ? classNames[from] + name.slice(from.length) : name;
    };
    const [first, second] = ['first', 'second'].map(
      which =>
        new Map<string, Record<string, string[]>>(
          read(`sources/us-hcs/precautions/${which}-reading.json`).rows.map((row: { hazard: string }) => [
            rename(row.hazard),
            row,
          ]),
        ),
    );
    let differing = 0;
    for (const row of allocation.rows)
      for (const group of allocatedGroups) {
        const [one, two] = [first!.get(row.hazard)![group]!, second!.get(row.hazard)![group]!];
        const taken = row.precautions[group].map(({ code }: { code: string }) => code);
        if ([...one].sort().join() === [...two].sort().join()) {
          expect([...taken].sort()).toEqual([...one].sort());
          continue;
        }
        differing++;
        const note = row.disagreements.find(({ field }: { field: string }) => field === group);
        expect(note.why.length).toBeGreaterThan(20);
        expect(note.first).toEqual(one);
        expect(note.second).toEqual(two);
        expect(taken).toEqual(note[note.taken]);
      }
    expect(differing).toBe(10);
  });

  it('uses every decision', () => {
    const { decisions } = read('sources/us-hcs/precautions/decisions.json');
    const reasons = allocation.rows.flatMap((row: { disagreements?: { why: string }[] }) =>
      (row.disagreements ?? []).map(({ why }) => why),
    );
    for (const { why } of decisions) expect(reasons).toContain(why);
  });

  // CLP Annex I Table 2.6.2 and Table 3.10.2, which follow the same revision of the GHS as C.4.
  it.each([
    ['Flam. Liq. 2', 'P210 P233 P240 P241 P242 P243 P280', 'P303+P361+P353 P370+P378', 'P403+P235', 'P501'],
    ['Asp. Tox. 1', '', 'P301+P310 P331', 'P405', 'P501'],
    ['Acute Tox. 3 (dermal)', 'P280', 'P302+P352 P312 P321 P361+P364', 'P405', 'P501'],
    ['STOT SE 3 (narcotic effects)', 'P261 P271', 'P304+P340 P312', 'P403+P233 P405', 'P501'],
  ])('%s has the codes of the table', (hazard, ...codes) => {
    const row = allocation.rows.find((each: { hazard: string }) => each.hazard === hazard);
    const found = allocatedGroups.map(group =>
      row.precautions[group].map(({ code }: { code: string }) => code).join(' '),
    );
    expect(found).toEqual(codes);
  });
});

describe.each(basisIds)('allocation of %s', basis => {
  it('has a row for every category of the basis', async () => {
    const { allocation } = await loadLabelData(basis);
    const absent = hazardClasses.flatMap(entry =>
      entry[law[basis]] === null
        ? []
        : entry.categories.flatMap(({ category, note, byRoute, byEffect }) => {
            const code = hazardCode(entry.class, category);
            const elsewhere = basis !== 'un-ghs' && note?.startsWith('GHS only');
            const usOnly = basis === 'eu-clp' && note?.includes('not in CLP');
            if (elsewhere || usOnly || without.all!.includes(code) || without[basis]!.includes(code))
              return [];
            const keys = byRoute
              ? Object.keys(byRoute).map(route => ({ route }))
              : byEffect
                ? Object.keys(byEffect).map(effect => ({ effect }))
                : [{}];
            return keys
              .filter(key => !findRow(allocation, { code, hazardClass: entry.class, category, ...key }))
              .map(key => `${code} ${JSON.stringify(key)}`);
          }),
    );
    expect(absent).toEqual([]);
  });

  it('uses only statements that have a text of the same group, conditions that have words, and known fields', async () => {
    const { allocation, statements, pictograms } = await loadLabelData(basis);
    for (const row of allocation.rows) {
      for (const code of row.statements)
        expect(
          statements.hazard[code] ?? statements.supplemental?.[code],
          `${row.hazard} ${code}`,
        ).toBeDefined();
      for (const code of row.pictograms) expect(pictograms.order).toContain(code);
      for (const group of allocatedGroups)
        for (const { code, when = [], fields = {} } of row.precautions[group]) {
          expect(statements.precautionary[code]?.group, `${row.hazard} ${code}`).toBe(group);
          for (const id of when) expect(allocation.conditions[id], id).toBeTypeOf('string');
          for (const [name, keys] of Object.entries(fields)) {
            const options =
              statements.precautionary[code]?.fields?.[name]?.options.map(({ key }) => key) ?? [];
            for (const key of keys) expect(options, `${code} ${name}`).toContain(key);
          }
        }
      expect(row.sources.length, row.hazard).toBeGreaterThan(0);
    }
  });

  it('has each hazard once', async () => {
    const { allocation } = await loadLabelData(basis);
    const hazards = allocation.rows.map(({ hazard }) => hazard);
    expect(new Set(hazards).size).toBe(hazards.length);
  });
});

describe('rows that set the bases apart', () => {
  const codes = async (basis: 'us-hcs' | 'eu-clp' | 'un-ghs', hazard: string) => {
    const { allocation } = await loadLabelData(basis);
    return allocation.rows.find(row => row.hazard === hazard);
  };

  it('CLP has no Flam. Liq. 4, the US rule no aquatic classes', async () => {
    expect(await codes('eu-clp', 'Flam. Liq. 4')).toBeUndefined();
    expect(await codes('us-hcs', 'Aquatic Acute 1')).toBeUndefined();
  });

  // CLP Annex I Table 4.1.4.
  it.each([
    ['Aquatic Chronic 1', ['GHS09'], 'Warning', ['P391']],
    ['Aquatic Chronic 2', ['GHS09'], null, ['P391']],
    ['Aquatic Chronic 3', [], null, []],
    ['Aquatic Chronic 4', [], null, []],
  ] as const)('%s', async (hazard, pictograms, signalWord, response) => {
    for (const basis of ['eu-clp', 'un-ghs'] as const) {
      const row = await codes(basis, hazard);
      expect(row).toMatchObject({ pictograms, signalWord });
      expect(row!.precautions.response.map(({ code }) => code)).toEqual(response);
      expect(row!.precautions.prevention.map(({ code }) => code)).toEqual(['P273']);
    }
  });

  // CLP Annex I Tables 4.2.3 and 4.3.1 as inserted by Delegated Regulation (EU) 2023/707.
  it('new classes of CLP have a signal word and no pictogram', async () => {
    for (const hazard of ['ED ENV 1', 'PBT', 'vPvB'])
      expect(await codes('eu-clp', hazard)).toMatchObject({ pictograms: [], signalWord: 'Danger' });
  });
});
