import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { groups } from '../../../src/reference/groups/groups.ts';
import { membershipOf } from '../../../src/reference/groups/members.ts';
import { spelled } from '../../../src/reference/lists/names.ts';

type Row = Record<string, string>;

const source = (name: string) =>
  parse(readFileSync(`hazard-data/sources/${name}.csv`), { columns: true }) as Record<string, string>[];

const entries = {
  'osha-pel': source('osha-pel'),
  carcinogens: source('carcinogen-lists'),
  cercla: source('epa-lists').filter(row => row.cercla_rq_lb !== ''),
  'epcra-313': source('epa-lists').filter(row => row.epcra_313 === 'Y'),
  prop65: source('prop65'),
};

describe('groups', () => {
  it('have ids of their own, a definition and a source', () => {
    expect(new Set(groups.map(({ id }) => id)).size).toBe(groups.length);
    expect(groups.length).toBeGreaterThan(40);
    for (const { definition, source } of groups) {
      expect(definition).not.toBe('');
      expect(source).toMatch(/29 CFR|40 CFR|list|words|notes/u);
    }
  });

  it.each(groups.map(group => [group.id, group] as const))(
    '%s leads to entries that the sources have',
    (_, { rows }) => {
      expect(rows.length).toBeGreaterThan(0);
      for (const { list, name, table } of rows)
        expect(
          entries[list].some(entry => entry.name === name && (table === undefined || entry.table === table)),
          `${list} ${name}`,
        ).toBe(true);
    },
  );

  it.each(groups.map(group => [group.id, group] as const))(
    '%s has patterns in the spelling that names are put into',
    (_, { members }) => {
      const patterns = [...members.names, ...(members.not ?? []), ...(members.possible?.names ?? [])];
      for (const pattern of patterns) {
        expect(() => new RegExp(pattern, 'u')).not.toThrow();
        expect(pattern.replace(/\\[A-Z]/gu, '')).toBe(pattern.replace(/\\[A-Z]/gu, '').toLowerCase());
      }
    },
  );

  // CLP Annex VI as a list of names that nobody chose for these patterns.
  const named = (
    parse(readFileSync('hazard-data/sources/substances/annex-vi.csv'), { columns: true }) as Row[]
  ).map(({ name }) => name!);
  const membersOf = (id: string) => {
    const group = groups.find(each => each.id === id)!;
    return named.filter(name => membershipOf(group, { name, cas: null }) === 'member');
  };

  it('take every chromate and dichromate of CLP Annex VI for chromium(VI)', () => {
    const chromates = named.filter(name => /^(?:[a-z]+ )?(?:di)?chromate$|chromium \(VI\)/u.test(name));
    expect(chromates.length).toBeGreaterThan(5);
    expect(membersOf('chromium-vi')).toEqual(expect.arrayContaining(chromates));
  });

  it('take no petroleum stream for a member because acid or xylene stands in its description', () => {
    expect(membersOf('sulfuric-acid-mist').map(name => name.slice(0, 13))).toEqual([
      'oleum ... % S',
      'sulphuric aci',
    ]);
    expect(membersOf('hydrochloric-acid')).toHaveLength(2);
    expect(membersOf('alcoholic-beverages')).toEqual(['ethanol; ethyl alcohol']);
    expect(membersOf('xylenes').every(name => /xylene/u.test(name.replace(/;.*/u, '')))).toBe(true);
  });

  it('tell what may belong from what does', () => {
    const of = (id: string, name: string, cas: string | null = null) =>
      membershipOf(groups.find(group => group.id === id)!, { name, cas });
    expect(of('glycol-ethers', '2-butoxyethanol', '111-76-2')).toBe('member');
    expect(of('glycol-ethers', 'Diethylene glycol monobutyl ether')).toBe('member');
    expect(of('glycol-ethers', 'glycol ether')).toBe('possible');
    // R = alkyl C7 or less: 2-ethylhexyl has eight carbon atoms; propylene glycol ethers are outside.
    expect(of('glycol-ethers', 'ethylene glycol 2-ethylhexyl ether', '1559-35-9')).toBeNull();
    expect(of('glycol-ethers', 'dipropylene glycol methyl ether', '34590-94-8')).toBeNull();
    // Listed by itself in 40 CFR 372.65(a).
    expect(of('glycol-ethers', '2-methoxyethanol', '109-86-4')).toBeNull();
    expect(of('petroleum-naphtha', 'Hydrotreated light distillate', '64742-47-8')).toBe('possible');
    expect(spelled('Aluminium sulphate')).toBe('aluminum sulfate');
  });
});
