import { compare } from '../../quantity/sum.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import {
  becauseOfShares,
  type Finding,
  hasClass,
  over,
  type Share,
  type SupplementalInput,
  sharesOf,
} from './_finding.ts';
import { rules } from './_rules.ts';

/** Statements that named constituents bring: CLP Annex II 2.1 to 2.7, 2.9 and 2.12. */
export const byConstituent = (input: SupplementalInput): Finding[] => [
  ...lead(input),
  ...cyanoacrylate(input),
  ...cement(input),
  ...isocyanates(input),
  ...epoxy(input),
  ...activeChlorine(input),
  ...cadmium(input),
  ...flammableInUse(input),
  ...titaniumDioxide(input),
];

const plain = (code: string, because: Finding['because'], open?: string): Finding => ({
  code,
  fields: {},
  because,
  readings: [],
  ...(open === undefined ? {} : { open }),
});

/** 2.1: paints and varnishes with more than 0.15 % lead, as metal. */
function lead(input: SupplementalInput): Finding[] {
  const { code, cite, above, asks, members } = rules.lead;
  const shares = sharesOf(input, members, ({ fraction }) => fraction);
  if (!over(shares, above, false)) return [];
  return [plain(code, becauseOfShares(shares, above, false, 'lead, as metal', cite), asks)];
}

/** 2.2: adhesives based on cyanoacrylate. */
function cyanoacrylate(input: SupplementalInput): Finding[] {
  const { code, cite, from, asks, members } = rules.cyanoacrylate;
  const shares = sharesOf(input, members);
  if (!over(shares, from, true)) return [];
  const because = becauseOfShares(shares, from, true, 'cyanoacrylates', cite);
  return [{ code, fields: {}, because, readings: ['euh202-share'], open: asks }];
}

/** 2.3: soluble chromium (VI) in cement, by its dry weight, unless the mixture is a skin sensitizer already. */
function cement(input: SupplementalInput): Finding[] {
  const { code, cite, above, unless, asks, members, chromates } = rules.cement;
  const cements = sharesOf(input, members);
  if (cements.length === 0 || hasClass(input, [unless])) return [];
  const chromium = sharesOf(input, chromates, ({ fraction }) => fraction);
  const dry = cements.reduce((sum, { ingredient }) => sum + ingredient.percent.value, 0);
  const ofCement = chromium.map(({ ingredient, weight }) => ({ ingredient, weight: (weight * 100) / dry }));
  // Chromium over cement is above the limit where chromium less that share of the cement is above nothing; exact.
  const excess = [
    ...chromium.map(({ ingredient, weight }) => ({ ingredient, weight: weight * 100 })),
    ...cements.map(({ ingredient }) => ({ ingredient, weight: -above })),
  ];
  if (chromium.length > 0 && over(excess, 0, false))
    return [
      plain(
        code,
        becauseOfShares(ofCement, above, false, 'soluble chromium (VI) by weight of cement', cite, true),
      ),
    ];
  return [plain(code, becauseOfShares(cements, 0, false, 'cement', cite), asks)];
}

const wordsOf = new Map(
  [rules.isocyanates, rules.epoxy].map(({ namePattern }) => [namePattern, new RegExp(namePattern, 'i')]),
);

/** Ingredients that a rule names by CAS number or by a word in the name. */
function named(input: SupplementalInput, { members, namePattern }: typeof rules.isocyanates): Share[] {
  const words = wordsOf.get(namePattern)!;
  return input.mixture.ingredients
    .filter(
      ({ cas, name, percent }) =>
        percent.value > 0 && (members.some(member => member.cas === cas) || words.test(name)),
    )
    .map(ingredient => ({ ingredient, weight: 1 }));
}

/** 2.4: isocyanates as monomers, oligomers or prepolymers; no limit. */
function isocyanates(input: SupplementalInput): Finding[] {
  const { code, cite, above, what } = rules.isocyanates;
  const shares = named(input, rules.isocyanates);
  return shares.length > 0 ? [plain(code, becauseOfShares(shares, above, false, what, cite))] : [];
}

/** 2.5: epoxy constituents of average molecular weight 700 or less; no limit. */
function epoxy(input: SupplementalInput): Finding[] {
  const { code, cite, above, what, asks, members } = rules.epoxy;
  const listed = sharesOf(input, members);
  if (listed.length > 0) return [plain(code, becauseOfShares(listed, above, false, what, cite))];
  const shares = named(input, rules.epoxy);
  return shares.length > 0
    ? [plain(code, becauseOfShares(shares, above, false, 'epoxy constituents', cite), asks)]
    : [];
}

/** Ingredients whose own statement (2.4, 2.5) makes EUH208 for them unnecessary. */
export const covered = (input: SupplementalInput): ReadonlySet<Ingredient> =>
  new Set(
    [...named(input, rules.isocyanates), ...sharesOf(input, rules.epoxy.members)].map(
      ({ ingredient }) => ingredient,
    ),
  );

/** 2.6: more than 1 % active chlorine, sold to the general public. */
function activeChlorine(input: SupplementalInput): Finding[] {
  const { code, cite, above, asks, members } = rules.activeChlorine;
  const { generalPublic } = input.soldAs;
  const shares = sharesOf(input, members, member => member.activeChlorine);
  if (generalPublic === false || !over(shares, above, false)) return [];
  const because = becauseOfShares(shares, above, false, 'active chlorine', cite);
  return [plain(code, because, generalPublic ? undefined : asks)];
}

/** 2.7: cadmium alloys for brazing or soldering. */
function cadmium(input: SupplementalInput): Finding[] {
  const { code, cite, above, asks, members } = rules.cadmium;
  const shares = input.mixture.form === 'solid' ? sharesOf(input, members) : [];
  return shares.length > 0 ? [plain(code, becauseOfShares(shares, above, false, 'cadmium', cite), asks)] : [];
}

/** 2.9: liquids with a halogenated hydrocarbon and more than 5 % of flammable substances, themselves hardly flammable. */
function flammableInUse(input: SupplementalInput): Finding[] {
  const {
    code,
    milderCode,
    cite,
    above,
    flashPointAbove,
    flashPointUpTo,
    highlyFlammable,
    flammable,
    asks,
    members,
  } = rules.flammableInUse;
  const { form, ingredients, properties } = input.mixture;
  if (form !== 'liquid' || sharesOf(input, members).length === 0) return [];
  const flash = properties.flashPoint?.value;
  if (
    flash?.kind === 'temperature' &&
    (compare(flash.celsius, flashPointAbove) <= 0 || compare(flash.celsius, flashPointUpTo) > 0)
  )
    return [];
  if (!flash && hasClass(input, ['Flam. Liq.'])) return [];
  const ofCategory = (categories: readonly string[]): Share[] =>
    ingredients
      .filter(ingredient =>
        hazardsOf(ingredient, 'Flam. Liq.').some(({ category }) => categories.includes(category)),
      )
      .map(ingredient => ({ ingredient, weight: 1 }));
  const open = flash ? undefined : asks;
  const high = ofCategory(highlyFlammable);
  if (over(high, above, false))
    return [
      plain(
        code,
        becauseOfShares(high, above, false, 'highly flammable beside halogenated hydrocarbons', cite),
        open,
      ),
    ];
  const all = ofCategory([...highlyFlammable, ...flammable]);
  if (!over(all, above, false)) return [];
  return [
    plain(
      milderCode,
      becauseOfShares(all, above, false, 'flammable beside halogenated hydrocarbons', cite),
      open,
    ),
  ];
}

/** 2.12: titanium dioxide; annulled with its classification unless the record takes the other reading. */
function titaniumDioxide(input: SupplementalInput): Finding[] {
  const { liquid, solid, cite, from, asks, annulment, members } = rules.titaniumDioxide;
  const { form } = input.mixture;
  const shares = sharesOf(input, members);
  if ((form !== 'liquid' && form !== 'solid') || !over(shares, from, true)) return [];
  const code = form === 'liquid' ? liquid : solid;
  const because = becauseOfShares(shares, from, true, 'titanium dioxide', cite);
  const readings = ['titanium-dioxide'] as const;
  if (input.take('titanium-dioxide') === 'apply')
    return [{ code, fields: {}, because, readings, ...(form === 'liquid' ? { open: asks } : {}) }];
  return [
    {
      code,
      fields: {},
      because,
      readings,
      open: `the paragraph applies although ${annulment}`,
    },
  ];
}
