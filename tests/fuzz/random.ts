/** Repeatable random choices from a seed (mulberry32). */
export interface Random {
  /** A whole number from 0, below `count`. */
  below(count: number): number;
  chance(part: number): boolean;
  pick<T>(items: readonly T[]): T;
}

export function randomOf(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const below = (count: number) => Math.floor(next() * count);
  return { below, chance: part => next() < part, pick: items => items[below(items.length)]! };
}
