import type { FactBox, LabelFacts } from '../../layout/label/facts.ts';
import { declarationPlace } from '../../reference/consumer/label-type.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';

/** A label and the panel of its container, in millimetres. */
export interface DeclarationPanel {
  readonly facts: LabelFacts;
  /** Height of the label. */
  readonly height: number;
  /** Of the panel, in square millimetres. */
  readonly area: number;
}

const LETTERING = 1e-3;

/** Whether the net contents stand in the lowest part of the panel, clear of other print (16 CFR 500.6(b)). */
export function declarationFindings(
  { facts, height, area }: DeclarationPanel,
  { consumer }: Words,
): readonly Diagnostic[] {
  const { part, freeUpTo, cite } = declarationPlace;
  const own = facts.texts.find(({ role }) => role === 'net-contents');
  if (!own) return [];
  const warn = (code: string, message: string): Diagnostic => ({ code, severity: 'warning', message, cite });
  const most = part * height;
  const high =
    area > freeUpTo && own.box[3] > most + LETTERING
      ? [warn('declaration-high', consumer.declarationHigh(own.box[3], most))]
      : [];
  const crowded = facts.texts
    .filter(({ role, box }) => role !== 'draft' && box !== own.box && isNear(box, own.box, own.capHeight))
    .map(({ text }) => warn('declaration-crowded', consumer.declarationCrowded(text)));
  return [...high, ...crowded];
}

/** Above or below, nearer than a height; the box of a text ends in its descenders. */
const isNear = (other: FactBox, own: FactBox, clear: number): boolean =>
  other[0] < own[2] && other[2] > own[0] && other[1] < own[3] + clear - LETTERING && other[3] > own[1];
