import data from '../../templates/stocks/roll-printer.json' with { type: 'json' };
import { dotSize, wholeDots } from '../barcode/printer-dots.ts';
import type { Die } from './die/die.ts';
import type { PressProfile } from './stock.ts';

/** Resolution of a roll printer, as people name it. */
export type PrinterName = keyof typeof data.printers;

export const PRINTER_NAMES = Object.keys(data.printers) as PrinterName[];

/** Dots per inch of a printer. */
export const dpiOf = (printer: PrinterName): number => data.printers[printer].dpi;

/** How far the black of an unused red frame goes over its edge, in millimetres. */
export const FRAME_COVER: number = data.redFrame.cover;

/** What a roll printer asks of a label: as the press, without bleed, its rules and least letters on whole dots. */
export function printerProfile(printer: PrinterName, press: PressProfile): PressProfile {
  const dpi = dpiOf(printer);
  const dot = dotSize(dpi);
  const { name, safeZone, xHeight } = data;
  const { thin, heavy } = press.rule;
  return {
    ...press,
    name: `${name}, ${printer} dpi`,
    dpi,
    bleed: { value: 0, source: name },
    barWidthReduction: { value: 0, source: name },
    safeZone,
    xHeight: {
      ...press.xHeight,
      minimum: Math.max(press.xHeight.minimum, Number((xHeight.dots * dot).toFixed(2))),
      source: xHeight.source,
    },
    rule: {
      thin: Math.ceil(thin / dot) * dot,
      heavy: Math.round(heavy / dot) * dot,
      source: press.rule.source,
    },
  };
}

/** A die cut down to whole dots: the page that a printer can fill. */
export const dieOnDots = (die: Die, dpi: number): Die => ({
  ...die,
  width: wholeDots(die.width, dpi) * dotSize(dpi),
  height: wholeDots(die.height, dpi) * dotSize(dpi),
});
