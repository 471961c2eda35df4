import type { LabelModel } from '../../document/label.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { PressProfile } from '../stock.ts';
import type { BarCode } from './bar-code-sizes.ts';
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
  readonly type: LabelModel['type'];
}

/** Sorts the sections of a label into those with a place of their own and the text that flows. */
export function partsOf(
  content: LabelContent,
  barCode: BarCode | null,
  profile: PressProfile,
  { lotWindow, type }: Pick<LabelModel, 'lotWindow' | 'type'>,
): Parts {
  const placed: Partial<Record<PlacedRole, Section>> = {};
  const flow: Section[] = [];
  for (const section of content.sections) {
    const role = PLACED.find(name => name === section.role);
    if (role && !placed[role]) placed[role] = section;
    else flow.push(section);
  }
  return { placed, flow, barCode, profile, lotWindow, type };
}

/** How generously the parts are set where there is room. */
export interface Display {
  /** Height that the product name may take, in times the size of running text. */
  readonly name: number;
  /** Height that is kept for the name, be it long or short, in times the size of running text. */
  readonly reserve: number;
  /** Times the least pictogram at the size of text. */
  readonly pictogram: number;
  /** Times the gaps between sections. */
  readonly gap: number;
  /** X-dimension of the bars as part of the target size. */
  readonly bars: number;
  /** Pictograms stand beside their text, never above it. */
  readonly beside?: boolean;
  /** Bars may be turned a quarter where that takes less height; else only where they find no room upright. */
  readonly turn: boolean;
}

/** Everything that a block is made from. */
export interface Making extends Setting {
  readonly parts: Parts;
  readonly display: Display;
  /** Lines are centred, as suits a die without straight sides. */
  readonly centred: boolean;
  /** Ink of name and tagline. */
  readonly words: 'black' | 'white';
  /** Place that is kept for a logo beside the name. */
  readonly logo?: { readonly width: Millimetres; readonly aspect: number };
}

/** The distance between sections. */
export const gapOf = ({ measures, display }: Making): Millimetres => measures.gap * display.gap;
