import type { AllocationFile, AllocationRow } from '../reference/label-data/allocation.ts';
import type { Decisions, PlainRow } from './_allocation-readings.ts';

/** What sources/eu-clp/allocation-differences.json holds. */
export interface EuDifferences {
  readonly instrument: string;
  readonly cite: string;
  readonly checkedOn: string;
  readonly leftOut: Readonly<Record<string, string>>;
  readonly renamed: Readonly<Record<string, string>>;
  readonly changed: Readonly<Record<string, { readonly note: string }>>;
  readonly aliases: Readonly<Record<string, string>>;
  readonly rows: readonly AllocationRow[];
}

/** The label element tables of CLP Annex I: the second reading, which was made from them, with the differences. */
export function euAllocation(
  second: readonly PlainRow[],
  differences: EuDifferences,
  decisions: Decisions,
): AllocationFile {
  const rows = second
    .filter(({ hazard }) => differences.leftOut[hazard] === undefined)
    .map((plain): AllocationRow => {
      const hazard = differences.renamed[plain.hazard] ?? plain.hazard;
      const statement = (code: string) => {
        const fixed = decisions.fields.find(
          each => each.code === code && each.hazards.includes(plain.hazard),
        );
        const when = plain.when[code];
        const fields = fixed?.fields ?? plain.fields[code];
        return { code, ...(when && { when }), ...(fields && { fields }) };
      };
      const notes = [plain.row.notes, differences.changed[hazard]?.note].filter(
        (note): note is string => !!note && !/US only|OSHA|US table|US note/.test(note),
      );
      return {
        hazard,
        statements: plain.statements,
        signalWord: plain.signalWord,
        pictograms: plain.pictograms,
        precautions: {
          prevention: plain.codes.prevention.map(statement),
          response: plain.codes.response.map(statement),
          storage: plain.codes.storage.map(statement),
          disposal: plain.codes.disposal.map(statement),
        },
        sources: plain.row.sources,
        confidence: plain.row.confidence as AllocationRow['confidence'],
        ...(notes.length > 0 && { notes }),
      };
    });
  const { instrument, cite, checkedOn, aliases } = differences;
  return {
    instrument,
    cite,
    checkedOn,
    conditions: decisions.conditions,
    aliases,
    rows: [...rows, ...differences.rows],
  };
}
