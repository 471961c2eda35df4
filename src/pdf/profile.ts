import type { CopyMark } from '../provenance/copy-mark.ts';
import { RESERVED_INKS } from '../quantity/ink-names.ts';
import type { Millimetres, Points } from '../quantity/length.ts';
import { iccFault } from './icc.ts';

/** An ICC output profile and the name of the printing condition that it describes, for example `FOGRA39`. */
export interface OutputProfile {
  readonly bytes: Uint8Array;
  readonly condition: string;
}

/** The cut line as the converter wants it: name of its ink and what the cut does (ISO 19593-1). */
export interface DieProfile {
  /** Name of the spot ink, default `CutContour`. */
  readonly ink?: string;
  /** `Cutting` goes through the liner, `PartialCutting` is a kiss cut on the roll; default `Cutting`. */
  readonly step?: 'Cutting' | 'PartialCutting';
  /** Name of the layer as a viewer shows it, default `Cut line`. */
  readonly layer?: string;
}

/** The maker's color: process parts in percent, printed as such or as a spot ink of a name. */
export interface BrandInk {
  readonly cmyk: readonly [number, number, number, number];
  readonly spot?: string;
}

/** Sizes up to which black overprints; above them it knocks out what lies below. */
export interface OverprintLimits {
  readonly text: Points;
  readonly stroke: Millimetres;
}

/** A label for the press: DeviceCMYK and the spot ink of the cut line only. */
export interface LabelProfile {
  readonly kind: 'label';
  /** Version of the program, written as its producer. */
  readonly version: string;
  /** Who may read it, and from which inputs it was made. */
  readonly copy?: CopyMark;
  readonly die?: DieProfile;
  readonly overprint?: OverprintLimits;
  /** What the ink `brand` is. */
  readonly brand?: BrandInk;
  /** With it the file is built to PDF/X-4 and says so; without it no such claim is made. */
  readonly iccProfile?: OutputProfile;
}

/** A data sheet for screen and office printer: DeviceGray and DeviceRGB. */
export interface SheetProfile {
  readonly kind: 'sheet';
  readonly version: string;
  readonly copy?: CopyMark;
}

/**
 * A label for the shop's own roll printer: DeviceGray, black or nothing, since any tint would be broken into dots. The
 * page is the label: no cut line, no bleed, no marks.
 */
export interface PrinterProfile {
  readonly kind: 'printer';
  readonly version: string;
  readonly copy?: CopyMark;
}

export type PdfProfile = LabelProfile | SheetProfile | PrinterProfile;

/** Common practice of label printers: type of 12 pt and smaller overprints, and so do thin rules. */
export const DEFAULT_OVERPRINT: OverprintLimits = { text: 12, stroke: 0.5 };

export const DEFAULT_DIE: Required<DieProfile> = { ink: 'CutContour', step: 'Cutting', layer: 'Cut line' };

/** Whether a text can name a printing condition: printable ASCII, a letter or digit first. */
export const isConditionName = (text: string): boolean => /^[A-Za-z0-9][A-Za-z0-9 ._+()-]*$/u.test(text);

/** Why a name cannot be that of the ink of a cut line; null where it can. */
export const dieInkFault = (ink: string): string | null =>
  ink.trim() === '' || RESERVED_INKS.includes(ink) ? `"${ink}" cannot be the ink of a cut line` : null;

/** What stands against a profile, in words for its user; empty where `writePdf` will take it. */
export const profileFaults = (profile: PdfProfile): string[] => {
  if (profile.kind !== 'label') return [];
  const faults: string[] = [];
  const ink = profile.die?.ink ?? DEFAULT_DIE.ink;
  const wrong = dieInkFault(ink);
  if (wrong) faults.push(wrong);
  const spot = profile.brand?.spot;
  if (spot !== undefined && (spot === '' || spot === ink || RESERVED_INKS.includes(spot)))
    faults.push(`"${spot}" cannot be the name of a spot ink`);
  const icc = profile.iccProfile && iccFault(profile.iccProfile.bytes);
  if (icc) faults.push(`the output profile ${icc}`);
  const condition = profile.iccProfile?.condition;
  if (condition !== undefined && !isConditionName(condition))
    faults.push(`"${condition}" is not the name of a printing condition`);
  return faults;
};
