import { readHazard } from '../notation/parse-hazard.ts';
import { printHazard } from '../notation/print-hazard.ts';
import { type AnnexViRow, parts, type Unparsed } from './_annex-vi-row.ts';

/** Where a physical hazard is to be confirmed by test and no class is printed at all (Annex VI 1.2.4). */
const UNNAMED_PHYSICAL_HAZARD = 'physical hazard';

/** Hazards of an entry in our notation and the marks at them. */
export function readHazards(row: AnnexViRow, unparsed: Unparsed[]): { hazards: string[]; flags: string[] } {
  const classes = parts(row.hazard_classes, ';');
  const statements = parts(row.h_codes, ';');
  const hazards: string[] = [];
  const flags: string[] = [];
  if (classes.length !== statements.length)
    unparsed.push({
      index: row.index_no,
      column: 'h_codes',
      text: row.h_codes,
      message: 'not as many H-codes as classes',
    });
  for (const [i, hazardClass] of classes.entries()) {
    const statement = statements[i] ?? '-';
    if (hazardClass === '****') {
      flags.push(`**** ${UNNAMED_PHYSICAL_HAZARD}`);
      continue;
    }
    for (const one of eachRoute(statement)) {
      const text = /^(-|\*+)$/.test(one) ? hazardClass : `${hazardClass}; ${one}`;
      const read = readHazard(text);
      if (!read.ok) {
        unparsed.push({ index: row.index_no, column: 'hazard_classes', text, message: read.message });
        continue;
      }
      const { hazard, classMark, statementMark } = read.value;
      hazards.push(printHazard(hazard));
      if (classMark.length > 1) flags.push(`${classMark} ${hazard.code}`);
      if (statementMark !== '') flags.push(`${statementMark} ${hazard.code}`);
    }
  }
  return { hazards, flags };
}

// `H371 (inhalation, oral) (nervous system)`: one hazard for each route.
function eachRoute(statement: string): string[] {
  const match = /\((inhalation|oral|dermal)((?:, (?:inhalation|oral|dermal))+)\)/.exec(statement);
  if (!match) return [statement];
  return [match[1]!, ...parts(match[2]!, ',')].map(route => statement.replace(match[0], `(${route})`));
}
