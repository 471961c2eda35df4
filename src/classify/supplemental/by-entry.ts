import type { SupplementalLimit } from '../../notation/parse-limit.ts';
import { compare, reaches } from '../../quantity/sum.ts';
import type { Ingredient } from '../ingredient.ts';
import {
  becauseOfShares,
  type Finding,
  hasClass,
  isClassified,
  over,
  type Share,
  type SupplementalInput,
} from './_finding.ts';
import { citeAnnex, rules } from './_rules.ts';

/** Statements of harmonised entries that pass to the mixture: CLP Annex II part 1, on classified mixtures only. */
export function byEntry(input: SupplementalInput): Finding[] {
  if (!isClassified(input)) return [];
  return [
    ...gasRelease(input),
    ...eyeContact(input),
    ...skinDryness(input),
    ...respiratoryTract(input),
    ...asked(input),
  ];
}

const carrying = ({ mixture }: SupplementalInput, code: string): Share[] =>
  mixture.ingredients
    .filter(({ data, percent }) => data.supplemental.includes(code) && percent.value > 0)
    .map(ingredient => ({ ingredient, weight: 1 }));

/** 1.2.1 to 1.2.3: from the limit of the entry, else from the lowest limit that any entry has. */
function gasRelease(input: SupplementalInput): Finding[] {
  const { from, statements } = rules.gasRelease;
  return statements.flatMap(({ code, cite, what }): Finding[] => {
    const found = carrying(input, code).map(share => ({ share, limit: limitOf(share.ingredient, code) }));
    const listed = found.find(({ share, limit }) => limit && passes(share.ingredient, limit));
    if (listed) {
      const because = becauseOfShares(
        [listed.share],
        listed.limit!.low!.value,
        listed.limit!.lowInclusive,
        what,
        `${cite}; Annex VI Table 3`,
      );
      return [{ code, fields: {}, because, readings: [] }];
    }
    const bare = found.find(({ share, limit }) => !limit && reaches(share.ingredient.percent, from));
    if (!bare) return [];
    const because = becauseOfShares([bare.share], from, true, what, cite);
    const asks = input.take('euh-entry-limit') === 'ask';
    return [
      {
        code,
        fields: {},
        because,
        readings: ['euh-entry-limit'],
        ...(asks ? { open: `the mixture itself ${what} in dangerous amounts` } : {}),
      },
    ];
  });
}

const limitOf = ({ data }: Ingredient, code: string): SupplementalLimit | undefined =>
  data.supplementalLimits.find(({ statement, low }) => statement === code && low !== null);

function passes({ percent }: Ingredient, { low, lowInclusive }: SupplementalLimit): boolean {
  const order = compare(percent, low!.value);
  return lowInclusive ? order >= 0 : order > 0;
}

/** 1.2.5: from 0.1 % of a substance so labelled. */
function eyeContact(input: SupplementalInput): Finding[] {
  const { code, cite, from } = rules.eyeContact;
  const share = carrying(input, code).find(({ ingredient }) => reaches(ingredient.percent, from));
  if (!share) return [];
  return [
    {
      code,
      fields: {},
      because: becauseOfShares([share], from, true, 'contains a substance toxic by eye contact', cite),
      readings: [],
    },
  ];
}

/** 1.2.4: not beside skin irritation; the law has no figure. */
function skinDryness(input: SupplementalInput): Finding[] {
  const { code, cite, from, askFrom, notWith } = rules.skinDryness;
  if (hasClass(input, notWith)) return [];
  const shares = carrying(input, code);
  const rule = 'substances that dry the skin';
  const readings = ['euh066-share'] as const;
  const open = 'repeated exposure to the mixture may cause skin dryness or cracking';
  if (over(shares, from, true)) {
    const asks = input.take('euh066-share') === 'ask';
    return [
      {
        code,
        fields: {},
        because: becauseOfShares(shares, from, true, rule, cite),
        readings,
        ...(asks ? { open } : {}),
      },
    ];
  }
  if (!over(shares, askFrom, true)) return [];
  return [{ code, fields: {}, because: becauseOfShares(shares, askFrom, true, rule, cite), readings, open }];
}

/** 1.2.6: (a) toxic by inhalation through corrosion; (b) corrosive to skin, may be inhaled, no inhalation data. */
function respiratoryTract(input: SupplementalInput): Finding[] {
  const { code, cite, from } = rules.respiratoryTract;
  const inhaled = hasClass(input, ['Acute Tox.'], 'inhalation');
  const corrosive = hasClass(input, ['Skin Corr.']);
  if (!inhaled && !corrosive) return [];
  const share = carrying(input, code).find(({ ingredient }) => reaches(ingredient.percent, from));
  if (share)
    return [
      {
        code,
        fields: {},
        because: becauseOfShares(
          [share],
          from,
          true,
          'contains a substance corrosive to the respiratory tract',
          cite,
        ),
        readings: ['euh071-entry'],
      },
    ];
  if (!corrosive) return [];
  const because = {
    rule: inhaled ? 'toxic by inhalation and corrosive to skin' : 'corrosive to skin, no class by inhalation',
    cite: citeAnnex(cite),
    working: inhaled ? 'Acute Tox. (inhalation) with Skin Corr.' : 'Skin Corr.',
  };
  const open = inhaled
    ? 'the mechanism of toxicity by inhalation is corrosivity'
    : 'the mixture may be inhaled and there are no inhalation data';
  return [{ code, fields: {}, because, readings: [], open }];
}

/** 1.1.1, 1.1.3, 1.1.4: properties of the mixture itself, which a substance in it makes likely. */
function asked(input: SupplementalInput): Finding[] {
  const { from, statements } = rules.askedByEntry;
  return statements.flatMap(({ code, cite, asks }): Finding[] => {
    const shares = carrying(input, code).filter(({ ingredient }) => reaches(ingredient.percent, from));
    if (shares.length === 0) return [];
    return [
      {
        code,
        fields: {},
        because: becauseOfShares(shares, from, true, 'contains a substance with this statement', cite),
        readings: ['euh-asked-by-entry'],
        open: asks,
      },
    ];
  });
}
