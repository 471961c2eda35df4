import type { SharesRule } from '../facts/because.ts';
import type { OpenQuestion } from '../facts/open-question.ts';
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

interface Of {
  readonly code: string;
  readonly rule: SharesRule;
  readonly cite: string;
  /** Percent. */
  readonly limit: number;
  readonly inclusive?: boolean;
  readonly readings?: Finding['readings'];
  readonly open?: OpenQuestion | undefined;
}

const found = (
  shares: readonly Share[],
  { code, rule, cite, limit, inclusive = false, readings = [], open }: Of,
): Finding[] => [
  {
    code,
    fields: {},
    because: becauseOfShares(shares, { rule, limit, inclusive, paragraph: cite, code }),
    readings,
    ...(open === undefined ? {} : { open }),
  },
];

/** 2.1: paints and varnishes with more than 0.15 % lead, as metal. */
function lead(input: SupplementalInput): Finding[] {
  const { code, cite, above, members } = rules.lead;
  const shares = sharesOf(input, members, ({ fraction }) => fraction);
  if (!over(input, shares, above, false)) return [];
  return found(shares, { code, rule: 'lead', cite, limit: above, open: 'lead' });
}

/** 2.2: adhesives based on cyanoacrylate. */
function cyanoacrylate(input: SupplementalInput): Finding[] {
  const { code, cite, from, members } = rules.cyanoacrylate;
  const shares = sharesOf(input, members);
  if (!over(input, shares, from, true)) return [];
  const readings = ['euh202-share'] as const;
  const limit = { limit: from, inclusive: true };
  return found(shares, { code, rule: 'cyanoacrylates', cite, ...limit, readings, open: 'cyanoacrylate' });
}

/** 2.3: soluble chromium (VI) in cement, by its dry weight, unless the mixture is a skin sensitizer already. */
function cement(input: SupplementalInput): Finding[] {
  const { code, cite, above, unless, members, chromates } = rules.cement;
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
  if (chromium.length > 0 && over(input, excess, 0, false))
    return found(ofCement, { code, rule: 'chromium-in-cement', cite, limit: above });
  return found(cements, { code, rule: 'cement', cite, limit: 0, open: 'cement' });
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
  const { code, cite, above } = rules.isocyanates;
  const shares = named(input, rules.isocyanates);
  return shares.length > 0 ? found(shares, { code, rule: 'isocyanates', cite, limit: above }) : [];
}

/** 2.5: epoxy constituents of average molecular weight 700 or less; no limit. */
function epoxy(input: SupplementalInput): Finding[] {
  const { code, cite, above, members } = rules.epoxy;
  const listed = sharesOf(input, members);
  if (listed.length > 0) return found(listed, { code, rule: 'epoxy-listed', cite, limit: above });
  const shares = named(input, rules.epoxy);
  return shares.length > 0 ? found(shares, { code, rule: 'epoxy', cite, limit: above, open: 'epoxy' }) : [];
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
  const { code, cite, above, members } = rules.activeChlorine;
  const { generalPublic } = input.soldAs;
  const shares = sharesOf(input, members, member => member.activeChlorine);
  if (generalPublic === false || !over(input, shares, above, false)) return [];
  const open = generalPublic ? undefined : 'activeChlorine';
  return found(shares, { code, rule: 'active-chlorine', cite, limit: above, open });
}

/** 2.7: cadmium alloys for brazing or soldering. */
function cadmium(input: SupplementalInput): Finding[] {
  const { code, cite, above, members } = rules.cadmium;
  const shares = input.mixture.form === 'solid' ? sharesOf(input, members) : [];
  if (shares.length === 0) return [];
  return found(shares, { code, rule: 'cadmium', cite, limit: above, open: 'cadmium' });
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
    members,
  } = rules.flammableInUse;
  const { form, ingredients, properties } = input.mixture;
  if (form !== 'liquid' || sharesOf(input, members).length === 0) return [];
  const flash = properties.flashPoint?.value;
  if (
    flash?.kind === 'temperature' &&
    (input.scale.compare(flash.celsius, flashPointAbove) <= 0 ||
      input.scale.compare(flash.celsius, flashPointUpTo) > 0)
  )
    return [];
  if (!flash && hasClass(input, ['Flam. Liq.'])) return [];
  const ofCategory = (categories: readonly string[]): Share[] =>
    ingredients
      .filter(ingredient =>
        hazardsOf(ingredient, 'Flam. Liq.').some(({ category }) => categories.includes(category)),
      )
      .map(ingredient => ({ ingredient, weight: 1 }));
  const open = flash ? undefined : 'flammableInUse';
  const high = ofCategory(highlyFlammable);
  if (over(input, high, above, false))
    return found(high, { code, rule: 'highly-flammable-beside-halogenated', cite, limit: above, open });
  const all = ofCategory([...highlyFlammable, ...flammable]);
  if (!over(input, all, above, false)) return [];
  return found(all, { code: milderCode, rule: 'flammable-beside-halogenated', cite, limit: above, open });
}

/** 2.12: titanium dioxide; annulled with its classification unless the record takes the other reading. */
function titaniumDioxide(input: SupplementalInput): Finding[] {
  const { liquid, solid, cite, from, members } = rules.titaniumDioxide;
  const { form } = input.mixture;
  const shares = sharesOf(input, members);
  if ((form !== 'liquid' && form !== 'solid') || !over(input, shares, from, true)) return [];
  const code = form === 'liquid' ? liquid : solid;
  const droplets = form === 'liquid' ? 'titaniumDioxide' : undefined;
  const open = input.take('titanium-dioxide') === 'apply' ? droplets : 'titaniumDioxideAnnulled';
  const readings = ['titanium-dioxide'] as const;
  return found(shares, {
    code,
    rule: 'titanium-dioxide',
    cite,
    limit: from,
    inclusive: true,
    readings,
    open,
  });
}
