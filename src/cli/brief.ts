import type { Classification } from '../classify/classification.ts';
import type { classificationJson } from '../draft/classification-json.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { ProductRecord } from '../record/product-record.ts';

type Full = ReturnType<typeof classificationJson>;

/** The classification in JSON without its reasons. What is undecided stays. */
export const briefJson = ({ hazards, otherClasses, ...rest }: Full) => ({
  ...rest,
  hazards: hazards.map(({ because: _, calculated: __, ...hazard }) => hazard),
  otherClasses: otherClasses.map(({ because: _, calculated: __, ...other }) => other),
});

/** The classification in a line: code, signal word, hazards, and the classes that lack data. */
export function briefText(
  { code }: Pick<ProductRecord, 'code'>,
  { hazards, otherClasses }: Classification,
  { signalWord }: LabelElements,
): string {
  const given = hazards.map(({ code: hazard, route }) => `${hazard}${route ? ` (${route})` : ''}`);
  const open = otherClasses
    .filter(({ outcome }) => outcome === 'insufficient-data')
    .map(({ class: name }) => name);
  return [
    code,
    signalWord ?? 'no signal word',
    given.join(', ') || 'no hazard class given',
    ...(open.length > 0 ? [`lack of data: ${[...new Set(open)].join(', ')}`] : []),
  ].join('; ');
}
