type Terms = Readonly<Record<string, string>>;

/** Words of the law and of the tables, by their English; English says them as the data do. */
export const lawTerms: Readonly<
  Record<
    | 'headings'
    | 'classes'
    | 'pictograms'
    | 'effects'
    | 'bases'
    | 'signalWords'
    | 'organs'
    /** What a product must not be mixed with, and what it gives. */
    | 'mixing'
    | 'names',
    Terms
  >
> = {
  headings: {},
  classes: {},
  pictograms: {},
  effects: {},
  bases: {},
  signalWords: {},
  organs: {},
  mixing: {},
  names: {},
};
