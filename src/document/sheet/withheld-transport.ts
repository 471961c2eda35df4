import type { TransportAnswer } from '../../transport/answer.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';

/** Facts that name the one constituent whose entry is taken. */
const entryOf = ['listed-by-name', 'listed-by-concentration', 'named-entry'];

/** Places of the constituents whose identity is withheld, by the name that the rules of transport know. */
export function withheld({ formula, ...rest }: SheetInput): ReadonlyMap<string, number> {
  const { identity } = secretsOf({ formula, ...rest });
  return new Map([...identity].map(at => [formula.constituents[at]!.name.toLowerCase(), at]));
}

/** The withheld constituent that number and shipping name would tell; null where they tell none. */
export function withheldEntry(
  input: SheetInput,
  { because, name, entry }: Pick<TransportAnswer, 'because' | 'name' | 'entry'>,
): string | null {
  const secret = withheld(input);
  const taken = because.filter(({ id }) => entryOf.includes(id)).map(({ values }) => String(values.name));
  const words = `${name ?? ''} ${entry?.names.join(' ') ?? ''}`.toLowerCase();
  return (
    taken.find(each => secret.has(each.toLowerCase())) ??
    [...secret.keys()].find(each => words.includes(each)) ??
    null
  );
}

/** Technical names as this copy may tell them. */
export function technicalNames(input: SheetInput, technical: readonly string[]): readonly string[] {
  const secret = withheld(input);
  const { name } = secretsOf(input);
  return technical.map(each => {
    const at = secret.get(each.toLowerCase());
    return at === undefined ? each : name(at);
  });
}
