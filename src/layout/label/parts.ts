import type { LabelModel } from '../../document/label.ts';
import type { PressProfile } from '../stock.ts';
import type { BarCode } from './bar-code-block.ts';
import type { LabelContent, Section } from './content.ts';
import type { Setting } from './text-block.ts';

/** Roles that have a place of their own; every other section flows through the text columns. */
const PLACED = ['draft', 'identity', 'hazard', 'supplier', 'contents', 'lot', 'bar-code'] as const;
type PlacedRole = (typeof PLACED)[number];

/** The sections of a label sorted by what the arrangements do with them. */
export interface Parts {
  readonly placed: Partial<Record<PlacedRole, Section>>;
  readonly flow: readonly Section[];
  readonly barCode: BarCode | null;
  readonly profile: PressProfile;
  /** Clear size of the window for the lot where the record fixes it. */
  readonly lotWindow: LabelModel['lotWindow'];
}

/** Sorts the sections of a label into those with a place of their own and the text that flows. */
export function partsOf(
  content: LabelContent,
  barCode: BarCode | null,
  profile: PressProfile,
  lotWindow: LabelModel['lotWindow'],
): Parts {
  const placed: Partial<Record<PlacedRole, Section>> = {};
  const flow: Section[] = [];
  for (const section of content.sections) {
    const role = PLACED.find(name => name === section.role);
    if (role && !placed[role]) placed[role] = section;
    else flow.push(section);
  }
  return { placed, flow, barCode, profile, lotWindow };
}

/** Everything that an arrangement is made from. */
export interface Arrangement extends Setting {
  readonly parts: Parts;
  /** No paragraph is split between columns. */
  readonly whole: boolean;
  /** Area inside the margins. */
  readonly width: number;
  readonly height: number;
}
