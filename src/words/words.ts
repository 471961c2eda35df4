import type { SizeFact } from '../barcode/size-facts.ts';
import type { ClassifiedConstituent, Reading } from '../classify/classification.ts';
import type { Because } from '../classify/facts/because.ts';
import type { Provision } from '../classify/facts/provision.ts';
import type { Warning } from '../classify/facts/warning.ts';
import type { BridgingFault } from '../classify/facts/warning-evidence.ts';
import type { DataSource } from '../classify/ingredient.ts';
import type { ReadingId } from '../classify/readings.ts';
import type { Claim } from '../duties/claim.ts';
import type { Duty } from '../duties/duty.ts';
import type { Conditional, PrecautionaryStatement, Proposed, Unused } from '../labelling/label-elements.ts';
import type { OmissionReason } from '../labelling/omission-reason.ts';
import type { OpenOnDocuments } from '../labelling/open-on-documents.ts';
import type { LabelPurpose, PurposeDecision, WorkplaceStatement } from '../labelling/purposes.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import type { Style } from '../quantity/print.ts';
import type { Dilution } from '../record/record-blocks.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { AnswerWords } from './answer-words.ts';
import type { ConsumerWords } from './consumer-words.ts';
import type { LabelWords } from './label-words.ts';
import type { ReviewPageWords } from './review-page-words.ts';
import type { SheetFact } from './sheet-fact.ts';
import type { SheetWords } from './sheet-words.ts';
import type { SpokenWords } from './spoken-words.ts';
import type { SupplyWords } from './supply-words.ts';

/** How a constituent is called, by its place in the list: whoever prints decides what may be told. */
export type Names = (constituent: number) => string;

/** How a result is told, and how much of it. */
export interface Telling {
  readonly names: Names;
  readonly style: Style;
  /** Whether concentrations may be told. */
  readonly amounts: boolean;
  /** Whether the class stands beside the reason, so that the reason need not name it. */
  readonly classNamed?: boolean;
}

/** A reason as a person reads it. */
export interface Reasoned {
  /** Name of the rule in a few words. */
  readonly rule: string;
  /** The rule worked as on paper. */
  readonly working: string;
  /** Set where the working begins with the name of the rule, so that it need not be said before it. */
  readonly saysRule?: boolean;
}

/** A reading of the law in words. */
export interface ReadingWords {
  readonly question: string;
  /** What each option means, by its name. */
  readonly options: Readonly<Record<string, string>>;
}

/** Percents of a constituent whose share is a range, printed. */
export interface RangeEnd {
  readonly name: string;
  readonly taken: string;
  readonly low: string;
  readonly high: string;
}

/** Titles, heads and short phrases of the work sheet. */
export interface WorkSheetWords {
  readonly title: string;
  draft(basis: string, asOf: string): string;
  readonly blocks: Readonly<
    Record<
      | 'constituents'
      | 'hazards'
      | 'elements'
      | 'solutions'
      | 'warnings'
      | 'otherClasses'
      | 'notApplicable'
      | 'ateMix'
      | 'unknownToxicity'
      | 'omitted'
      | 'readings',
      { readonly title: string; readonly head: readonly string[] }
    >
  >;
  readonly signalWord: string;
  readonly pictograms: string;
  readonly none: string;
  unknown(endpoints: readonly string[]): string;
  range(low: string, high: string): string;
  replaced(text: string, outcome: string, calculation: string): string;
  /** A reason that ranges decide: the ends that were taken, and what the milder ones give. */
  ranged(text: string, ends: readonly RangeEnd[], milder: string): string;
}

/** Lines of the list of what a reviewer must look at. */
export interface ReviewWords {
  undecided(classes: readonly string[]): string;
  byEvidence(codes: readonly string[]): string;
  /** Classes not given because of evidence, with the code or outcome of the calculation. */
  liftedByEvidence(classes: readonly { readonly title: string; readonly calculated: string }[]): string;
  choice(reading: string, take: string, reason: string): string;
  leftOff(what: string, why: string): string;
  /** Subheadings of the sheet that nobody has searched for yet. */
  unsearched(
    items: readonly { readonly section: number; readonly headings: readonly string[] }[],
    mandatory: boolean,
  ): string;
  /** Ingredients that section 3 does not list. */
  belowCutOff(names: readonly string[]): string;
  /** No symptoms of acute toxicity beyond those of the class. */
  readonly symptomsOpen: string;
  /** Facts from memory about ingredients. */
  unconfirmed(names: readonly string[]): string;
}

/** Label elements: what is left off, lacks words, stands on an open condition, or is combined here. */
export interface StatementTelling {
  why(reason: OmissionReason): string;
  /** Statements that stand because a condition is open, those of one fact in one line, with the key that answers it. */
  conditionals(all: readonly Conditional[]): readonly string[];
  /** Statements whose codes no revision prints together; nothing where there are none. */
  combined(statements: readonly PrecautionaryStatement[]): readonly string[];
  /** Lines on the label that nobody has yet kept or left out. */
  proposed(lines: readonly Proposed[]): readonly string[];
  unused(unused: Unused): string;
}

/** Figures of a raw material in a batch, rounded; null where they cannot be told. */
export interface BatchFigures {
  /** Avoirdupois pounds. */
  readonly pounds: number | null;
  /** US gallons. */
  readonly gallons: number | null;
  /** Parts of the product that hold one part of the raw material. */
  readonly onePartTo: number | null;
  readonly by: 'weight' | 'volume';
}

/** Amounts of a raw material in a batch, told to whoever weighs it out. */
export interface BatchWords {
  /** @param pounds of the batch; null where its size is not known. */
  head(name: string, pounds: number | null, densityKnown: boolean): string;
  amount(figures: BatchFigures): string;
  range(low: string, high: string): string;
  now(amount: string): string;
  /** An amount from which, or above which, something changes. */
  change(side: 'at' | 'above', percent: string, amount: string): string;
  /** What may be added before a hazard becomes more severe. */
  room(side: 'at' | 'above', figures: BatchFigures, others: 'water' | 'scaled'): string;
  /** The most there can be: the raw material as delivered, or all water used up. */
  end(percent: string, amount: string, asDelivered: boolean): string;
}

/** Facts about a result turned into text of one language. */
export interface Words {
  /** BCP 47 */
  readonly language: string;
  /** Between whole and part of a number on documents. */
  readonly decimalMark: '.' | ',';
  /**
   * Paragraphs, the instrument named where it changes.
   * @param known instruments that need not be named.
   */
  cites(provisions: readonly Provision[], known?: readonly string[]): string;
  because(because: Because, tell: Telling): Reasoned;
  warning(warning: Warning, tell: Telling): string;
  reading(id: ReadingId): ReadingWords;
  /** What is taken for a reading: the option and what it means. */
  taken(reading: Reading): string;
  /** Where the data of a constituent come from. */
  source(source: DataSource): string;
  /** What else the calculation works from: estimates, M-factors, specific limits, marks of the record. */
  values(constituent: ClassifiedConstituent): readonly string[];
  readonly answer: AnswerWords;
  readonly workSheet: WorkSheetWords;
  readonly sheet: SheetWords;
  readonly label: LabelWords;
  readonly outcomes: Readonly<Record<string, string>>;
  readonly review: ReviewWords;
  readonly reviewPage: ReviewPageWords;
  readonly batch: BatchWords;
  readonly statements: StatementTelling;
  readonly spoken: SpokenWords;
  /** Notices of a draft label on what is open, the longest first; none where nothing is. */
  draftNotices(open: OpenOnDocuments): readonly string[];
  /** A line of directions on how to dilute. */
  dilution(dilution: Dilution): string;
  readonly consumer: ConsumerWords;
  readonly supply: SupplyWords;
  /** What a label is called: `label for consumers in the United States`. */
  purposeName(purpose: LabelPurpose): string;
  /** Whether a label is due, and why. */
  purpose(decision: PurposeDecision): string;
  /** All decisions: what nobody has answered is one line. */
  purposes(decisions: readonly PurposeDecision[]): readonly string[];
  /** Statements that consumers are proposed to be spared, a line a ground. */
  workplaceWords(statements: readonly WorkplaceStatement[]): readonly string[];
  /** The line beside a label that tells the press what it is, and which inks are not to be printed. */
  jobLine(
    stock: { readonly die: { readonly width: number; readonly height: number }; readonly unit?: LengthUnit },
    title: string,
    technical: readonly string[],
  ): string;
  /** What is to be told of labels on a sheet. */
  labelSheet(fact: SheetFact, unit: LengthUnit): Diagnostic;
  /** What is to be told of the size of a bar code, lengths in the unit of the record. */
  barCodeSize(facts: readonly SizeFact[], name: string, unit: LengthUnit): readonly Diagnostic[];
  /** What the maker's words claim, and why that is to be weighed. */
  claim(claim: Claim): string;
  /** Duties around the label, related ones in one line: how they stand, what triggered them, their paragraph. */
  duties(duties: readonly Duty[]): readonly string[];
  bridgingFault(fault: BridgingFault): { readonly message: string; readonly hint?: string };
}
