import type { Art } from '../artwork/art.ts';
import type { BrandInk } from '../pdf/profile.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

interface Defined {
  readonly from: string;
  readonly parts: readonly number[] | null;
}

const text = ({ parts }: Defined): string => (parts ? `cmyk(${parts.join(', ')})` : 'a curve of its own');
const alike = (one: Defined, other: Defined): boolean =>
  one.parts !== null &&
  other.parts !== null &&
  one.parts.every((part, at) => Math.abs(part - other.parts![at]!) <= 0.5);

/**
 * Spot inks of one name that are defined in two ways: a press makes one plate of them, and no proof shows it as it is
 * (ISO 15930-7 wants one definition of an ink; from memory).
 * @param brand the maker's color as the label prints it
 * @param arts placed artwork and logo
 */
export function spotConflicts(
  brand: BrandInk | null,
  arts: readonly (Art | undefined)[],
  file: string | undefined,
): readonly Diagnostic[] {
  const known = new Map<string, Defined>();
  if (brand?.spot !== undefined) known.set(brand.spot, { from: 'the brand color', parts: brand.cmyk });
  return arts.flatMap(art =>
    art?.kind !== 'page'
      ? []
      : [...art.tints].flatMap(([ink, parts]): Diagnostic[] => {
          const here = { from: art.file, parts };
          const before = known.get(ink);
          if (!before) known.set(ink, here);
          if (!before || alike(before, here)) return [];
          return [
            {
              code: 'spot-conflict',
              severity: 'error',
              message: `the spot ink "${ink}" is ${text(before)} in ${before.from} and ${text(here)} in ${here.from}`,
              hint: 'define it alike in both, with a tint that grows evenly from no ink, or give one another name',
              ...(file !== undefined && { at: { file } }),
            },
          ];
        }),
  );
}
