import type { PDFObject } from 'pdf-lib';
import { asName, asNumber, entry, members } from './_objects.ts';

/** A color space as a press sees it. */
export interface PressSpace {
  /** `other` is one of a screen or of no device: DeviceRGB, CalRGB, Lab, ICCBased of three parts, or unknown. */
  readonly kind: 'gray' | 'cmyk' | 'spot' | 'pattern' | 'other';
  /** As a message names it. */
  readonly name: string;
  /** Names of spot inks. */
  readonly inks: readonly string[];
  /** Of a Separation: process inks of its full tint, percent; null where they do not follow from its function. */
  readonly full?: readonly number[] | null;
  /** Whether an ICC profile describes it. */
  readonly profiled: boolean;
  /** Whether values are places in a table of colors. */
  readonly indexed: boolean;
}

const space = (kind: PressSpace['kind'], name: string, more: Partial<PressSpace> = {}): PressSpace => ({
  kind,
  name,
  inks: [],
  profiled: false,
  indexed: false,
  ...more,
});

const PROCESS = ['Cyan', 'Magenta', 'Yellow', 'Black', 'None'];
const PARTS: Readonly<Record<number, PressSpace['kind']>> = { 1: 'gray', 4: 'cmyk' };

/** Reads a color space (ISO 32000-1 8.6), given by name or as an array. */
export function pressSpace(object: PDFObject | undefined, resources: PDFObject | undefined): PressSpace {
  const name = asName(object);
  if (name !== undefined) {
    if (name === 'DeviceGray' || name === 'G') return space('gray', 'DeviceGray');
    if (name === 'DeviceCMYK' || name === 'CMYK') return space('cmyk', 'DeviceCMYK');
    if (name === 'Pattern') return space('pattern', name);
    const named = entry(entry(resources, 'ColorSpace'), name);
    return named && named !== object ? pressSpace(named, undefined) : space('other', name);
  }
  const parts = members(object);
  const family = asName(parts[0]) ?? '';
  if (parts.length === 1 && family !== '') return pressSpace(parts[0], resources);
  if (family === 'CalGray') return space('gray', family);
  if (family === 'ICCBased') {
    const count = asNumber(entry(parts[1], 'N')) ?? 0;
    return space(PARTS[count] ?? 'other', `ICCBased of ${count} parts`, { profiled: true });
  }
  if (family === 'Separation' || family === 'DeviceN') {
    const inks = (family === 'Separation' ? parts.slice(1, 2) : members(parts[1])).flatMap(
      ink => asName(ink) ?? [],
    );
    const instead = pressSpace(parts[2], resources);
    if (instead.kind === 'other') return instead;
    return space('spot', family, {
      inks: inks.filter(ink => !PROCESS.includes(ink)),
      ...(family === 'Separation' && { full: instead.kind === 'cmyk' ? fullTint(parts[3]) : null }),
    });
  }
  if (family === 'Indexed') return { ...pressSpace(parts[1], resources), indexed: true };
  if (family === 'Pattern')
    return parts[1] ? { ...pressSpace(parts[1], resources), indexed: false } : space('pattern', family);
  return space('other', family || 'a color space that cannot be read');
}

/** The full tint of a function that grows evenly from no ink (ISO 32000-1 7.10.3); null of any other. */
function fullTint(tint: PDFObject | undefined): readonly number[] | null {
  const numbers = (key: string) => members(entry(tint, key)).map(part => asNumber(part) ?? Number.NaN);
  const [none, full] = [numbers('C0'), numbers('C1')];
  const even = asNumber(entry(tint, 'FunctionType')) === 2 && asNumber(entry(tint, 'N')) === 1;
  return even && full.length === 4 && none.every(part => part === 0)
    ? full.map(part => Number((100 * part).toFixed(1)))
    : null;
}

/** Percent of all inks together that a color puts on one place; null where it cannot be said from its values. */
export function inkOf({ kind, indexed }: PressSpace, values: readonly number[]): number | null {
  if (indexed || values.length === 0) return null;
  const sum = values.reduce((total, value) => total + value, 0);
  if (kind === 'gray') return 100 * (1 - sum);
  return kind === 'cmyk' || kind === 'spot' ? 100 * sum : null;
}
