import type { Classification } from '../classify/classification.ts';
import type { ClassifiedRecord } from '../classify/contexts.ts';
import type { Constituent, Formula } from '../formula/constituent.ts';

/**
 * What stays as the record gives it while the constituent varies, and what is not known of the constituents that do.
 * @param classification of a mixture that holds them.
 */
export function notesOn(
  { record, formula }: { readonly record: ClassifiedRecord; readonly formula: Formula },
  varied: readonly Constituent[],
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
  for (const { name, cas } of varied) {
    const unknown = constituents.find(each => name === each.name && cas === each.cas)?.data.unknown;
    if (unknown && unknown.size > 0)
      notes.push(
        `no data on ${name} for ${[...unknown].join(', ')}: what it adds there is not in these figures`,
      );
  }
  return notes;
}
