import data from '../../../hazard-data/us-hcs/sheet/statement-places.json' with { type: 'json' };
import type { LabelElements, Statement } from '../../labelling/label-elements.ts';

export type StatementPlace = keyof typeof data.places;

const PLACES = new Map<string, StatementPlace>(
  Object.entries(data.places).flatMap(([place, codes]) =>
    codes.map(code => [code, place as StatementPlace] as const),
  ),
);

/** Of a statement that joins several, every place of its parts, unless the whole has one of its own. */
function placesOf({ code }: Statement): readonly StatementPlace[] {
  const whole = PLACES.get(code);
  return whole ? [whole] : code.split('+').flatMap(part => PLACES.get(part) ?? []);
}

/** Texts of the precautionary statements that a subheading repeats, in their order on the label. */
export const statementsFor = (elements: LabelElements, place: StatementPlace): readonly string[] =>
  elements.precautionaryStatements
    .filter(statement => placesOf(statement).includes(place))
    .map(({ text }) => text);

/** Calls for help that the label joins for all routes (29 CFR 1910.1200 App. C, C.2.4.10(b)). */
export const helpForEveryRoute = (elements: LabelElements): readonly string[] =>
  elements.precautionaryStatements
    .filter(({ code }) => data.everyRoute.includes(code))
    .map(({ text }) => text);

/** A statement with its code where it has one of the GHS. */
export const withCode = ({ code, text }: Statement): string =>
  /^(?:EU)?[HP]\d/u.test(code) ? `${code} ${text}` : text;

/** A statement as a sentence: some laws print the full stop and some do not. */
export const closed = (text: string): string => (text.endsWith('.') ? text : `${text}.`);
