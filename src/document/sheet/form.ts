import euCutOffs from '../../../hazard-data/eu-clp/sheet/cut-offs.json' with { type: 'json' };
import euSections from '../../../hazard-data/eu-clp/sheet/sections.json' with { type: 'json' };
import forms from '../../../hazard-data/sheet/forms.json' with { type: 'json' };
import unCutOffs from '../../../hazard-data/un-ghs/sheet/cut-offs.json' with { type: 'json' };
import unSections from '../../../hazard-data/un-ghs/sheet/sections.json' with { type: 'json' };
import type { BasisId } from '../../reference/basis.ts';

/** What differs between the safety data sheets of the bases. */
export interface SheetForm {
  readonly title: string;
  /** Name of its files without the ending. */
  readonly file: string;
  readonly paper: 'letter' | 'a4';
  /** BCP 47, in which its law asks for it; null where that is of the market. */
  readonly language: string | null;
  /** Market for which a packet holds it; null where none asks for it by itself. */
  readonly market: 'us' | 'eu' | null;
  readonly outline: 'appendix-d' | 'numbered';
  /** What a trade secret may withhold: see `hazard-data/sheet/forms.json`. */
  readonly secrets: 'paragraph-i' | 'alternative-name' | 'confidential';
  /** Whether it holds what Annex II of Regulation (EC) No 1907/2006 asks beside the GHS. */
  readonly reach: boolean;
  /** Degrees Fahrenheit beside Celsius, and contents as the record has them; elsewhere metric units alone. */
  readonly customaryUnits: boolean;
  /** Head of a section with places for `number` and `heading`; null where the heading stands alone. */
  readonly sectionHead: string | null;
  /** Paragraph by which the statement on unknown acute toxicity is due. */
  readonly unknownAcuteToxicity: string;
}

const FORMS = forms.sheets as Readonly<Record<BasisId, SheetForm>>;

/** The form of the data sheet of a basis. */
export const sheetForm = (basis: BasisId): SheetForm => FORMS[basis];

/** Bases of which a market asks for a sheet. */
export const marketBases = (markets: readonly string[]): readonly BasisId[] =>
  (Object.keys(FORMS) as BasisId[]).filter(id => markets.includes(FORMS[id].market ?? ''));

/** A part of a section with its items, as the law numbers and heads them. */
export interface SheetPart {
  readonly number: string;
  readonly heading: string;
  readonly items: readonly {
    readonly key: string;
    readonly heading: string;
    readonly letter?: string;
    readonly asks?: string | null;
    readonly optional?: boolean;
  }[];
}

/** A section of a numbered sheet. */
export interface SheetOutline {
  readonly number: number;
  readonly heading: string;
  readonly parts: readonly SheetPart[];
}

/** Percent from which a category of a class puts its ingredient into section 3. */
export interface CutOffRow {
  readonly class: string;
  readonly categories: readonly string[];
  readonly from: number;
}

/** A least percent; another for gases. */
export interface Least {
  readonly from: number;
  readonly fromGas: number;
}

/** Which ingredients a numbered sheet names, from a date on. */
export interface CutOffs {
  readonly inForce: string;
  readonly classified: {
    readonly rows: readonly CutOffRow[];
    readonly sensitizerShareOfSpecificLimit?: number;
  };
  readonly unclassified?: { readonly rows: readonly CutOffRow[]; readonly otherwise: Least };
  readonly identified?: { readonly from: number; readonly classes: readonly CutOffRow[] };
  readonly unionLimit?: { readonly unclassified: Least };
}

/** The outline of a numbered sheet. @throws RangeError where the sheet of the basis has none */
export const outlineOf = (basis: BasisId): readonly SheetOutline[] =>
  ofBasis([euSections, unSections], basis).sections;

/** The cut-offs of a numbered sheet on a date (YYYY-MM-DD), the earliest before that. @throws RangeError where there are none */
export function cutOffsOn(basis: BasisId, asOf: string): CutOffs {
  const versions: readonly CutOffs[] = ofBasis([euCutOffs, unCutOffs], basis).versions;
  return versions.findLast(({ inForce }) => inForce <= asOf) ?? versions[0]!;
}

function ofBasis<T extends { readonly basis: string }>(files: readonly T[], basis: BasisId): T {
  const found = files.find(file => file.basis === basis);
  if (found === undefined) throw new RangeError(`the sheet of ${basis} has no numbered parts`);
  return found;
}
