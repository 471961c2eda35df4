import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compileCarcinogens, compileLimits } from '../../../src/generate/exposure.ts';
import { carcinogenListings } from '../../../src/reference/exposure/carcinogen-listings.ts';
import { openExposure } from '../../../src/reference/exposure/open-exposure.ts';

const bytes = (name: string) => readFileSync(`hazard-data/${name}`);
const table = openExposure(bytes('exposure/osha-pel.tsv'), bytes('exposure/carcinogen-lists.tsv'));
const rows = (name: string) => parse(bytes(`sources/${name}`), { columns: true }) as Record<string, string>[];

type Form = 'liquid' | 'solid' | 'gas' | 'aerosol';

const limits = (name: string, cas: string | null, form: Form = 'liquid') => table.limits({ name, cas, form });
const limitsOf = (cas: string) => limits('', cas).found.map(({ row }) => row);
const listings = (name: string, cas: string | null) => table.carcinogens({ name, cas });

describe('OSHA permissible exposure limits', () => {
  // 29 CFR 1910.1000, Table Z-1 as printed: ppm, mg/m3.
  it.each([
    ['acetone', '67-64-1', '1000', '2400'],
    ['ammonia', '7664-41-7', '50', '35'],
    ['ethyl alcohol', '64-17-5', '1000', '1900'],
    ['hydrogen peroxide', '7722-84-1', '1', '1.4'],
    ['sodium hydroxide', '1310-73-2', null, '2'],
    ['phosphoric acid', '7664-38-2', null, '1'],
    ['isopropyl alcohol', '67-63-0', '400', '980'],
  ])('gives the Table Z-1 limit of %s', (_, cas, ppm, milligrams) => {
    const [limit, ...others] = limitsOf(cas);
    expect(others).toEqual([]);
    expect(limit!.twa).toEqual({ ppm, milligramsPerCubicMetre: milligrams });
    expect(limit!.table).toBe('Z-1');
  });

  it('gives a ceiling where the table prints (C)', () => {
    // Table Z-1: chlorine (C) 1 ppm, (C) 3 mg/m3; 2-butoxyethanol 50 ppm, 240 mg/m3, skin.
    expect(limitsOf('7782-50-5')[0]).toMatchObject({ ceiling: '1 ppm; 3 mg/m3', twa: { ppm: null } });
    expect(limitsOf('111-76-2')[0]).toMatchObject({
      twa: { ppm: '50', milligramsPerCubicMetre: '240' },
      skin: true,
    });
  });

  it('gives the peaks of Table Z-2', () => {
    // Table Z-2: toluene 200 ppm, ceiling 300 ppm, 500 ppm for 10 minutes.
    expect(limitsOf('108-88-3').find(limit => limit.table === 'Z-2')).toMatchObject({
      twa: { ppm: '200' },
      ceiling: '300 ppm',
      peak: '500 ppm for 10 min',
    });
  });

  it('gives the limits of substance-specific standards', () => {
    // 29 CFR 1910.1048(c): 0.75 ppm as TWA, 2 ppm as STEL; 1910.1028(c): 1 ppm and 5 ppm.
    expect(limitsOf('50-00-0').at(-1)).toMatchObject({
      table: '1910.1048',
      twa: { ppm: '0.75' },
      shortTerm: 'STEL 2 ppm over 15 min',
      compared: true,
    });
    expect(limitsOf('71-43-2').find(limit => limit.table === '1910.1028')).toMatchObject({
      twa: { ppm: '1' },
      shortTerm: 'STEL 5 ppm over 15 min',
    });
    // 29 CFR 1910.1029 was not read.
    expect(limits('Coke oven emissions', null).found.some(({ row }) => !row.compared)).toBe(true);
  });
});

describe('limits of groups (29 CFR 1910.1000 Table Z-1, note (c): the name decides)', () => {
  // Figures as Tables Z-1 and 29 CFR 1910.1025(c), 1910.1026(c) print them: ppm, mg/m3, skin.
  it.each([
    ['ammonium bifluoride', '1341-49-7', 'Fluorides (as F)', null, '2.5', false],
    ['copper sulfate', '7758-98-7', 'Copper, dusts and mists (as Cu)', null, '1', false],
    ['m-xylene', '108-38-3', 'Xylenes (o-, m-, p-isomers)', '100', '435', false],
    ['ammonium hydroxide', '1336-21-6', 'Ammonia', '50', '35', false],
    ['nickel sulphate', '7786-81-4', 'Nickel, soluble compounds (as Ni)', null, '1', false],
    ['m-cresol', '108-39-4', 'Cresol, all isomers', '5', '22', true],
    ['chromium trioxide', '1333-82-0', 'Chromium (VI) compounds (as Cr)', null, '0.005', false],
    ['lead acetate', '301-04-2', 'Lead (as Pb)', null, '0.05', false],
    ['silver nitrate', '7761-88-8', 'Silver, metal and soluble compounds (as Ag)', null, '0.01', false],
    ['white mineral oil (petroleum)', '8042-47-5', 'Oil mist, mineral', null, '5', false],
  ])('%s, by number and by name alone', (name, cas, entry, ppm, milligrams, skin) => {
    for (const number of [cas, null]) {
      const found = limits(name, number).found.find(({ row }) => row.name === entry);
      expect(found, `${name} ${number}`).toMatchObject({ by: 'group', membership: 'member' });
      expect(found!.row).toMatchObject({ twa: { ppm, milligramsPerCubicMetre: milligrams }, skin });
      expect(found!.row.compared).toBe(true);
    }
  });

  it.each(['sodium carbonate', 'sodium percarbonate', 'citric acid', 'sodium sulfate', 'enzyme granules'])(
    '%s in a powder is a particulate not otherwise regulated',
    name => {
      // Table Z-1: PNOR, total dust 15 mg/m3, respirable fraction 5 mg/m3; note (f).
      const { found } = limits(name, null, 'solid');
      expect(found.map(({ row }) => [row.name, row.twa.milligramsPerCubicMetre])).toEqual([
        ['Particulates not otherwise regulated (PNOR), total dust', '15'],
        ['Particulates not otherwise regulated (PNOR), respirable fraction', '5'],
      ]);
    },
  );

  it('does not call a dust inert that the table names, nor a liquid a dust', () => {
    // Table Z-1: calcium carbonate, total dust 15 and respirable fraction 5 by name; sucrose too.
    expect(limits('calcium carbonate', '1317-65-3', 'solid').found.every(({ by }) => by === 'cas')).toBe(
      true,
    );
    expect(limits('sucrose', null, 'solid').found.map(({ by }) => by)).toEqual(['name', 'name']);
    expect(limits('sodium carbonate', '497-19-8', 'liquid').found).toEqual([]);
  });

  it('keeps both answers where membership is a judgement', () => {
    const { found } = limits('silica', '7631-86-9', 'solid');
    expect(new Set(found.map(({ membership }) => membership))).toEqual(new Set(['possible', 'member']));
    expect(found.some(({ row }) => row.name.startsWith('Particulates'))).toBe(true);
  });

  it('finds names in brackets, and names with a strength', () => {
    // Table Z-1: 2-Butanone (Methyl ethyl ketone) 200 ppm.
    expect(limits('Methyl ethyl ketone', null).found[0]!.row.twa.ppm).toBe('200');
    expect(limits('Sodium hydroxide, 50 % solution', null).found[0]!.row.name).toBe('Sodium hydroxide');
  });

  it('sets the entry for compounds aside for the metal whose number it prints', () => {
    const { found, setAside } = limits('nickel', '7440-02-0', 'solid');
    expect(found.map(({ row }) => row.name)).toEqual(['Nickel, metal and insoluble compounds (as Ni)']);
    expect(setAside).toMatchObject([{ reason: 'compounds-only' }]);
  });

  it.each([
    ['polyvinylidene fluoride', null],
    ['sulfuryl fluoride', '2699-79-8'],
    ['chloroxylenol', '88-04-0'],
    ['copper phthalocyanine', '147-14-8'],
    ['lead-free glass', null],
    ['benzalkonium chloride', '8001-54-5'],
    ['tetramethylammonium chloride', '75-57-0'],
    ['propylene glycol butyl ether', '5131-66-8'],
  ])('%s belongs to no group by a part of its name', (name, cas) => {
    expect(limits(name, cas).found.filter(({ by }) => by === 'group')).toEqual([]);
  });

  it('says what was sought where nothing is found', () => {
    const lookUp = limits('d-limonene', '5989-27-5');
    expect(lookUp).toMatchObject({
      list: 'osha-pel',
      found: [],
      sought: { cas: '5989-27-5', name: 'd-limonene', groups: [] },
    });
    expect(limits('x', '64-1').found).toEqual([]);
    expect(limits('', '').found).toEqual([]);
  });
});

describe('carcinogen lists', () => {
  it('gives the listing of each body', () => {
    // NTP 15th Report on Carcinogens; IARC volume 100F; 29 CFR 1910.1028, 1910.1048.
    expect(listings('benzene', '71-43-2').found).toMatchObject([
      { by: 'cas', row: { ntp: 'known', iarc: { group: '1' }, osha: '1910.1028' } },
    ]);
    // IARC 2A since volume 121; NTP reasonably anticipated since the 12th report.
    expect(listings('styrene', '100-42-5').found).toMatchObject([
      { row: { ntp: 'reasonably anticipated', iarc: { group: '2A' }, osha: null } },
    ]);
  });

  // Entries without a CAS number in the lists: IARC volumes 87, 100C, 100F; NTP 15th Report on Carcinogens.
  it.each([
    ['sulfuric acid', '7664-93-9', 'Acid mists, strong inorganic', '1'],
    ['chromium trioxide', '1333-82-0', 'Chromium (VI) compounds', '1'],
    ['nickel sulphate', '7786-81-4', 'Nickel compounds', '1'],
    ['lead acetate', '301-04-2', 'Lead compounds, inorganic', '2A'],
  ])('%s is listed in a group', (name, cas, entry, group) => {
    for (const number of [cas, null])
      expect(listings(name, number).found.find(({ row }) => row.name === entry)).toMatchObject({
        by: 'group',
        membership: 'member',
        row: { iarc: { group } },
      });
  });

  it('knows chromium(VI) to OSHA, and lead compounds to NTP', () => {
    // 29 CFR 1910.1026; NTP 15th Report: lead compounds reasonably anticipated.
    expect(listings('chromic acid', null).found.some(({ row }) => row.osha === '1910.1026')).toBe(true);
    expect(listings('lead nitrate', null).found.some(({ row }) => row.ntp === 'reasonably anticipated')).toBe(
      true,
    );
  });

  it('limits the acid listing to mist, and leaves other acids to judgement', () => {
    const of = (name: string) =>
      listings(name, null).found.find(({ row }) => row.name.startsWith('Acid mists'));
    expect(of('sulphuric acid, 30 %')).toMatchObject({ condition: 'mist', membership: 'member' });
    expect(of('nitric acid')).toMatchObject({ condition: 'mist', membership: 'possible' });
    expect(of('citric acid')).toBeUndefined();
  });

  it('takes ethanol of a cleaner for no alcoholic beverage, and says so', () => {
    for (const cas of ['64-17-5', null]) {
      const { found, setAside } = listings('ethanol', cas);
      expect(found).toEqual([]);
      // IARC volume 100E: ethanol in alcoholic beverages.
      if (cas)
        expect(setAside).toMatchObject([{ row: { iarc: { group: '1' } }, reason: 'alcoholic-beverage' }]);
    }
  });

  it('lists nothing for what no body has named', () => {
    expect(listings('sodium hydroxide', '1310-73-2').found).toEqual([]);
  });

  it('takes groups that a record assigns', () => {
    const search = (sought: Parameters<typeof table.carcinogens>[0]) => table.carcinogens(sought);
    expect(carcinogenListings(search, 'catalyst N', null).found).toEqual([]);
    expect(carcinogenListings(search, 'catalyst N', null, ['nickel-compounds']).found).toMatchObject([
      { by: 'group', group: { id: 'nickel-compounds' }, row: { iarc: { group: '1' }, ntp: 'known' } },
    ]);
  });
});

describe('the compiled tables', () => {
  const text = (name: string) => bytes(name).toString();

  it('are current', () => {
    const source = JSON.parse(text('exposure/osha-pel.source.json')) as {
      standardsRead: { sections: string[] };
    };
    expect(text('exposure/osha-pel.tsv')).toBe(
      compileLimits(text('sources/osha-pel.csv'), source.standardsRead.sections),
    );
    expect(text('exposure/carcinogen-lists.tsv')).toBe(
      compileCarcinogens(text('sources/carcinogen-lists.csv')),
    );
  });

  it('give back every row of the sources by number, else by name', () => {
    for (const { cas_no, name, table: place, twa_ppm } of rows('osha-pel.csv'))
      for (const cas of cas_no!.split(';').map(part => part.trim()))
        expect(
          [...limits(cas ? '' : name!, cas || null).found, ...limits('', cas || null).setAside].some(
            ({ row }) => row.name === name && row.table === place && (row.twa.ppm ?? '') === twa_ppm,
          ),
          `${cas} ${name}`,
        ).toBe(true);
    for (const { cas_no, name, iarc_group, ntp_roc15 } of rows('carcinogen-lists.csv')) {
      const { found, setAside } = listings(cas_no ? '' : name!, cas_no || null);
      expect(
        [...found, ...setAside].some(
          ({ row }) =>
            row.name === name &&
            (row.iarc?.group ?? '') === iarc_group &&
            (row.ntp === null) === (ntp_roc15 === ''),
        ),
        `${cas_no} ${name}`,
      ).toBe(true);
    }
  });
});
