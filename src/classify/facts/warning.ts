import type { Hazard, InhalationForm, Route } from '../../notation/hazard.ts';
import type { Exact } from '../../quantity/exact.ts';
import type { CarcinogenListing } from '../../reference/exposure/carcinogen-listings.ts';
import type { Decision } from '../../reference/harmonised/choose-entry.ts';
import type { EntryNote } from '../../reference/harmonised/entry-notes.ts';
import type { Found } from '../../reference/lists/look-up.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import type { Because } from './because.ts';
import type { Figure } from './figure.ts';
import type { OpenQuestion } from './open-question.ts';
import type { Provision } from './provision.ts';
import type { StaleMeasurement } from './stale-measurement.ts';
import type { LaterEntry, LostData } from './warning-entry.ts';
import type { EvidenceFault } from './warning-evidence.ts';

/** What a reviewer must know of a result: an id with its facts. Constituents are named by their place in the list. */
export type Warning = WarningFacts & { readonly cites: readonly Provision[] };

export type WarningId = Warning['id'];

type WarningFacts =
  | {
      readonly id: 'no-data';
      readonly constituent: number;
      readonly cas: string | null;
      /** The entry that applies from a later date. */
      readonly later?: LaterEntry;
    }
  | {
      readonly id: 'record-replaces-entry';
      readonly constituent: number;
      /** What the record names as the source of its hazards. */
      readonly source: string | null;
      readonly index: string;
      readonly act: string;
      /** Whether the hazards of the record stand in place of the entry, or values in place of its own. */
      readonly by: 'hazards' | 'values';
      readonly lost: LostData;
      /** Classes that the data of the entry would make more severe. */
      readonly worse: readonly {
        readonly class: string;
        readonly route: Route | null;
        /** Code, or outcome where not classified. */
        readonly now: string;
        readonly within: string;
      }[];
    }
  | {
      readonly id: 'entry-chosen';
      readonly constituent: number;
      readonly index: string;
      readonly name: string;
      readonly by: Decision;
      readonly others: readonly { readonly index: string; readonly name: string }[];
    }
  | ({
      readonly id: 'entry-later';
      readonly constituent: number;
      /** Whether an entry in force is replaced; else there is none yet. */
      readonly replaces: boolean;
      /** Hazards that the data in use lack or have in a milder category. */
      readonly hazards: readonly Hazard[];
    } & LaterEntry)
  | {
      readonly id: 'carcinogen-listed';
      readonly constituent: number;
      /** Entries of OSHA, NTP and IARC. */
      readonly listings: readonly Found<CarcinogenListing>[];
      /** Class and category with which the constituent counts because OSHA names cancer; null where no list binds. */
      readonly added: string | null;
    }
  | {
      readonly id: 'entry-answer-unused';
      readonly constituent: number;
      /** Index number that is none of the substance; null where it is one, or none is named. */
      readonly entry: string | null;
      /** Notes that the entry does not have. */
      readonly notes: readonly string[];
      /** Index numbers of the substance. */
      readonly known: readonly string[];
    }
  | {
      readonly id: 'entry-notes';
      readonly constituent: number;
      readonly index: string;
      readonly notes: readonly {
        /** Letter or number of CLP Annex VI 1.1.3. */
        readonly id: string;
        readonly kind: EntryNote['kind'];
        /** Classes and categories of the entry that depend on the note. */
        readonly codes: readonly string[];
        readonly shown: string;
        /** Whether the record says that it is shown. */
        readonly answered: boolean;
        /** Of Note 1: percent of the substance that is the metal; null where it is not known. */
        readonly metal: Exact | null;
      }[];
      readonly source: string | null;
    }
  | { readonly id: 'no-source'; readonly constituent: number }
  | {
      readonly id: 'minimum-classification';
      readonly constituent: number;
      readonly index: string;
      readonly codes: readonly string[];
    }
  | {
      readonly id: 'ate-contradicts-category';
      readonly constituent: number;
      readonly key: AcuteKey;
      readonly value: Exact;
      /** Category that the value lies in; null above the last one. */
      readonly category: string | null;
      readonly listed: string;
    }
  | {
      readonly id: 'stot-other-organ';
      readonly class: string;
      readonly constituent: number;
      readonly amount: Exact;
      readonly organs: readonly string[];
    }
  | {
      readonly id: 'stot-organ-missing';
      readonly class: string;
      readonly constituent: number;
      readonly organs: readonly string[];
    }
  | {
      readonly id: 'carcinogen-label-optional';
      readonly constituents: readonly number[];
      /** Percent. */
      readonly below: number;
    }
  | ({
      readonly id: 'evidence-not-used';
      readonly class: string;
      readonly why: EvidenceFault;
    } & { readonly method: string; readonly source: string })
  | {
      readonly id: 'reserve-to-be-confirmed';
      readonly part: 'skin' | 'eye';
      /** Whether Category 1 stands until then. */
      readonly stands: boolean;
      readonly pH: Exact;
      readonly operator: '<=' | '>=';
      readonly limit: number;
    }
  | {
      /** A strong acid or base, and no pH to judge by. */
      readonly id: 'ph-missing';
      readonly constituents: readonly ReactiveShare[];
      /** Whether it is judged at the severe side meanwhile. */
      readonly severe: boolean;
    }
  | {
      readonly id: 'undecided-with-cause';
      readonly classes: readonly string[];
      /** Those that have the hazard. */
      readonly constituents: readonly number[];
      readonly needs: Needed;
      /** Those without data, where they leave the class open. */
      readonly lacking: readonly number[];
    }
  | {
      readonly id: 'doubtful-measurement';
      readonly property: 'flash-point' | 'pH';
      /** Null of a flash point that a test did not find. */
      readonly value: Exact | null;
      readonly constituents: readonly ReactiveShare[];
    }
  | {
      readonly id: 'category-not-in-basis';
      readonly constituent: number;
      /** Class and category. */
      readonly hazards: readonly string[];
      readonly basis: string;
    }
  | {
      /** Evidence that disagrees with a measured property, or with other evidence. */
      readonly id: 'evidence-conflict';
      readonly class: string;
      /** Class and category, or outcome, of the evidence. */
      readonly finds: string;
      readonly method: string;
      readonly source: string;
      readonly against:
        | { readonly kind: 'measured'; readonly property: 'pH' | 'flash-point'; readonly value: Exact }
        | { readonly kind: 'evidence'; readonly method: string; readonly source: string };
      /** What the other side finds. */
      readonly other: string;
      /** Which of the two is taken. */
      readonly taken: 'evidence' | 'other';
    }
  | {
      /** An open cup gives higher values than the closed cup of the law. */
      readonly id: 'open-cup';
      readonly celsius: Exact;
      /** Degrees by which a closed cup may lie lower. */
      readonly more: number;
      /** Whether that was counted, and made the class more severe. */
      readonly moved: boolean;
    }
  | {
      /** An inhalation category without a form, judged in one form, that would be worse in another. */
      readonly id: 'inhalation-form-worse';
      readonly taken: InhalationForm;
      readonly other: InhalationForm;
      /** Class and category, or outcome. */
      readonly now: string;
      readonly within: string;
      readonly constituents: readonly number[];
    }
  | StaleMeasurement
  | { readonly id: 'boiling-point-missing' /** Degrees Celsius. */; readonly below: number }
  | {
      readonly id: 'near-limit';
      readonly class: string;
      readonly route: Route | null;
      readonly figure: Figure & { readonly limit: number };
    }
  | {
      readonly id: 'reactive-constituents';
      readonly pair: string;
      /** So little of the first side that the milder words of the pair hold. */
      readonly dilute: boolean;
      readonly left: readonly ReactiveShare[];
      readonly right: readonly ReactiveShare[];
      readonly advice: ReactiveAdvice;
      readonly pH: Exact | null;
    }
  | {
      /** Groups that must not be mixed with others in use. */
      readonly id: 'reactive-alone';
      readonly groups: readonly {
        readonly group: string;
        readonly constituents: readonly number[];
        /** What it must not be mixed with, and what may form, in the words of the data. */
        readonly with: string;
        readonly gives: string;
      }[];
    }
  | { readonly id: 'respiratory-tract' }
  | {
      readonly id: 'us-specific-limits';
      readonly class: string;
      /** Whether the limits would make it milder, not more severe. */
      readonly milder: boolean;
      /** Code, or outcome where not classified; so is `within`. */
      readonly now: string;
      readonly within: string;
      readonly because: Because;
    }
  | {
      readonly id: 'supplemental-open';
      readonly code: string;
      readonly open: OpenQuestion;
      readonly because: Because;
    };

/** What would decide a class that is open. */
export type Needed = 'flash-point' | 'viscosity' | 'test' | 'data';

export interface ReactiveShare {
  readonly constituent: number;
  readonly amount: Exact;
}

/** What follows for the calculation from a reaction in the pack. */
export type ReactiveAdvice = 'reckon-the-salt' | 'salt-at-this-ph' | 'does-not-hold';
