import type {
  AllocatedStatement,
  AllocationFile,
  AllocationRow,
} from '../reference/label-data/allocation.ts';
import { type AllocatedGroup, allocatedGroups } from '../reference/label-data/allocation.ts';

interface Correction {
  readonly hazard: string;
  readonly statements?: readonly string[];
  readonly codes?: Readonly<Record<string, string>>;
  readonly drop?: readonly string[];
  readonly why: string;
}

/** What sources/un-ghs/allocation-corrections.json holds. */
export interface UnCorrections {
  readonly instrument: string;
  readonly cite: string;
  readonly checkedOn: string;
  readonly aliases: Readonly<Record<string, string>>;
  readonly corrections: readonly Correction[];
  readonly copied: Readonly<
    Record<string, { readonly from: string; readonly signalWord: 'Danger' | 'Warning' }>
  >;
  /** Conditions of codes that are new since Rev. 7. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly when: Readonly<Record<string, readonly string[]>>;
  /** H-code, words of the category column and, where the class decides, of the class column. */
  readonly keys: Readonly<Record<string, readonly [string, string, string?]>>;
  readonly statements: {
    readonly hazard: Readonly<Record<string, { readonly text: string; readonly source: string }>>;
    readonly new: Readonly<Record<string, { readonly fieldsOf?: string }>>;
    readonly dropped: readonly string[];
  };
}

interface HazardClasses {
  readonly classes: readonly {
    readonly class: string;
    readonly categories: readonly {
      readonly category: string;
      readonly statements: readonly string[];
      readonly byRoute?: Readonly<Record<string, string>>;
    }[];
  }[];
}

interface SourceRow {
  readonly code: string;
  readonly hazardClass: string;
  readonly category: string;
  readonly pictograms: readonly string[];
  readonly signalWord: string;
  readonly precautions: readonly string[];
}

const comma = (text: string): string[] => text.split(',').filter(part => part.trim() !== '');

/** Rows of the statement file that allocate something. */
export const sourceRows = (tsv: string): SourceRow[] =>
  tsv
    .split('\n')
    .map(line => line.split('\t'))
    .filter(cells => /^H\d{3}[A-Za-z]*$/.test(cells[0] ?? '') && !cells[1]?.startsWith('(Deleted)'))
    .map(
      ([code = '', , hazardClass = '', category = '', , pictograms = '', signalWord = '', codes = '']) => ({
        code,
        hazardClass,
        category,
        pictograms: comma(pictograms),
        signalWord,
        precautions: comma(codes.trim()),
      }),
    );

/** Allocation of GHS Rev. 11 for every hazard of the notation that the statement file has. */
export function unAllocation(
  tsv: string,
  corrections: UnCorrections,
  classes: HazardClasses,
  groupOf: (code: string) => AllocatedGroup,
  known: AllocationFile,
): AllocationFile {
  const source = sourceRows(tsv);
  const rows = hazardKeys(classes).flatMap(({ hazard, code, category }): AllocationRow[] => {
    const [wantedCode, words, classWords] = corrections.keys[hazard] ?? [code, category];
    const found = source.find(
      row =>
        row.code === wantedCode &&
        (classWords === undefined || row.hazardClass.includes(classWords)) &&
        (corrections.keys[hazard] ? row.category.includes(words) : hasCategory(row.category, words)),
    );
    return found ? [toRow(hazard, found, corrections, groupOf, known)] : [];
  });
  for (const [hazard, { from, signalWord }] of Object.entries(corrections.copied)) {
    const original = rows.find(row => row.hazard === from)!;
    rows.push({
      ...original,
      hazard,
      signalWord,
      confidence: 'from-memory',
      notes: [`row of ${from}; not in the file`],
    });
  }
  const { instrument, cite, checkedOn, aliases } = corrections;
  return {
    instrument,
    cite,
    checkedOn,
    conditions: { ...known.conditions, ...corrections.conditions },
    aliases,
    rows,
  };
}

function hazardKeys(classes: HazardClasses): { hazard: string; code: string; category: string }[] {
  return classes.classes.flatMap(entry =>
    entry.categories.flatMap(({ category, statements, byRoute }) => {
      const name = category === '' ? entry.class : `${entry.class} ${category}`;
      if (byRoute)
        return Object.entries(byRoute).map(([route, code]) => ({
          hazard: `${name} (${route})`,
          code,
          category,
        }));
      if (entry.class === 'STOT SE' && category === '3')
        return ['respiratory irritation', 'narcotic effects'].map(effect => ({
          hazard: `${name} (${effect})`,
          code: '',
          category,
        }));
      if (entry.class === 'Press. Gas')
        return [{ hazard: `${entry.class} (${category})`, code: '', category }];
      return [{ hazard: name, code: statements[0] ?? '', category }];
    }),
  );
}

/** Whether `Category 1, 1A, 1B` or `Type C, D` names the category. */
const hasCategory = (cell: string, category: string): boolean =>
  cell
    .replace(/^(Category|Type)\s*/, '')
    .split(/,\s*/)
    .includes(category);

function toRow(
  hazard: string,
  row: SourceRow,
  { corrections, when: added }: UnCorrections,
  groupOf: (code: string) => AllocatedGroup,
  known: AllocationFile,
): AllocationRow {
  const own = corrections.filter(each => each.hazard === hazard);
  const codes = row.precautions
    .map(code => own.find(({ codes }) => codes?.[code])?.codes?.[code] ?? code)
    .filter(code => !own.some(({ drop }) => drop?.includes(code)));
  const other = known.rows.find(each => each.hazard === hazard);
  const statement = (code: string): AllocatedStatement => {
    const same = other ? allocatedGroups.flatMap(group => other.precautions[group]) : [];
    const like = same.find(each => each.code === code);
    const when = added[code] ?? like?.when;
    return { code, ...(when && { when }), ...(like?.fields && { fields: like.fields }) };
  };
  const of = (group: AllocatedGroup) => codes.filter(code => groupOf(code) === group).map(statement);
  return {
    hazard,
    statements: own.find(({ statements }) => statements)?.statements ?? [row.code],
    signalWord: row.signalWord === 'Danger' || row.signalWord === 'Warning' ? row.signalWord : null,
    pictograms: row.pictograms,
    precautions: {
      prevention: of('prevention'),
      response: of('response'),
      storage: of('storage'),
      disposal: of('disposal'),
    },
    sources: [
      { source: 'GHS Rev. 11 statement file', agrees: own.length === 0 },
      ...(other
        ? [{ source: 'conditions and alternatives as in the row of the US rule (Rev. 7)', agrees: true }]
        : []),
    ],
    confidence: 'mapped',
    ...(own.length > 0 && { notes: own.map(({ why }) => why) }),
  };
}
