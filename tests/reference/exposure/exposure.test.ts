import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compileCarcinogens, compileLimits } from '../../../src/generate/exposure.ts';
import { openExposure } from '../../../src/reference/exposure/open-exposure.ts';

const folder = 'hazard-data/exposure';
const bytes = (name: string) => readFileSync(`${folder}/${name}`);
const table = openExposure(bytes('osha-pel.tsv'), bytes('carcinogen-lists.tsv'));
const sourceOf = (name: string) => readFileSync(`hazard-data/sources/exposure/${name}`);
const rows = (name: string) => parse(sourceOf(name), { columns: true }) as Record<string, string>[];

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
    const [limit, ...others] = table.limits(cas);
    expect(others).toEqual([]);
    expect(limit!.twa).toEqual({ ppm, milligramsPerCubicMetre: milligrams });
    expect(limit!.table).toBe('Z-1');
  });

  it('gives a ceiling where the table prints (C)', () => {
    // Table Z-1: chlorine (C) 1 ppm, (C) 3 mg/m3; 2-butoxyethanol 50 ppm, 240 mg/m3, skin.
    expect(table.limits('7782-50-5')[0]).toMatchObject({ ceiling: '1 ppm; 3 mg/m3', twa: { ppm: null } });
    expect(table.limits('111-76-2')[0]).toMatchObject({
      twa: { ppm: '50', milligramsPerCubicMetre: '240' },
      skin: true,
    });
  });

  it('gives the peaks of Table Z-2', () => {
    // Table Z-2: toluene 200 ppm, ceiling 300 ppm, 500 ppm for 10 minutes.
    expect(table.limits('108-88-3').find(limit => limit.table === 'Z-2')).toMatchObject({
      twa: { ppm: '200' },
      ceiling: '300 ppm',
      peak: '500 ppm for 10 min',
    });
  });

  it('gives the limits of substance-specific standards', () => {
    // 29 CFR 1910.1048(c): 0.75 ppm as TWA, 2 ppm as STEL; 1910.1028(c): 1 ppm and 5 ppm.
    expect(table.limits('50-00-0').at(-1)).toMatchObject({
      table: '1910.1048',
      twa: { ppm: '0.75' },
      notes: 'STEL 2 ppm over 15 min',
      compared: true,
    });
    expect(table.limits('71-43-2').find(limit => limit.table === '1910.1028')).toMatchObject({
      twa: { ppm: '1' },
      notes: 'STEL 5 ppm over 15 min',
    });
    expect(table.limits('7439-92-1').some(limit => !limit.compared)).toBe(true);
  });

  it('finds nothing for a substance outside the tables and for a part of a number', () => {
    expect(table.limits('5989-27-5')).toEqual([]);
    expect(table.limits('64-1')).toEqual([]);
    expect(table.limits('')).toEqual([]);
  });

  it('finds every row of the source by each of its numbers', () => {
    for (const { cas_no, name, table: place } of rows('osha-pel.csv'))
      for (const cas of cas_no!
        .split(';')
        .map(part => part.trim())
        .filter(Boolean))
        expect(
          table.limits(cas).some(limit => limit.name === name && limit.table === place),
          cas,
        ).toBe(true);
  });
});

describe('carcinogen lists', () => {
  it('gives the listing of each body', () => {
    // NTP 15th Report on Carcinogens; IARC volume 100F; 29 CFR 1910.1028, 1910.1048.
    expect(table.carcinogens('71-43-2')).toMatchObject([
      { ntp: 'known', iarc: { group: '1' }, osha: '1910.1028' },
    ]);
    expect(table.carcinogens('50-00-0')).toMatchObject([
      { ntp: 'known', iarc: { group: '1' }, osha: '1910.1048' },
    ]);
    // IARC volume 60: styrene 2A since volume 121; NTP reasonably anticipated since the 12th report.
    expect(table.carcinogens('100-42-5')).toMatchObject([
      { ntp: 'reasonably anticipated', iarc: { group: '2A' }, osha: null },
    ]);
  });

  it('keeps the words of an entry that is narrower than the substance', () => {
    // IARC volume 100E: ethanol in alcoholic beverages.
    expect(table.carcinogens('64-17-5')[0]!.name).toMatch(/alcoholic beverages/iu);
  });

  it('lists nothing for what no body has named', () => {
    expect(table.carcinogens('1310-73-2')).toEqual([]);
  });
});

describe('the compiled tables', () => {
  it('are current', () => {
    const source = JSON.parse(bytes('osha-pel.source.json').toString()) as {
      standardsRead: { sections: string[] };
    };
    const text = (name: string) => bytes(name).toString();
    const csv = (name: string) => sourceOf(name).toString();
    expect(text('osha-pel.tsv')).toBe(compileLimits(csv('osha-pel.csv'), source.standardsRead.sections));
    expect(text('carcinogen-lists.tsv')).toBe(compileCarcinogens(csv('carcinogen-lists.csv')));
  });
});
