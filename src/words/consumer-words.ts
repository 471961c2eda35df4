import type { PackagingFinding } from '../duties/child-resistant.ts';
import type {
  ConsumerFacts,
  ConsumerHazard,
  OpenHazard,
  UncoveredHazard,
} from '../labelling/consumer/facts.ts';
import type { Names } from './words.ts';

/** What is said of a label for consumers beside what stands on it. */
export interface ConsumerWords {
  /** A hazard, what it is drawn from, and the data that would settle it. */
  hazard(hazard: ConsumerHazard): string;
  /** @param reason of the maker, where the word is a choice. */
  signal(signal: NonNullable<ConsumerFacts['signal']>, reason: string | null): string;
  /** A choice that the law does not leave. */
  refusedSignal(refused: NonNullable<ConsumerFacts['refusedSignal']>): string;
  uncovered(hazard: UncoveredHazard): string;
  open(hazard: OpenHazard, names: Names): string;
  /** Packaging that the law calls for, beside what the pack says of its closure. */
  packaging(finding: PackagingFinding, closure: boolean | null): string;
  /** The name of a constituent that the label must give and the record keeps secret. */
  secret(shownAs: string | null): string;
  /** A container without the sizes that its panel is worked out from. */
  noPanel(missing: readonly string[]): string;
  declarationHigh(millimetres: number, most: number): string;
  declarationCrowded(text: string): string;
}
