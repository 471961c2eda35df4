import type { ElementString } from '../../barcode/element-strings.ts';
import type { CaseFacts } from '../../logistics/case-facts.ts';
import type { Pack, ProductRecord } from '../../record/product-record.ts';
import { bothMasses, plain } from './lengths.ts';
import { palletLines } from './pallet.ts';

/** What a file of a case is: its label, a mark of transport, the logistic label of its pallet, the drawing of the load. */
export type CaseFileKind =
  | 'case'
  | 'limited-quantity'
  | 'arrows'
  | 'shipping-name'
  | 'pallet'
  | 'pallet-load';

/** Said on every label until a reviewer has signed. */
export const DRAFT = 'DRAFT for qualified review';

/** The words of a case label, the largest first. */
export function caseLines(
  record: ProductRecord,
  pack: Pack,
  facts: CaseFacts,
  batch: { readonly lot: string | null; readonly made: string | null; readonly useBy: string | null },
): string[] {
  const { mass, count } = facts;
  const dates = [
    ...(batch.lot === null ? [] : [`Lot ${batch.lot}`]),
    ...(batch.made === null ? [] : [`Made ${batch.made}`]),
    ...(batch.useBy === null ? [] : [`Use by ${batch.useBy}`]),
  ];
  const weighed = [
    ...(mass.gross === null ? [] : [`Gross ${bothMasses(mass.gross)}`]),
    ...(mass.net === null ? [] : [`Net ${bothMasses(mass.net)}`]),
  ];
  return [
    `Count ${count} × ${pack.contents.written}   ${record.code}`,
    dates.join('   '),
    weighed.join('   '),
  ].filter(line => line !== '');
}

/** Small lines of a label: maker and draft notice. */
export const smallLines = ({ maker }: ProductRecord): string[] => [
  ...(maker ? [[maker.name, ...maker.address].join(', ')] : []),
  DRAFT,
];

/** Free text of a logistic label: what it is, whose it is, and the draft notice. */
export const logisticLines = ({ name, code, maker }: ProductRecord): string[] => [
  `${name}   ${code}   ${DRAFT}`,
  ...(maker ? [[maker.name, ...maker.address].join(', ')] : []),
];

/** A value as it is shown beside its data title: dates as calendar dates of this century. */
export function shownValue({ ai, value }: ElementString): string {
  if (!['11', '15', '17'].includes(ai)) return value;
  const [year, month, day] = [value.slice(0, 2), value.slice(2, 4), value.slice(4)];
  return `20${year}-${month}-${day}`;
}

/** Facts of a case for a reader, a line each. */
export function caseText(facts: CaseFacts, name: string, pack: Pack): string[] {
  const { mass } = facts;
  const lines = [
    `${name}, ${pack.id}: case of ${facts.count}${facts.gtin === null ? '' : `, GTIN ${facts.gtin}`}`,
  ];
  if (mass.gross !== null) lines.push(`gross ${bothMasses(mass.gross)}`);
  if (mass.net !== null) lines.push(`net ${bothMasses(mass.net)}`);
  if (facts.limitedQuantity?.mark)
    lines.push(
      `mark of a limited quantity: sides of ${plain(facts.limitedQuantity.mark.side)} mm, border ${plain(facts.limitedQuantity.mark.border)} mm (${facts.limitedQuantity.mark.cite})`,
    );
  if (facts.load) lines.push(...palletLines(facts.load));
  return lines;
}

/** What the files of a case are, for a list of files. @param contents of one pack, as written */
export const caseFileWords = (count: number, contents: string): Readonly<Record<CaseFileKind, string>> => {
  const of = `case of ${count} × ${contents}`;
  return {
    case: `case label, ${of}`,
    'limited-quantity': `mark of a limited quantity, ${of}`,
    arrows: `orientation arrows, ${of}`,
    'shipping-name': `identification number and shipping name, ${of}`,
    pallet: `logistic label of the pallet, ${of}`,
    'pallet-load': `load of the pallet, drawn, ${of}`,
  };
};

/** Words of the labels with marks. */
export const markWords = ({ name, code }: Pick<ProductRecord, 'name' | 'code'>, date: string) => ({
  limitedQuantity: {
    alt: 'Mark of a limited quantity',
    foot: `${code} · limited quantity, 49 CFR 172.315(a) · ${DRAFT}`,
    title: `${name}: mark of a limited quantity`,
    date,
  },
  shipping: (pack: string) => ({
    title: `${name}: number and shipping name`,
    subject: `${code}, case of ${pack}`,
  }),
  shippingFoot: `${code} · 49 CFR 172.301, 172.324; hazard labels of 172.400 are separate`,
  orientation: {
    alt: 'Package orientation: this way up',
    caption: 'THIS WAY UP',
    foot: `${code} · on two opposite sides, 49 CFR 172.312(a)(2) · ${DRAFT}`,
    title: `${name}: orientation arrows`,
    date,
  },
});
