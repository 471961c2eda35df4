import type { PlacedImage } from './_art-image.ts';

/** What a page of artwork, or a part of one, holds. */
export interface ArtContent {
  readonly images: PlacedImage[];
  /** Names of color spaces that no press prints as they are. */
  readonly foreign: Set<string>;
  readonly spots: Set<string>;
  /** Full tints of each spot ink, as its spaces define it. */
  readonly tints: Map<string, readonly number[] | null>;
  /** Names of fonts by whether they are embedded. */
  readonly fonts: Map<string, boolean>;
  /** What PDF/X-4 does not allow, or what cannot be carried over. */
  readonly forbidden: Set<string>;
  /** What is there whose ink was not measured. */
  readonly unmeasured: Set<string>;
  /** Most ink of one object on one place, percent. */
  ink: number;
  layers: boolean;
  transparent: boolean;
}

/** Before anything was looked at. */
export const nothingFound = (): ArtContent => ({
  images: [],
  foreign: new Set(),
  spots: new Set(),
  tints: new Map(),
  fonts: new Map(),
  forbidden: new Set(),
  unmeasured: new Set(),
  ink: 0,
  layers: false,
  transparent: false,
});
