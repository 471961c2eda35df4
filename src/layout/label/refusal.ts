import type { LabelModel } from '../../document/label.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { Die, Stock } from '../stock.ts';
import { fitsAtAll } from './fit.ts';
import type { Parts } from './parts.ts';

/** Dies that would hold a label that does not fit; null where no size within reach does. */
export interface Remedies {
  /** Least height at the same width, whole millimetres. */
  readonly height: Millimetres | null;
  /** Least width at the same height, whole millimetres. */
  readonly width: Millimetres | null;
  /** Least number of panels of the same size, side by side in a fold-out label. */
  readonly panels: number | null;
}

/** Labels are not sought beyond so many times the size asked for. */
const REACH = 12;

/** The smallest dies that hold the label at its least size; each has been tried. */
export function remedies(parts: Parts, stock: Stock, fonts: FontLibrary): Remedies {
  const { die } = stock;
  const fits = (change: Partial<Die>) => fitsAtAll(parts, { ...stock, die: { ...die, ...change } }, fonts);
  return {
    height: least(die.height, height => fits({ height })),
    width: least(die.width, width => fits({ width })),
    panels: panelCount(count => fits({ width: die.width * count })),
  };
}

function least(from: Millimetres, fits: (size: Millimetres) => boolean): Millimetres | null {
  let low = Math.floor(from);
  let high = low;
  do {
    if (high > from * REACH) return null;
    low = high;
    high = Math.ceil(high * 1.3 + 1);
  } while (!fits(high));
  while (high - low > 1) {
    const middle = Math.round((low + high) / 2);
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function panelCount(fits: (count: number) => boolean): number | null {
  for (let count = 2; count <= REACH; count += 1) if (fits(count)) return count;
  return null;
}

/** Room on the container for a label: once round a cylinder, and the height of its straight panel. */
export interface ContainerRoom {
  readonly width: Millimetres | null;
  readonly height: Millimetres | null;
}

export const containerRoom = ({ container }: LabelModel): ContainerRoom => ({
  width:
    container?.shape === 'cylinder' && container.diameter !== null
      ? Math.floor(container.diameter * Math.PI)
      : null,
  height: container?.labelPanelHeight ?? null,
});

/** Says by how much the label is too small and which larger one would do. */
export function tooSmall(model: LabelModel, parts: Parts, stock: Stock, fonts: FontLibrary): Diagnostic {
  const { die, profile } = stock;
  const found = remedies(parts, stock, fonts);
  const room = containerRoom(model);
  const asked = `${die.width} x ${die.height} mm`;
  const sizes = `letters of ${profile.xHeight.minimum} mm x-height, pictograms of ${profile.pictogram.minimum} mm`;
  return {
    code: 'label-too-small',
    severity: 'error',
    message: `a label of ${asked} does not hold its text at the least sizes (${sizes})${shortage(die, found)}`,
    hint: advice(die, found, room),
    path: 'label',
    cite: '29 CFR 1910.1200(f)(1)-(2)',
  };
}

function shortage(die: Die, { height, width }: Remedies): string {
  const parts: string[] = [];
  if (height !== null) parts.push(`${height - die.height} mm of height at this width`);
  if (width !== null) parts.push(`${width - die.width} mm of width at this height`);
  const areas = [height && height * die.width, width && width * die.height].filter(area => area !== null);
  const more = areas.length > 0 ? Math.min(...areas) / (die.width * die.height) - 1 : null;
  if (more !== null) parts.push(`at least ${Math.ceil(more * 100)} % of area`);
  return parts.length > 0 ? `: it lacks ${parts.join(', or ')}` : '';
}

function advice(die: Die, { height, width, panels }: Remedies, room: ContainerRoom): string {
  const options: string[] = [];
  if (height !== null)
    options.push(`${die.width} x ${height} mm${beyond(height, room.height, 'label panel')}`);
  if (width !== null)
    options.push(`${width} x ${die.height} mm${beyond(width, room.width, 'circumference')}`);
  if (panels !== null) options.push(`a fold-out of ${panels} panels of ${die.width} x ${die.height} mm`);
  return options.length > 0
    ? `would hold it: ${options.join('; ')}`
    : 'shorten the text or take a much larger label';
}

const beyond = (size: Millimetres, room: Millimetres | null, what: string): string =>
  room !== null && size > room ? ` (more than the ${what} of ${room} mm)` : '';
