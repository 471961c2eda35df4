import type { CopyKind } from '../provenance/copy-mark.ts';
import type { Inputs } from '../provenance/inputs.ts';

/** A document to be written; its name has no folders. */
export interface OutputFile {
  readonly name: string;
  readonly kind: CopyKind;
  readonly bytes: Uint8Array | string;
}

/** What is to stand in an output folder. */
export interface Delivery {
  readonly folder: string;
  readonly product: { readonly name: string; readonly code: string };
  readonly inputs: Inputs;
  /** YYYY-MM-DD */
  readonly asOf: string;
  readonly files: readonly OutputFile[];
  /** Whether it is the whole packet: what is ours, made from other inputs and not among the files, goes. */
  readonly whole: boolean;
  /** Files of the packet that could not be made, with the reason; what stood at their names goes. */
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  /** Whether files that a person changed are moved aside; else they stop the delivery. */
  readonly replace: boolean;
}
