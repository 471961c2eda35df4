import type { Classification } from '../classify/classification.ts';
import type { ClassifiedRecord } from '../classify/contexts.ts';
import type { Constituent, Formula } from '../formula/constituent.ts';

/**
 * What stays as the record gives it while the constituent varies, and what is not known of the constituent.
 * @param classification of a mixture that holds it.
 */
export function notesOn(
  { record, formula }: { readonly record: ClassifiedRecord; readonly formula: Formula },
  constituent: Constituent,
  { constituents }: Classification,
): string[] {
  const notes: string[] = [];
  const { pH, flashPoint, initialBoilingPoint, kinematicViscosity40C } = record.properties;
  const measured = [
    pH && `pH ${pH.written}`,
    flashPoint && `flash point ${flashPoint.written}`,
    initialBoilingPoint && `initial boiling point ${initialBoilingPoint.written}`,
    kinematicViscosity40C && `kinematic viscosity ${kinematicViscosity40C.written}`,
  ].filter(text => text !== undefined);
  if (measured.length > 0)
    notes.push(
      `measured properties are held as the record gives them (${measured.join(', ')}); they change with the formula, so measure again`,
    );
  const tested = record.evidence
    .filter(({ kind }) => kind !== 'reserve')
    .map(({ hazardClass }) => hazardClass);
  if (tested.length > 0)
    notes.push(
      `evidence on the whole mixture is held for ${[...new Set(tested)].join(', ')}; it speaks only of the mixture that was tested`,
    );
  if (formula.ranged)
    notes.push(
      'ranges of other constituents are classified at whichever end is worse, for each hazard by itself',
    );
  const found = constituents.find(({ name, cas }) => name === constituent.name && cas === constituent.cas);
  const unknown = found ? [...found.data.unknown] : [];
  if (unknown.length > 0)
    notes.push(
      `no data on ${constituent.name} for ${unknown.join(', ')}: what it adds there is not in these figures`,
    );
  return notes;
}
