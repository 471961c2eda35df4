import type { Resolved } from '../classify/resolve.ts';
import type { Formula } from '../formula/constituent.ts';
import type { FormulaLine, ProductRecord, SubstanceLine } from '../record/product-record.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import type { HarmonisedTable } from '../reference/harmonised/open-harmonised.ts';
import { synonyms } from '../reference/harmonised/synonyms.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

const most = 3;

/**
 * Questions about the names of a formula: a name that belongs to another entry of the table than its CAS number, and a
 * name without CAS number and data for which the table has an entry.
 */
export function checkNames(
  record: ProductRecord,
  table: HarmonisedTable,
  asOf: string,
): readonly Diagnostic[] {
  return substances(record.formula).flatMap(line => {
    if (line.cas === null) return line.given.hazards || line.undisclosed ? [] : proposal(line, table, asOf);
    return disagreement(line, line.cas, table, asOf);
  });
}

/** The names of the entries that constituents are judged by, where they are called otherwise in the record. */
export function entryNames(
  { constituents }: Formula,
  resolved: readonly Pick<Resolved, 'entry'>[],
): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const [i, { cas, name }] of constituents.entries()) {
    const entry = cas === null ? null : resolved[i]!.entry;
    if (!entry || synonyms(entry.name).includes(name.trim().toLowerCase())) continue;
    // Names of petroleum streams go on with what they consist of.
    const [first] = entry.name.split(/;\s/);
    if (first!.toLowerCase() !== name.trim().toLowerCase()) names.set(cas!, first!);
  }
  return names;
}

function substances(lines: readonly FormulaLine[]): readonly SubstanceLine[] {
  const found = new Set<SubstanceLine>();
  const seen = new Set<readonly FormulaLine[]>();
  const walk = (each: readonly FormulaLine[]): void => {
    if (seen.has(each)) return;
    seen.add(each);
    for (const line of each) {
      if (line.kind === 'substance') found.add(line);
      else walk(line.material.formula);
    }
  };
  walk(lines);
  return [...found];
}

function disagreement(line: SubstanceLine, cas: string, table: HarmonisedTable, asOf: string): Diagnostic[] {
  const named = table.byName(line.name, asOf);
  if (!named || named.cas === null || named.cas === cas) return [];
  const own = table.candidates(cas, asOf);
  if (own.some(entry => synonyms(entry.name).includes(line.name.trim().toLowerCase()))) return [];
  const [entry] = own;
  return [
    {
      ...about(line),
      code: 'name-and-number',
      severity: 'warning',
      message: entry
        ? `\`${line.name}\` stands beside CAS number ${cas}, which is that of \`${entry.name}\`; it is judged by the number`
        : `\`${line.name}\` stands beside CAS number ${cas}, but has ${named.cas} in the table`,
      hint: `\`${line.name}\` has CAS number ${named.cas}: compare name and number with the supplier's sheet`,
    },
  ];
}

function proposal(line: SubstanceLine, table: HarmonisedTable, asOf: string): Diagnostic[] {
  const found = alike(line.name, table, asOf);
  if (found.length === 0) return [];
  const entries = found.map(({ name, cas }) => `${name} (cas: ${cas})`).join('; ');
  return [
    {
      ...about(line),
      code: 'entry-by-name',
      severity: 'note',
      message: `\`${line.name}\` has no CAS number; the table has entries of that name`,
      hint: `if it is one of them, add its number: ${entries}`,
    },
  ];
}

function alike(name: string, table: HarmonisedTable, asOf: string): readonly HarmonisedEntry[] {
  const exact = table.byName(name, asOf);
  if (exact?.cas) return [exact];
  const bare = plain(name);
  if (bare.length < 4) return [];
  const found = new Map<string, HarmonisedEntry>();
  for (const entry of table.allRows()) {
    if (entry.cas === null || entry.appliesFrom > asOf || found.has(entry.cas)) continue;
    if (synonyms(entry.name).some(each => plain(each) === bare)) found.set(entry.cas, entry);
    if (found.size >= most) break;
  }
  return [...found.values()];
}

/** A name without the strength, the spaces and the marks in which people write it differently. */
const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/\d+(?:\.\d+)?\s*%/g, '')
    .replace(/\b(?:solution|aqueous|anhydrous|technical|grade|pure|in water)\b/g, '')
    .replace(/sulph/g, 'sulf')
    .replace(/aluminium/g, 'aluminum')
    .replace(/[^a-z0-9]/g, '');

const about = ({ at, path, excerpt }: SubstanceLine) => ({ at, path, excerpt });
