import type { Millimetres } from '../../quantity/length.ts';
import { type Box, drawn, overlay, rectangle } from './box.ts';
import type { Making } from './parts.ts';

/** From the edge of the block to what stands in it: the line, and room inside it. */
export const borderOf = ({ measures }: Making): Millimetres => measures.heavy + 1.1 * measures.xHeight;

/** A block in a border of its own (16 CFR 1500.121(b)(2)(ii)). */
export function bordered(block: Box, width: Millimetres, making: Making): Box {
  const edge = borderOf(making);
  const { heavy } = making.measures;
  const height = block.height + 2 * edge;
  const frame = drawn(width, height, () => [
    {
      kind: 'path',
      tag: 'layout',
      segments: [
        ...rectangle(0, 0, width, height),
        ...rectangle(heavy, heavy, width - 2 * heavy, height - 2 * heavy),
      ],
      fill: 'black',
      fillRule: 'evenodd',
    },
  ]);
  return overlay(
    [
      { box: frame, x: 0, y: 0 },
      { box: block, x: edge, y: edge },
    ],
    width,
    height,
  );
}
