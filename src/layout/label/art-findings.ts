import { sizeText } from '../../quantity/length-text.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { clearStrips } from '../die/clear-strips.ts';
import { outlineOf } from '../die/outline.ts';
import type { FrameItem } from '../frame.ts';
import type { Stock, StockArea } from '../stock.ts';
import type { AreaBlocks } from './art-areas.ts';

const PATH = 'copy.artwork.areas';
const called = ({ holds }: StockArea): string => `the area \`${holds}\``;
const sized = ({ width, height }: StockArea): string => sizeText(width, height, 'mm');

const error = (code: string, message: string, hint: string): Diagnostic => ({
  code,
  severity: 'error',
  message,
  hint,
  path: PATH,
});

/** What stands against the areas themselves, before anything is laid out in them. */
export function areaFaults(
  areas: readonly StockArea[],
  { die, profile, eyeMark }: Stock,
): readonly Diagnostic[] {
  const faults: Diagnostic[] = [];
  const safe = profile.safeZone.value;
  const outline = outlineOf({ ...die, overlap: 0 });
  if (!areas.some(({ holds }) => holds === 'regulated'))
    faults.push(
      error(
        'area-missing',
        'the artwork has no area `regulated`: nothing says where the label prints its text',
        'add {holds: regulated, left: …, bottom: …, width: …, height: …}',
      ),
    );
  const seen = new Set<string>();
  for (const area of areas) {
    const { holds, left, bottom, width, height } = area;
    if (seen.has(holds))
      faults.push(error('area-twice', `${called(area)} stands twice`, 'leave one of them'));
    seen.add(holds);
    const top = die.height - bottom - height;
    const room = outline.across(top, top + height, safe);
    if (
      top < safe - 1e-6 ||
      bottom < safe - 1e-6 ||
      !room ||
      left < room.from - 1e-6 ||
      left + width > room.to + 1e-6
    )
      faults.push(
        error(
          'area-off-the-label',
          `${called(area)}, ${sized(area)}, comes nearer than ${safe} mm to the cut of the label, ${sizeText(die.width, die.height, 'mm')}`,
          `keep it ${safe} mm inside the cut, corners included`,
        ),
      );
    for (const { what, from, to } of clearStrips(die, safe))
      if (Math.min(left + width, to) - Math.max(left, from) > 1e-6)
        faults.push(
          error(
            'area-on-a-strip',
            `${called(area)} lies over the ${what} of the label`,
            `keep it off the strip from ${from.toFixed(1)} to ${to.toFixed(1)} mm`,
          ),
        );
  }
  const boxes = [...areas, ...(eyeMark ? [{ ...eyeMark, holds: 'eye mark' as const }] : [])];
  for (const [at, one] of boxes.entries())
    for (const other of boxes.slice(at + 1)) {
      const across =
        Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left);
      const up =
        Math.min(one.bottom + one.height, other.bottom + other.height) - Math.max(one.bottom, other.bottom);
      if (Math.min(across, up) > 1e-6)
        faults.push(
          error(
            'areas-overlap',
            `\`${one.holds}\` and \`${other.holds}\` lie over each other`,
            'move one of them',
          ),
        );
    }
  return faults;
}

/** What came of the areas beside that of the regulated text. */
export function areaFindings({ tooSmall, idle }: AreaBlocks, { profile }: Stock): readonly Diagnostic[] {
  return [
    ...tooSmall.map(area =>
      error(
        'area-too-small',
        `${called(area)}, ${sized(area)}, does not hold what it is for at the least sizes (letters of ${profile.xHeight.minimum} mm x-height, bars of 80 % with their quiet zones)`,
        'make it larger, or leave it out: then the area `regulated` holds this too',
      ),
    ),
    ...idle.map(
      (area): Diagnostic => ({
        code: 'area-empty',
        severity: 'warning',
        message: `${called(area)} stays empty: the label has nothing for it`,
        path: PATH,
      }),
    ),
  ];
}

/** Whether the logo found a place. */
export const logoFindings = (item: FrameItem | null, { logo }: Stock): readonly Diagnostic[] =>
  !logo || item
    ? []
    : [
        {
          code: 'logo-not-placed',
          severity: 'warning',
          message: `the logo ${logo.art.file} is not placed: the name leaves no room of ${logo.least} mm beside it`,
          hint: 'keep a place for it: `logo-width: 20 mm` beside `logo`',
          path: 'brand.logo',
        },
      ];
