import type { Box } from './box.ts';
import type { Making } from './parts.ts';

const known = new WeakMap<Making, Map<string, Box | null>>();

/** A block that follows from its making and a key, made once for the many arrangements that are tried with it. */
export function once(making: Making, key: string, make: () => Box | null): Box | null {
  let boxes = known.get(making);
  if (!boxes) {
    boxes = new Map();
    known.set(making, boxes);
  }
  let box = boxes.get(key);
  if (box === undefined) {
    box = make();
    boxes.set(key, box);
  }
  return box;
}
