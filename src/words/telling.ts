import type { Classification } from '../classify/classification.ts';
import { plain, type Style } from '../quantity/print.ts';
import type { Telling } from './words.ts';

/** Tells of a result with the names of the record and all figures. */
export const tellAll = (
  { constituents }: Pick<Classification, 'constituents'>,
  style: Style = plain,
): Telling => ({ names: constituent => constituents[constituent]!.name, style, amounts: true });
