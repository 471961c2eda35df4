import data from '../../../hazard-data/substances/entry-notes.json' with { type: 'json' };

/** A note of CLP Annex VI 1.1.3 on which the classification of an entry depends. */
export interface EntryNote {
  /** `J`, `1` */
  readonly id: string;
  /**
   * `unless-shown`: the classes named apply unless something is shown of the substance; `by-metal`: its concentration
   * limits are percents of the metal.
   */
  readonly kind: 'unless-shown' | 'by-metal';
  readonly cite: string;
  readonly hazardClasses: readonly string[];
  /** What must be shown for the classes not to apply; empty where nothing can be. */
  readonly shown: string;
}

const known = new Map<string, EntryNote>(
  data.notes.map(note => [
    note.id,
    {
      id: note.id,
      kind: note.kind as EntryNote['kind'],
      cite: `CLP Annex VI ${note.cite}`,
      hazardClasses: note.hazardClasses ?? [],
      shown: note.shown ?? '',
    },
  ]),
);

const metal: Readonly<Record<string, number>> = data.metal.percent;

/** Percent by weight of the metallic element in a substance with Note 1, by CAS number; null where it is not known. */
export const metalPercent = (cas: string | null): number | null =>
  cas === null ? null : (metal[cas] ?? null);

/** Bases whose generic concentration limits Note 1 speaks of. */
export const metalGenericLimitsIn: readonly string[] = data.metal.genericLimitsIn;

/** Letters of the notes that a record can answer. */
export const answerableNotes: readonly string[] = [...known.values()].flatMap(({ id, kind }) =>
  kind === 'unless-shown' ? [id] : [],
);

/** Those of the notes of an entry on which its classification depends. */
export const decidingNotes = (ids: readonly string[]): EntryNote[] => ids.flatMap(id => known.get(id) ?? []);
