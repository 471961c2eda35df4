import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { transportData } from '../../src/draft/draft-transport.ts';
import { compileHazardousMaterials, sourceColumns } from '../../src/generate/hazardous-materials.ts';
import { tableColumns } from '../../src/reference/transport/columns.ts';
import { readCells } from '../../src/reference/transport/hazardous-materials-table.ts';
import { printRange, statedRange } from '../../src/reference/transport/percent-range.ts';

const source = readFileSync('hazard-data/sources/dot-172-101.csv', 'utf8');
const rows = parse(source, { columns: true }) as Record<string, string>[];
const compiled = readFileSync('hazard-data/us-dot/hazardous-materials-table.tsv', 'utf8');
const { table, generic, substance } = transportData();

describe('the hazardous materials table', () => {
  it('is current', () => {
    const { table: text, unread } = compileHazardousMaterials(source);
    expect(text).toBe(compiled);
    const listed = JSON.parse(readFileSync('hazard-data/us-dot/ranges-not-read.json', 'utf8'));
    expect(listed.rows).toEqual(unread);
  });

  it('gives back every cell of every row', () => {
    const lines = compiled.trimEnd().split('\n').slice(1);
    expect(lines).toHaveLength(3264);
    const back = lines.map(line => {
      const cells = readCells(line);
      return Object.fromEntries(
        tableColumns.flatMap(column => (column === 'range' ? [] : [[sourceColumns[column], cells[column]]])),
      );
    });
    expect(back).toEqual(rows);
  });

  it('reads every row into an entry', () => {
    expect(table.entries).toHaveLength(rows.length);
    for (const [at, entry] of table.entries.entries()) {
      const row = rows[at]!;
      expect(entry.packingGroup ?? '').toBe(row.packing_group);
      expect(['I', 'II', 'III', null]).toContain(entry.packingGroup);
      expect(entry.id === '' || /^(UN|NA|ID)\d{4}$/.test(entry.id)).toBe(true);
      expect(entry.id === '').toBe(['Forbidden', ''].includes(entry.hazardClass) && row.id_number === '');
      expect(entry.names.every(name => name.length > 0)).toBe(true);
      // The labels are the primary hazard and the subsidiary ones.
      // Two rows of the source have a point for a comma.
      const cell = row.labels!.replace('8.6.1', '8, 6.1').replace('6.1. 4.1', '6.1, 4.1');
      const labels = cell.split(',').map(label => label.trim());
      for (const hazard of entry.subsidiary) expect(labels).toContain(hazard);
      expect(entry.symbols.every(symbol => ['+', 'A', 'D', 'G', 'I', 'W'].includes(symbol))).toBe(true);
    }
  });

  it('finds by name and by number', () => {
    expect(table.byName('hydrochloric ACID').map(({ id }) => id)).toEqual(['UN1789', 'UN1789']);
    expect(table.byName('Ethyl alcohol').map(({ id }) => id)).toEqual(['UN1170', 'UN1170']);
    expect(table.byId('UN1791').map(({ packingGroup }) => packingGroup)).toEqual(['II', 'III']);
    expect(substance('7681-52-9')?.entries.map(({ un }) => un)).toEqual(['UN1791']);
  });

  // Descriptions as 172.101 prints them.
  it.each([
    ['with more than 10 percent and less than 50 percent acid, by mass', '> 10 < 50'],
    ['not less than 50 percent but not more than 80 percent acid, by mass', '>= 50 <= 80'],
    ['with not less than 8 percent but less than 20 percent hydrogen peroxide', '>= 8 < 20'],
    ['with at least 65 percent, but not more than 70 percent nitric acid', '>= 65 <= 70'],
    ['fuming with 30 percent or more free sulfur trioxide', '>= 30'],
    ['with not more than 51% acid', '<= 51'],
    ['with more than 39% available chlorine (8.8% available oxygen)', '> 39'],
    ['relative density less than 0.880 at 15 degrees C in water, with more than 50 percent ammonia', '> 50'],
    ['with not more than 12 percent sodium borohydride and not more than 40 percent sodium hydroxide', ''],
    ['with approximately 49 percent chlorodifluoromethane', ''],
  ])('%s is %s', (description, range) => {
    expect(printRange(statedRange(description))).toBe(range);
  });

  it('holds every generic entry under its class, subsidiary hazards and name', () => {
    for (const entry of [...generic.entries, ...generic.domestic]) {
      const found = table
        .byId(entry.un)
        .filter(
          row =>
            row.hazardClass === entry.class &&
            [...row.subsidiary].sort().join() === [...entry.subsidiary].sort().join() &&
            (!entry.name || row.names[0]!.startsWith(entry.name)),
        );
      expect([entry.un, found.length > 0]).toEqual([entry.un, true]);
      const words = entry.form === 'solid' ? /solid/i : /liquid|alcohols|terpene|hydrocarbons/i;
      expect(found[0]!.names[0]).toMatch(words);
    }
  });
});
