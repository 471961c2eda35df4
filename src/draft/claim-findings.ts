import type { Claim, ClaimText } from '../duties/claim.ts';
import { screenClaims } from '../duties/claims.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { Words } from '../words/words.ts';

/** Claims in the maker's own words for the label: name, use and `copy`. Nothing is rewritten. */
export function claimsOf(record: ProductRecord, { hazardStatements, supplemental }: LabelElements): Claim[] {
  const { name, use, copy, file } = record;
  const written: readonly (readonly [path: string, text: string | null | undefined])[] = [
    ['name', name],
    ['use', use],
    ['copy.tagline', copy.tagline],
    ...copy.directions.map((text, index) => [`copy.directions[${index}]`, text] as const),
    ['copy.origin', copy.origin],
    ['copy.note', copy.note],
  ];
  const texts = written.flatMap(([path, text]): ClaimText[] =>
    text ? [{ path, text, places: copy.at?.[path] ?? [], file }] : [],
  );
  return screenClaims(
    texts,
    [...hazardStatements, ...supplemental].map(({ code }) => code),
  );
}

/** The same as findings with line and column: warnings, and notes where evidence alone is asked for. */
export const claimFindings = (record: ProductRecord, elements: LabelElements, words: Words): Diagnostic[] =>
  claimsOf(record, elements).map(claim => ({
    code: `claim-${claim.kind}`,
    severity: claim.verdict === 'substantiate' ? 'note' : 'warning',
    message: words.claim(claim),
    at: claim.at,
    path: claim.path,
    cite: claim.cite,
  }));
