import type { Millimetres } from '../quantity/length.ts';
import type { Pack } from '../record/product-record.ts';
import { type BottleLabel, bottleLabel, type Ends, type LabelOnBottle, labelOnBottle } from './bottle.ts';
import practice from './practice.json' with { type: 'json' };
import {
  coreDiameter,
  fullRoll,
  type LabelOrder,
  labelOrder,
  linerWidth,
  minutesFor,
  pitchOf,
  usualSpeed,
  type WoundRoll,
  woundRoll,
} from './reel.ts';
import { type LeadingEdge, type Unwinding, unwinding, type Wound } from './unwind.ts';

/** The roll of a record, which may say how many labels lie side by side. */
type GivenRoll = NonNullable<Pack['roll']> & { readonly across?: number | null };

/** What the call adds to the record. */
export interface ReelQuestion {
  /** Labels that are to end on bottles; null asks for a full roll alone. */
  readonly labels: number | null;
  readonly spoilagePercent: number | null;
  /** Bottles a minute. */
  readonly speed: number | null;
  readonly ends: Ends;
  readonly leadingEdge: LeadingEdge | null;
  readonly wound: Wound | null;
  /** Face, adhesive and liner together, g/m2; null where the usual density is taken. */
  readonly grammage: number | null;
}

/** A figure that was not given and taken from practice, by its name and with its source. */
export interface Taken {
  readonly what:
    | 'core-wall'
    | 'liner-margin'
    | 'density'
    | 'spoilage'
    | 'threading'
    | 'speed'
    | 'panel-margin';
  readonly value: number;
  readonly source: string;
}

/** The whole answer; lengths in millimetres. */
export interface ReelFacts {
  readonly label: { readonly width: Millimetres; readonly height: Millimetres } | null;
  readonly bottle: BottleLabel | null;
  readonly onBottle: LabelOnBottle | null;
  readonly roll: {
    readonly pitch: Millimetres;
    readonly linerWidth: Millimetres;
    readonly core: Millimetres;
    readonly coreDiameter: Millimetres;
    readonly maxDiameter: Millimetres;
    readonly gap: Millimetres;
    readonly thickness: Millimetres;
    readonly unwinding: Unwinding;
    readonly full: WoundRoll;
    /** The labels of the order on one roll, though it may be too large. */
    readonly asked: WoundRoll | null;
    readonly order: LabelOrder | null;
    readonly speed: number;
    readonly minutesPerRoll: number;
    readonly minutesForOrder: number | null;
  } | null;
  readonly problems: readonly (
    | 'no-label'
    | 'no-roll'
    | 'no-cylinder'
    | 'core-fills-roll'
    | 'gap-unusual'
    | 'thickness-unusual'
    | 'unwind-ambiguous'
  )[];
  readonly taken: readonly Taken[];
}

/** Label, roll and order arithmetic of a pack. Nothing is guessed in silence: `taken` lists what practice gave. */
export function reelFacts({ label, roll, container }: Pack, question: ReelQuestion): ReelFacts {
  const problems: ReelFacts['problems'][number][] = [];
  const taken: Taken[] = [];
  const take = (what: Taken['what'], value: number, source: string) => {
    taken.push({ what, value, source });
    return value;
  };
  const panel = container?.labelPanelHeight ?? null;
  const diameter = container?.shape === 'cylinder' ? container.diameter : null;
  if (diameter === null) problems.push('no-cylinder');
  const bottle = diameter === null ? null : bottleLabel(diameter, panel, question.ends);
  if (bottle?.height != null) take('panel-margin', practice.panelMargin.value, practice.panelMargin.source);
  if (!label) problems.push('no-label');
  if (!roll) problems.push('no-roll');
  const onBottle = label && bottle ? labelOnBottle(label, bottle, panel) : null;
  if (!label || !roll) return { label, bottle, onBottle, roll: null, problems, taken };

  const wind = unwinding(roll.unwind, question.leadingEdge, question.wound);
  if (wind.leadingEdge === null) problems.push('unwind-ambiguous');
  const { gap, linerAndFace: thickness } = roll;
  if (gap < practice.gap.least || gap > practice.gap.most) problems.push('gap-unusual');
  if (thickness < practice.thickness.least || thickness > practice.thickness.most)
    problems.push('thickness-unusual');
  const density =
    question.grammage === null
      ? take('density', practice.density.gramsPerCubicCentimetre, practice.density.source)
      : question.grammage / thickness / 1000;
  const { across }: GivenRoll = roll;
  const web = { label, gap, thickness, density, unwinding: wind, across: across ?? 1 };
  const limits = {
    core: roll.core,
    coreWall: take('core-wall', practice.coreWall.value, practice.coreWall.source),
    maxDiameter: roll.maxDiameter,
  };
  take('liner-margin', practice.linerMargin.value, practice.linerMargin.source);
  const full = fullRoll(web, limits);
  if (full.labels === 0) problems.push('core-fills-roll');
  const order =
    question.labels === null
      ? null
      : labelOrder(question.labels, web, limits, {
          spoilagePercent:
            question.spoilagePercent ?? take('spoilage', practice.spoilage.percent, practice.spoilage.source),
          threadingMetres: take('threading', practice.threading.metres, practice.threading.source),
        });
  const speed = question.speed ?? take('speed', usualSpeed, practice.conveyor.source);
  return {
    label,
    bottle,
    onBottle,
    roll: {
      pitch: pitchOf(web),
      linerWidth: linerWidth(web),
      core: roll.core,
      coreDiameter: coreDiameter(limits),
      maxDiameter: roll.maxDiameter,
      gap,
      thickness,
      unwinding: wind,
      full,
      asked: question.labels === null ? null : woundRoll(question.labels, web, limits),
      order,
      speed,
      minutesPerRoll: minutesFor(full.labels, speed),
      minutesForOrder: question.labels === null ? null : minutesFor(question.labels, speed),
    },
    problems,
    taken,
  };
}
