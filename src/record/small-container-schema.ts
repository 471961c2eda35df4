import limits from '../../hazard-data/us-hcs/small-containers.json' with { type: 'json' };
import type { Measure } from '../quantity/measure.ts';
import type { Partly } from './_cross.ts';
import { line, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';

/** Labels of small containers, 29 CFR 1910.1200(f)(12). */
export const smallContainerSchema = mapping(
  {
    part: oneOf(
      ['container', 'outer-package'],
      'container: the label carries the least that the law asks; outer-package: the whole label, and that the container is kept in it',
    ),
    reason: z.optional(
      line(
        'a tag would foul the dropper',
        'Why pull-out labels, fold-back labels and tags with the full information are not feasible',
      ),
    ),
  },
  'Small container labelled by 29 CFR 1910.1200(f)(12), or the outer package of one',
);

const isMeasure = (value: unknown): value is Measure =>
  typeof value === 'object' && value !== null && 'base' in value;

/** The least label is for small containers alone, and for a reason. */
export function wholeSmallContainer(
  { contents, container, 'small-container': small }: Partly,
  complain: (path: (string | number)[], message: string, hint?: string) => void,
): void {
  const { part, reason } = (small ?? {}) as Partly;
  if (part !== 'container') return;
  if (reason === undefined)
    complain(
      ['small-container'],
      'the least label of a small container needs a reason (29 CFR 1910.1200(f)(12)(i))',
      'add `reason`: why pull-out labels, fold-back labels and tags are not feasible',
    );
  const given = (container as Partly | undefined)?.capacity ?? contents;
  if (!isMeasure(given)) return;
  if (given.kind !== 'volume')
    complain(
      ['small-container'],
      'whether the container is small goes by its capacity, which is not given',
      'add `capacity` to `container`',
    );
  else if (given.base.value > limits.most.value)
    complain(
      ['small-container'],
      `the container holds more than ${limits.most.value} mL`,
      'remove `small-container`: 29 CFR 1910.1200(f)(12)(ii) is for containers of 100 mL and less',
    );
}
