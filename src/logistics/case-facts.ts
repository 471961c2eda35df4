import {
  type ElementFault,
  type ElementString,
  elementDate,
  elementFaults,
} from '../barcode/element-strings.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import { type CaseMass, caseMass } from './case-mass.ts';
import { type GivenCase, givenSize } from './given-case.ts';
import { gtinHierarchy, type HierarchyFact, WRONG } from './hierarchy.ts';
import {
  type LimitedQuantityMark,
  limitedQuantityGross,
  limitedQuantityMark,
  orientationMark,
} from './package-marks.ts';
import { type CaseSize, type PalletLoad, type PalletName, palletLoad } from './pallet.ts';

/** What the call adds to the record; dates are YYYY-MM-DD. */
export interface CaseQuestion {
  readonly lot: string | null;
  readonly made: string | null;
  readonly useBy: string | null;
  /** Kilograms of one empty pack, where it is not that of the record. */
  readonly emptyPack: Exact | null;
  /** Kilograms of the empty case, where it is not that of the record. */
  readonly tare: Exact | null;
  readonly size: CaseSize | null;
  readonly pallet: PalletName;
  readonly maxHeight: number | null;
  readonly layers: number | null;
  /** Cases on the pallet, where it is not as many as go. */
  readonly cases: number | null;
  readonly sscc: string | null;
  readonly limitedQuantity: boolean;
  readonly arrows: boolean;
}

/** All that is known of a case and its pallet. */
export interface CaseFacts {
  readonly count: number;
  /** GTIN-14 of the case, or null. */
  readonly gtin: string | null;
  readonly hierarchy: readonly HierarchyFact[];
  readonly mass: CaseMass;
  /** What GS1-128 on the case says: groups that stay in one symbol. */
  readonly elements: readonly (readonly ElementString[])[];
  /** What GS1-128 on the pallet says besides the SSCC; empty where no number of cases is known. */
  readonly palletElements: readonly (readonly ElementString[])[];
  readonly faults: readonly ElementFault[];
  readonly dates: 'none' | 'in-order' | 'use-by-before-made';
  /** Nothing in the numbers, the lot or the dates would make a bar code say something wrong. */
  readonly numbersRight: boolean;
  readonly limitedQuantity: {
    /** Null where the case is too small for any mark. */
    readonly mark: LimitedQuantityMark | null;
    readonly grossLimit: { readonly kilograms: number; readonly cite: string };
    readonly gross: 'within' | 'above' | 'unknown';
    /** Orientation arrows: not asked for a liquid that needs them, asked for, or needless (49 CFR 172.312(a)). */
    readonly arrows: 'due' | 'asked' | 'needless';
    /** What frees a case of arrows. */
    readonly exceptions: typeof orientationMark.exceptions;
  } | null;
  readonly size: CaseSize | null;
  readonly load: PalletLoad | null;
  /** Cases in a layer as the record has them, where the pattern found is another. */
  readonly otherLayer: number | null;
  readonly sscc: string | null;
}

/**
 * Facts of a case: numbers, mass, element strings, mark of a limited quantity, load of a pallet. Null where the pack
 * has no case.
 */
export function caseFacts(record: ProductRecord, pack: Pack, question: CaseQuestion): CaseFacts | null {
  if (!pack.case) return null;
  const { count } = pack.case;
  const gtin = pack.case.gtin === null ? null : pack.case.gtin.padStart(14, '0');
  const tare = question.tare ?? pack.case.tareKilograms;
  const density = record.properties.density?.value ?? null;
  const emptyPack = question.emptyPack ?? pack.container?.tareKilograms ?? null;
  const mass = caseMass(pack, count, density, emptyPack, tare);
  const given: GivenCase = pack.case;
  const size = question.size ?? givenSize(given);
  const layers = question.layers ?? given.layers ?? null;
  const load = size ? palletLoad(question.pallet, size, mass.gross, question.maxHeight, layers) : null;
  const elements = batch(question, gtin === null ? [] : [[{ ai: '01', value: gtin }]]);
  const cases = question.cases ?? load?.cases ?? 0;
  const palletElements = cases > 0 ? batch(question, contained(pack, gtin, count, cases)) : [];
  const sscc: ElementString[] = question.sscc === null ? [] : [{ ai: '00', value: question.sscc }];
  const { made, useBy } = question;
  const hierarchy = gtinHierarchy(pack.gtin, pack.case.gtin, count);
  const faults = elementFaults([...elements.flat(), ...sscc]);
  const dates = made === null || useBy === null ? 'none' : made <= useBy ? 'in-order' : 'use-by-before-made';
  return {
    count,
    gtin,
    hierarchy,
    mass,
    // Date and lot alone say nothing without the number that they belong to.
    elements: gtin !== null && elements.length > 1 ? elements : [],
    palletElements,
    faults,
    dates,
    numbersRight:
      !hierarchy.some(({ id }) => WRONG.includes(id)) &&
      faults.length === 0 &&
      dates !== 'use-by-before-made',
    limitedQuantity: question.limitedQuantity
      ? {
          mark: limitedQuantityMark(size),
          grossLimit: limitedQuantityGross,
          gross: grossAgainst(mass, limitedQuantityGross.kilograms),
          arrows: question.arrows ? 'asked' : record.form === 'liquid' ? 'due' : 'needless',
          exceptions: orientationMark.exceptions,
        }
      : null,
    size,
    load,
    otherLayer: load && given.perLayer && given.perLayer !== load.perLayer ? given.perLayer : null,
    sscc: question.sscc,
  };
}

function grossAgainst(mass: CaseMass, limit: number): 'within' | 'above' | 'unknown' {
  // Where parts are not known, those that are may already be too much.
  if (mass.atLeast > limit) return 'above';
  return mass.gross === null ? 'unknown' : 'within';
}

/** Date and lot after the number: (17) where there is an expiry, else (11), then (10). */
function batch(
  { lot, made, useBy }: CaseQuestion,
  first: readonly (readonly ElementString[])[],
): (readonly ElementString[])[] {
  const date: ElementString[] =
    useBy !== null
      ? [{ ai: '17', value: elementDate(useBy) }]
      : made !== null
        ? [{ ai: '11', value: elementDate(made) }]
        : [];
  const number: ElementString[] = lot === null ? [] : [{ ai: '10', value: lot }];
  return [...first, date, number].filter(({ length }) => length > 0);
}

/**
 * (02) with (37), the trade items on the pallet and their number; the count goes with (02), never with (01) (GS1
 * General Specifications 3.2, 4.14). Packs are counted where the case has no number of its own.
 */
function contained(
  pack: Pack,
  gtin: string | null,
  count: number,
  cases: number,
): (readonly ElementString[])[] {
  const item = gtin ?? pack.gtin?.padStart(14, '0') ?? null;
  if (item === null) return [];
  const items = gtin === null ? cases * count : cases;
  return [
    [
      { ai: '02', value: item },
      { ai: '37', value: String(items) },
    ],
  ];
}
