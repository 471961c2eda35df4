import type { ArtRules } from '../artwork/art.ts';
import { artFaults, layUnder, widestOf } from '../artwork/place-art.ts';
import { readArt } from '../artwork/read-art.ts';
import { areaFaults } from '../layout/label/art-findings.ts';
import type { Stock } from '../layout/stock.ts';
import { CODER_INK } from '../pdf/ink.ts';
import type { BrandInk } from '../pdf/profile.ts';
import type { Maker, Pack, ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, hasErrors, type Position } from '../report/diagnostic.ts';
import { spotConflicts } from './spot-conflicts.ts';

/** Files of artwork that a record names, by their path; those that could not be read are not there. */
export type ArtFiles = ReadonlyMap<string, Uint8Array>;

/** What a label carries of the maker's artwork. */
export interface LabelArt extends Pick<Stock, 'artwork' | 'logo'> {
  readonly findings: readonly Diagnostic[];
}

/** The rules that a press profile sets for artwork. */
export const artRules = ({ profile }: Stock, dieInk: string): ArtRules => ({
  inkLimit: profile.inkLimit.value,
  dpi: profile.artwork.dpi,
  cutInks: profile.artwork.cutInks,
  reservedInks: [dieInk, CODER_INK],
});

const missing = (file: string, at: Position): Diagnostic => ({
  code: 'art-missing',
  severity: 'error',
  message: `${file} is not there or cannot be read`,
  hint: 'put the file there, or correct its path in the record',
  at,
});

/** Why a label is made without the artwork of the record; null where it is placed. */
function leftOut(
  { copy }: ProductRecord,
  pack: Pack,
  { without: why, purpose }: ArtQuestion,
): Diagnostic | null {
  const { artwork } = copy;
  if (!artwork) return null;
  const reason =
    why ??
    (artwork.pack !== null && artwork.pack !== pack.id ? `it is for pack \`${artwork.pack}\`` : null) ??
    (artwork.purposes?.includes(purpose) === false ? `it is for ${artwork.purposes.join(', ')}` : null);
  return reason === null
    ? null
    : {
        code: 'artwork-left-out',
        severity: 'note',
        message: `the artwork ${artwork.file} is left out of the label: ${reason}`,
        path: 'copy.artwork',
        at: artwork.at,
      };
}

/** What is asked for beside record and pack. */
export interface ArtQuestion {
  readonly stock: Stock;
  readonly files: ArtFiles;
  readonly dieInk: string;
  readonly purpose: string;
  /** The maker's color as the label prints it. */
  readonly brand: BrandInk | null;
  /** Why this label carries no artwork, in words; null where it does. */
  readonly without: string | null;
}

/** Reads the artwork and the logo of a record and holds them against the press and the label. */
export async function labelArt(
  record: ProductRecord,
  maker: Maker,
  pack: Pack,
  question: ArtQuestion,
): Promise<LabelArt> {
  const { stock, files, dieInk, without } = question;
  const aside = leftOut(record, pack, question);
  const rules = artRules(stock, dieInk);
  const artwork = aside ? { findings: [aside] } : await artworkOf(record, stock, files, rules);
  const logo = without === null ? await logoOf(maker, stock, files, rules) : { findings: [] };
  const inks = spotConflicts(
    question.brand,
    [artwork.artwork?.placed.art, logo.logo?.art],
    maker.brand?.file,
  );
  return { ...artwork, ...logo, findings: [...artwork.findings, ...logo.findings, ...inks] };
}

async function artworkOf(
  { copy: { artwork } }: ProductRecord,
  stock: Stock,
  files: ArtFiles,
  rules: ArtRules,
): Promise<LabelArt> {
  if (!artwork) return { findings: [] };
  const { file, page, areas, at } = artwork;
  const bytes = files.get(file);
  if (!bytes) return { findings: [missing(file, at)] };
  const faults = areaFaults(areas, stock).map(fault => ({ ...fault, at }));
  const read = await readArt(file, bytes, page, rules);
  if (!read.ok) return { findings: [...faults, ...read.diagnostics] };
  const { die, profile } = stock;
  const ground = {
    width: die.width,
    height: die.height,
    bleed: profile.bleed.value,
    tolerance: profile.artwork.tolerance,
  };
  const placed = layUnder(read.value, ground, rules);
  const findings = [...faults, ...read.diagnostics, ...placed.diagnostics];
  return placed.ok && !hasErrors(findings)
    ? { artwork: { placed: placed.value, areas }, findings }
    : { findings };
}

async function logoOf({ brand }: Maker, stock: Stock, files: ArtFiles, rules: ArtRules): Promise<LabelArt> {
  if (!brand?.logo) return { findings: [] };
  const { logo: file, logoWidth: width } = brand;
  const bytes = files.get(file);
  if (!bytes) return { findings: [missing(file, { file: brand.file })] };
  const read = await readArt(file, bytes, null, rules);
  if (!read.ok) return { findings: read.diagnostics };
  const least = stock.profile.artwork.leastLogo;
  // Its final width is known to the layout alone: it is held against the place that is kept, or the least.
  const faults = artFaults(read.value, width ?? least, rules);
  const findings = [...read.diagnostics, ...faults];
  return hasErrors(findings)
    ? { findings }
    : { logo: { art: read.value, width, least, most: widestOf(read.value, rules) }, findings };
}
