import data from './application-identifiers.json' with { type: 'json' };
import type { ElementString } from './element-strings.ts';

/** Resolver of GS1, used where the maker names none (GS1 Digital Link Standard: URI Syntax 1.2, chapter 4). */
export const GS1_RESOLVER = 'https://id.gs1.org';

/**
 * GS1 Digital Link of a trade item: key and qualifiers in the path, in their order, attributes in the query
 * (GS1 Digital Link Standard: URI Syntax 1.2, chapter 4).
 * @param gtin 8, 12, 13 or 14 digits; written as 14
 * @param elements qualifiers and attributes, in any order
 * @param domain scheme and host of the maker or of a resolver, without a slash at its end
 * @throws RangeError for an element that can stand in neither
 */
export function digitalLink(
  gtin: string,
  elements: readonly ElementString[] = [],
  domain: string = GS1_RESOLVER,
): string {
  const role = ({ ai }: ElementString) => data.identifiers[ai].role;
  const key = elements.find(element => role(element) === 'key');
  if (key) throw new RangeError(`(${key.ai}) is a key of its own and does not go with a GTIN`);
  const order = ({ ai }: ElementString) => data.qualifierOrder.indexOf(ai);
  const qualifiers = elements
    .filter(element => role(element) === 'qualifier')
    .sort((a, b) => order(a) - order(b));
  const path = qualifiers.map(({ ai, value }) => `/${ai}/${encodeURIComponent(value)}`).join('');
  const query = elements
    .filter(element => role(element) === 'attribute')
    .map(({ ai, value }) => `${ai}=${encodeURIComponent(value)}`)
    .join('&');
  return `${domain}/01/${gtin.padStart(14, '0')}${path}${query === '' ? '' : `?${query}`}`;
}
