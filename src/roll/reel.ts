import type { Millimetres } from '../quantity/length.ts';
import practice from './practice.json' with { type: 'json' };
import type { Unwinding } from './unwind.ts';
import { turns, webLength, webMass, woundDiameter } from './winding.ts';

/** A web of labels; lengths in millimetres. */
export interface Web {
  readonly label: { readonly width: Millimetres; readonly height: Millimetres };
  readonly gap: Millimetres;
  /** Face, adhesive and liner together. */
  readonly thickness: Millimetres;
  /** g/cm3 */
  readonly density: number;
  readonly unwinding: Unwinding;
  /** Labels side by side, the same gap between them; 1 on rolls for a labeler. */
  readonly across: number;
}

/** The roll that a labeler takes. */
export interface RollLimits {
  /** Inner diameter of the core. */
  readonly core: Millimetres;
  readonly coreWall: Millimetres;
  readonly maxDiameter: Millimetres;
}

/** So many labels wound on a core. */
export interface WoundRoll {
  readonly labels: number;
  readonly metres: number;
  readonly diameter: Millimetres;
  readonly turns: number;
  /** Without the core. */
  readonly kilograms: number;
}

/** What is to be ordered. */
export interface LabelOrder {
  /** Labels that end on bottles. */
  readonly wanted: number;
  readonly spoilagePercent: number;
  /** Lost in threading the rolls. */
  readonly threading: number;
  readonly labels: number;
  readonly fullRolls: number;
  /** Labels on the last roll where it is not full; 0 where all are. */
  readonly rest: number;
  readonly rolls: number;
  readonly metres: number;
  readonly kilograms: number;
}

/** Web from the same edge of one label to that of the next. */
export const pitchOf = ({ label, gap, unwinding }: Web): Millimetres => label[unwinding.along] + gap;

/** Width of the liner: the other side of the label, as often as labels lie side by side, with a margin on both sides. */
export const linerWidth = ({ label, unwinding, across, gap }: Web): Millimetres =>
  across * label[unwinding.along === 'width' ? 'height' : 'width'] +
  (across - 1) * gap +
  2 * practice.linerMargin.value;

/** Outer diameter of a core. */
export const coreDiameter = ({ core, coreWall }: RollLimits): Millimetres => core + 2 * coreWall;

/** A number of labels on a core. */
export function woundRoll(labels: number, web: Web, limits: RollLimits): WoundRoll {
  const length = Math.ceil(labels / web.across) * pitchOf(web);
  const core = coreDiameter(limits);
  const diameter = woundDiameter(core, length, web.thickness);
  return {
    labels,
    metres: length / 1000,
    diameter,
    turns: turns(core, diameter, web.thickness),
    kilograms: webMass(length, linerWidth(web), web.thickness, web.density),
  };
}

/** The most labels on a roll of the largest diameter. */
export function fullRoll(web: Web, limits: RollLimits): WoundRoll {
  const length = webLength(coreDiameter(limits), limits.maxDiameter, web.thickness);
  return woundRoll(Math.floor(length / pitchOf(web) + 1e-9) * web.across, web, limits);
}

/**
 * What to order for a number of bottles: spoilage added, and the labels that threading each roll costs.
 * Null where no label fits on a roll.
 */
export function labelOrder(
  wanted: number,
  web: Web,
  limits: RollLimits,
  {
    spoilagePercent,
    threadingMetres,
  }: { readonly spoilagePercent: number; readonly threadingMetres: number },
): LabelOrder | null {
  const full = fullRoll(web, limits).labels;
  const perThreading = Math.ceil((threadingMetres * 1000) / pitchOf(web) - 1e-9) * web.across;
  const usable = full - perThreading;
  if (usable <= 0) return null;
  // In whole numbers of hundredths, so that 3 % of 10,000 are 300 and not 301.
  const applied = Math.ceil((wanted * Math.round(100 * (100 + spoilagePercent))) / 10_000 - 1e-9);
  const rolls = Math.max(1, Math.ceil(applied / usable));
  const threading = rolls * perThreading;
  const labels = applied + threading;
  const rest = labels - (rolls - 1) * full;
  const { metres, kilograms } = woundRoll(labels, web, limits);
  return {
    wanted,
    spoilagePercent,
    threading,
    labels,
    fullRolls: rest === full ? rolls : rolls - 1,
    rest: rest === full ? 0 : rest,
    rolls,
    metres,
    kilograms,
  };
}

/** How long a number of labels lasts, in minutes. @param perMinute bottles a minute */
export const minutesFor = (labels: number, perMinute: number): number => labels / perMinute;

/** Bottles a minute of a line that empties its conveyor as the trade tells. */
export const usualSpeed: number = practice.conveyor.bottles / practice.conveyor.minutes;
