import type { SupplementalLimit } from '../../notation/parse-limit.ts';
import type { Scale } from '../../quantity/scale.ts';
import type { Because } from '../facts/because.ts';
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
import { ofAnnex, rules } from './_rules.ts';

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
  return statements.flatMap(({ code, cite }): Finding[] => {
    const found = carrying(input, code).map(share => ({ share, limit: limitOf(share.ingredient, code) }));
    const listed = found.find(({ share, limit }) => limit && passes(input.scale, share.ingredient, limit));
    if (listed) {
      const because = becauseOfShares([listed.share], {
        rule: 'releases-gas',
        limit: listed.limit!.low!.value,
        inclusive: listed.limit!.lowInclusive,
        paragraph: `${cite}; Annex VI Table 3`,
        code,
      });
      return [{ code, fields: {}, because, readings: [] }];
    }
    const bare = found.find(
      ({ share, limit }) => !limit && input.scale.reaches(share.ingredient.percent, from),
    );
    if (!bare) return [];
    const of = { rule: 'releases-gas', limit: from, inclusive: true, paragraph: cite, code } as const;
    const because = becauseOfShares([bare.share], of);
    const asks = input.take('euh-entry-limit') === 'ask';
    const readings = ['euh-entry-limit'] as const;
    return [{ code, fields: {}, because, readings, ...(asks && { open: 'gasRelease' as const }) }];
  });
}

const limitOf = ({ data }: Ingredient, code: string): SupplementalLimit | undefined =>
  data.supplementalLimits.find(({ statement, low }) => statement === code && low !== null);

function passes(scale: Scale, { percent }: Ingredient, { low, lowInclusive }: SupplementalLimit): boolean {
  const order = scale.compare(percent, low!.value);
  return lowInclusive ? order >= 0 : order > 0;
}

/** 1.2.5: from 0.1 % of a substance so labelled. */
function eyeContact(input: SupplementalInput): Finding[] {
  const { code, cite, from } = rules.eyeContact;
  const share = carrying(input, code).find(({ ingredient }) => input.scale.reaches(ingredient.percent, from));
  if (!share) return [];
  const of = { rule: 'toxic-by-eye-contact', limit: from, inclusive: true, paragraph: cite, code } as const;
  return [{ code, fields: {}, because: becauseOfShares([share], of), readings: [] }];
}

/** 1.2.4: not beside skin irritation; the law has no figure. */
function skinDryness(input: SupplementalInput): Finding[] {
  const { code, cite, from, askFrom, notWith } = rules.skinDryness;
  if (hasClass(input, notWith)) return [];
  const shares = carrying(input, code);
  const because = (limit: number) =>
    becauseOfShares(shares, { rule: 'dries-skin', limit, inclusive: true, paragraph: cite, code });
  const readings = ['euh066-share'] as const;
  const open = 'skinDryness' as const;
  if (over(input, shares, from, true)) {
    const asks = input.take('euh066-share') === 'ask';
    return [{ code, fields: {}, because: because(from), readings, ...(asks && { open }) }];
  }
  if (!over(input, shares, askFrom, true)) return [];
  return [{ code, fields: {}, because: because(askFrom), readings, open }];
}

/** 1.2.6: (a) toxic by inhalation through corrosion; (b) corrosive to skin, may be inhaled, no inhalation data. */
function respiratoryTract(input: SupplementalInput): Finding[] {
  const { code, cite, from } = rules.respiratoryTract;
  const inhaled = hasClass(input, ['Acute Tox.'], 'inhalation');
  const corrosive = hasClass(input, ['Skin Corr.']);
  if (!inhaled && !corrosive) return [];
  const share = carrying(input, code).find(({ ingredient }) => input.scale.reaches(ingredient.percent, from));
  if (share) {
    const of = { rule: 'corrosive-to-respiratory-tract', limit: from, inclusive: true } as const;
    const because = becauseOfShares([share], { ...of, paragraph: cite, code });
    return [{ code, fields: {}, because, readings: ['euh071-entry'] }];
  }
  if (!corrosive) return [];
  const because: Because = { kind: 'classes', inhaled, cites: [ofAnnex(cite)] };
  const open = inhaled ? 'corrosiveMechanism' : 'mayBeInhaled';
  return [{ code, fields: {}, because, readings: [], open }];
}

/** 1.1.1, 1.1.3, 1.1.4: properties of the mixture itself, which a substance in it makes likely. */
function asked(input: SupplementalInput): Finding[] {
  const { from, statements } = rules.askedByEntry;
  return statements.flatMap(({ code, cite }): Finding[] => {
    const shares = carrying(input, code).filter(({ ingredient }) =>
      input.scale.reaches(ingredient.percent, from),
    );
    if (shares.length === 0) return [];
    const of = { rule: 'has-statement', limit: from, inclusive: true, paragraph: cite, code } as const;
    return [
      {
        code,
        fields: {},
        because: becauseOfShares(shares, of),
        readings: ['euh-asked-by-entry'],
        open: 'askedByEntry',
      },
    ];
  });
}
