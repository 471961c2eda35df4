import type { CarcinogenListing } from '../../reference/exposure/carcinogen-listings.ts';
import type { ExposureLimit } from '../../reference/exposure/open-exposure.ts';
import type { LookUp } from '../../reference/lists/look-up.ts';
import type { RegulatoryFacts, Share } from '../../reference/regulatory/regulatory-facts.ts';
import { prescribedRange } from './concentration.ts';
import { paragraphs } from './content.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';

/** What the lists of sections 8, 11 and 15 say; by the place of the constituent, null for water. */
export interface LookUps {
  readonly limits: readonly (LookUp<ExposureLimit> | null)[];
  readonly carcinogens: readonly (LookUp<CarcinogenListing> | null)[];
  readonly regulations: RegulatoryFacts;
  /** Constituents that section 15 names. */
  readonly regulated: ReadonlySet<number>;
}

const known = new WeakMap<SheetInput, LookUps>();

/** Looks every constituent up, once for a sheet: sections 3, 8, 11 and 15 name the same ones. */
export function lookUps(input: SheetInput): LookUps {
  let found = known.get(input);
  if (!found) {
    found = lookedUp(input);
    known.set(input, found);
  }
  return found;
}

function lookedUp(input: SheetInput): LookUps {
  const { record, classification, exposure, regulatory } = input;
  const each = <T>(search: (sought: { name: string; cas: string | null; form: typeof record.form }) => T) =>
    classification.constituents.map(({ name, cas, water }) =>
      water ? null : search({ name, cas, form: record.form }),
    );
  const places = sharesOf(input);
  const classes = classification.hazards.map(({ hazardClass }) => hazardClass);
  if (paragraphs(record.sheet['other-hazards']).length > 0) classes.push('HNOC');
  const regulations = regulatory.facts(
    [...places.keys()],
    { form: record.form, classes: [...new Set(classes)] },
    exposure.carcinogens,
  );
  const named = [
    ...regulations.reportable,
    ...regulations.toxic.flatMap(({ members }) => members),
    ...regulations.state,
  ];
  return {
    limits: each(exposure.limits),
    carcinogens: each(exposure.carcinogens),
    regulations,
    regulated: new Set(named.map(({ share }) => places.get(share)!)),
  };
}

/**
 * The ingredients with the percent that may be told: of a withheld one the upper end of its prescribed range. One whose
 * identity is withheld is left out, for the entry of a list would name it.
 */
function sharesOf(input: SheetInput): ReadonlyMap<Share, number> {
  const { identity, percent } = secretsOf(input);
  return new Map(
    input.classification.constituents.flatMap(({ name, cas, low, high, water }, at): [Share, number][] => {
      if (water || identity.has(at)) return [];
      const told = percent.has(at) ? prescribedRange({ low: low.value, high: high.value }) : null;
      return [[{ name, cas, percent: told?.high ?? high.value }, at]];
    }),
  );
}
