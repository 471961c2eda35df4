import { type GtinDoubt, gtinDoubts } from '../barcode/gtin-doubts.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** Doubts about the numbers of packs and cases; a number for examples is a note, any other a warning. */
export const checkPacks = ({ packs }: ProductRecord): readonly Diagnostic[] =>
  packs.flatMap((pack, index) => [...packNumber(pack, index), ...caseNumber(pack, index)]);

/** Doubts about the number that the label of a pack carries. */
export const packNumberDoubts = ({ packs }: ProductRecord, pack: Pack): readonly Diagnostic[] =>
  packNumber(pack, packs.indexOf(pack));

const packNumber = ({ gtin, at }: Pack, index: number): readonly Diagnostic[] =>
  gtin ? gtinDoubts(gtin, 'pack').map(doubt => ({ ...told(doubt, gtin, `packs[${index}].gtin`), at })) : [];

function caseNumber({ gtin, case: outer, at }: Pack, index: number): readonly Diagnostic[] {
  const number = outer?.gtin;
  if (!number) return [];
  const path = `packs[${index}].case.gtin`;
  return gtinDoubts(number, 'case', gtin).map(doubt => ({ ...told(doubt, number, path), at }));
}

function told(doubt: GtinDoubt, gtin: string, path: string): Diagnostic {
  const warning = { code: 'gtin-doubt', severity: 'warning', path } as const;
  switch (doubt.kind) {
    case 'prefix':
      return {
        ...warning,
        severity: doubt.prefix.kind === 'example' ? 'note' : 'warning',
        message: `GTIN \`${gtin}\` begins with ${doubt.prefix.range}: ${doubt.prefix.meaning}`,
        hint: 'a number for trade begins with the company prefix that a GS1 organization gave you',
      };
    case 'variable-measure':
      return {
        ...warning,
        message: `GTIN \`${gtin}\` begins with 9: an item of variable measure`,
        hint: 'a pack of fixed contents has a number of its own',
      };
    case 'grouping-on-pack':
      return {
        ...warning,
        message: `GTIN \`${gtin}\` is that of a case, and stands on a pack`,
        hint: `the item in it is ${doubt.contained}; give the number of the case under \`case\``,
      };
    default:
      return {
        ...warning,
        message: `GTIN \`${gtin}\` is that of a case of ${doubt.contained}, and the pack has ${doubt.pack}`,
        hint: 'compare both numbers',
      };
  }
}
