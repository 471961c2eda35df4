/** What is to be said about an output folder; the words are at the edge. */
export type OutputFact =
  /** The folder holds files made from another record, or for another code. */
  | { readonly id: 'other-record'; readonly record: string; readonly code: string }
  /** A file of ours that a person changed since. */
  | { readonly id: 'file-changed'; readonly name: string }
  /** A file that no run of ours made stands at the place of one that is to be written. */
  | { readonly id: 'file-in-the-way'; readonly name: string }
  | { readonly id: 'moved-aside'; readonly name: string; readonly to: string }
  /** A file of ours that is no longer current and went. */
  | { readonly id: 'removed'; readonly name: string }
  | { readonly id: 'no-manifest' }
  | { readonly id: 'manifest-unreadable' }
  | { readonly id: 'interrupted' }
  | { readonly id: 'out-of-date'; readonly reason: string }
  | { readonly id: 'not-made'; readonly name: string; readonly reason: string }
  | { readonly id: 'file-missing'; readonly name: string }
  /** Made from other inputs than the rest. */
  | { readonly id: 'mixture'; readonly name: string }
  /** A document of ours of other inputs, which the manifest does not name. */
  | { readonly id: 'stray'; readonly name: string }
  | { readonly id: 'record-changed' }
  | { readonly id: 'include-changed'; readonly path: string }
  | { readonly id: 'include-new'; readonly path: string }
  | { readonly id: 'include-gone'; readonly path: string }
  | { readonly id: 'law-changed' }
  | { readonly id: 'program-changed'; readonly made: string; readonly now: string };

export type OutputFactId = OutputFact['id'];
