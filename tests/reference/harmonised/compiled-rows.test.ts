import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compileHarmonised } from '../../../src/generate/harmonised.ts';
import type { SpecificLimit } from '../../../src/notation/limit.ts';
import type { HarmonisedEntry } from '../../../src/reference/harmonised/entry.ts';
import { bytes, substances, table } from './_table.ts';

const csv = readFileSync('hazard-data/sources/substances/annex-vi.csv', 'utf8');
const rows = parse(csv, { columns: true }) as Record<string, string>[];
const entries = new Map<string, HarmonisedEntry[]>();
for (const entry of table.allRows()) {
  const key = `${entry.index} ${entry.appliesFrom}`;
  entries.set(key, [...(entries.get(key) ?? []), entry]);
}
const of = (row: Record<string, string>) => entries.get(`${row.index_no} ${row.applies_from}`) ?? [];
const items = (row: Record<string, string>) => row.limits_m_ate!.split('|').filter(item => item !== '');

describe('harmonised.tsv', () => {
  const compiled = compileHarmonised(csv);

  it('is current with annex-vi.csv, and nothing in it is unread', () => {
    expect(compiled.tsv === bytes.toString('utf8')).toBe(true);
    expect(compiled.unparsed).toEqual([]);
    expect(JSON.parse(readFileSync(`${substances}/unparsed.json`, 'utf8'))).toEqual([]);
    const meta = JSON.parse(readFileSync(`${substances}/harmonised.meta.json`, 'utf8')) as {
      counts: unknown;
    };
    expect(meta.counts).toEqual(compiled.counts);
  });

  it('reports what it cannot read', () => {
    const head = csv.split('\n')[0];
    const row = [
      '001-001-00-9',
      'x',
      '-',
      '1333-74-1',
      'Skin Cor. 1B;Eye Dam. 1',
      'H314;H315',
      '',
      '',
      'EUH1',
      'M = x|oral: 5|Eye Dam. 1: 5|EUH031: 5',
      '?',
      'CLP00',
      '2008',
      'soon',
    ].join(',');
    const columns = compileHarmonised(`${head}\n${row}\n`).unparsed.map(({ column }) => column);
    expect(columns.sort()).toEqual([
      'applies_from',
      'cas_no',
      'celex',
      'hazard_classes',
      'hazard_classes',
      'limits_m_ate',
      'limits_m_ate',
      'limits_m_ate',
      'limits_m_ate',
      'notes',
      'suppl_codes',
    ]);
  });

  it('is sorted by key, one line for each key, index number, member and date', () => {
    const keys = bytes
      .toString('utf8')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map(line => line.split('\t')[0]!);
    expect(keys).toEqual([...keys].sort((a, b) => (a < b ? -1 : 1)));
  });
});

describe('every row of Annex VI Table 3', () => {
  it('has an entry for each of its numbers', () => {
    for (const row of rows) {
      const numbers = row.cas_no!.match(/\d[\d-]*-\d(?![\d-])/g) ?? [];
      const found = of(row)
        .map(({ cas }) => cas)
        .filter(cas => cas !== null);
      expect([...found].sort()).toEqual([...numbers].sort());
      expect(of(row).length).toBeGreaterThan(0);
    }
  });

  it('comes back with class, category, minimum mark and H-code as printed', () => {
    for (const row of rows) {
      const classes = row.hazard_classes!.split(';');
      const statements = row.h_codes!.split(';');
      const printed = classes
        .map((hazardClass, i) => ({
          code: hazardClass.replace(/ \*{2,4}$/, ''),
          statement: /^(EU)?H\d{3}[A-Za-z]*/.exec(statements[i]!)?.[0] ?? null,
          organs: /\((?!inhalation|oral)([^()]*)\)/.exec(statements[i]!)?.[1] ?? '',
        }))
        .filter(({ code }) => code !== '****');
      for (const { hazards } of of(row)) {
        const read = hazards.map(({ code, minimum, statement, organs }) => ({
          code: minimum ? `${code} *` : code,
          statement,
          organs: organs.join(', '),
        }));
        // Imiprothrin names two routes for one class: `H371 (inhalation, oral) (nervous system)`.
        if (row.index_no === '613-259-00-5') {
          const stot = read.filter(({ code }) => code === 'STOT SE 2');
          expect(stot.map(({ organs }) => organs)).toEqual(['nervous system', 'nervous system']);
          expect(hazards.filter(({ code }) => code === 'STOT SE 2').map(({ route }) => route)).toEqual([
            'inhalation',
            'oral',
          ]);
          read.splice(read.indexOf(stot[0]!), 1);
        }
        expect(read).toEqual(printed);
      }
    }
  });

  it('comes back with its specific concentration limits as printed', () => {
    const range = ({ low, lowInclusive, high, highInclusive }: SpecificLimit) => {
      const upper = high && `${highInclusive ? '<=' : '<'} ${high.value}%`;
      if (low && high) return `${low.value}% ${lowInclusive ? '<=' : '<'} C ${upper}`;
      return low ? `C ${lowInclusive ? '>=' : '>'} ${low.value}%` : `C ${upper}`;
    };
    let count = 0;
    for (const row of rows) {
      const printed = items(row)
        .filter(item => item.includes('C ') && !item.startsWith('EUH'))
        .map(item => item.replace(/ \*+$/, ''));
      count += printed.length;
      for (const entry of of(row))
        expect(entry.limits.map(limit => `${limit.code}; ${limit.statement}: ${range(limit)}`)).toEqual(
          printed,
        );
    }
    expect(count).toBeGreaterThan(400);
  });

  it('comes back with its ATE values, M-factors, notes and EUH codes', () => {
    const seen = { ate: 0, factors: 0 };
    for (const row of rows) {
      const ate = items(row).filter(item => item.includes('ATE'));
      const values = ate.map(item => Number(/ATE = ([\d.]+)/.exec(item)![1]));
      const factors = Object.fromEntries(
        items(row).flatMap(item => {
          const match = /^M(?:\((acute|chronic)\))? = (\d+)$/.exec(item);
          if (!match) return [];
          return (match[1] ? [match[1]] : ['acute', 'chronic']).map(key => [key, Number(match[2])]);
        }),
      );
      seen.ate += values.length;
      seen.factors += Object.keys(factors).length;
      for (const entry of of(row)) {
        const read = Object.values(entry.ate).map(value => value?.value);
        // Nickel sulfamate has one oral value for each of two forms.
        if (row.index_no === '028-018-00-4') expect(read).toEqual([Math.min(...values)]);
        else expect([...read].sort()).toEqual([...values].sort());
        expect(entry.mFactors).toEqual(factors);
        expect(entry.notes.join(';')).toBe(row.notes);
        expect(entry.supplemental.join(';')).toBe(row.suppl_codes);
        expect(entry.act).toBe(row.celex);
      }
    }
    expect(seen.ate).toBeGreaterThan(200);
    expect(seen.factors).toBeGreaterThan(500);
  });

  it('keeps every mark of Annex VI 1.2 but those on minimum classes as a flag', () => {
    for (const row of rows) {
      const marks = [
        ...row.hazard_classes!.split(';').flatMap(text => /\*{2,4}$/.exec(text)?.[0] ?? []),
        ...row
          .h_codes!.split(';')
          .flatMap(text => (/^\*+$/.test(text) ? [] : (/\*+$/.exec(text)?.[0] ?? []))),
        ...items(row).flatMap(text => /^\*|\*{4}$/.exec(text)?.[0] ?? []),
      ];
      for (const entry of of(row)) expect(entry.flags.map(({ mark }) => mark).sort()).toEqual(marks.sort());
    }
  });
});
