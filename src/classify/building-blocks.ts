import type { AcuteKey, Basis, Thresholds } from '../reference/thresholds.ts';
import type { ReadingId } from './readings.ts';

const blocks = {
  'building-block-acute-5': withoutAcute5,
  'building-block-skin-3': withoutSkin3,
  'building-block-eye-2b': withoutEye2B,
  'building-block-asp-2': withoutAsp2,
  'building-block-aquatic-acute-2-3': withoutAquaticAcute23,
  'building-block-flam-liq-4': withoutFlamLiq4,
} as const satisfies Partial<Record<ReadingId, (figures: Thresholds) => Partial<Thresholds>>>;

/** Categories of each block. */
const categories: Readonly<Record<keyof typeof blocks, readonly string[]>> = {
  'building-block-acute-5': ['Acute Tox. 5'],
  'building-block-skin-3': ['Skin Irrit. 3'],
  'building-block-eye-2b': ['Eye Irrit. 2B'],
  'building-block-asp-2': ['Asp. Tox. 2'],
  'building-block-aquatic-acute-2-3': ['Aquatic Acute 2', 'Aquatic Acute 3'],
  'building-block-flam-liq-4': ['Flam. Liq. 4'],
};

/** Building blocks on which a result depends: those switched off, and those whose category it has. */
export function blocksUsed(
  basis: Basis,
  codes: readonly string[],
  take: (reading: ReadingId) => string,
): readonly ReadingId[] {
  if (!basis.buildingBlocks) return [];
  const ids = Object.keys(blocks) as (keyof typeof blocks)[];
  return ids.filter(id => take(id) === 'off' || categories[id].some(code => codes.includes(code)));
}

const made = new WeakMap<Basis, Map<string, Basis>>();

/**
 * The basis without the categories that an authority may leave out (UN GHS 1.1.3.1.5.4), as the record chooses.
 * Only `un-ghs` has building blocks.
 */
export function withBuildingBlocks(basis: Basis, take: (reading: ReadingId) => string): Basis {
  if (!basis.buildingBlocks) return basis;
  const off = (Object.keys(blocks) as (keyof typeof blocks)[]).filter(id => take(id) === 'off');
  if (off.length === 0) return basis;
  const key = off.join(' ');
  let choices = made.get(basis);
  if (!choices) {
    choices = new Map();
    made.set(basis, choices);
  }
  const known = choices.get(key);
  if (known) return known;
  let reduced = basis;
  for (const id of off) reduced = Object.assign({}, reduced, blocks[id](reduced));
  choices.set(key, reduced);
  return reduced;
}

function withoutAcute5({ acuteToxicity }: Thresholds): Partial<Thresholds> {
  const keys: readonly AcuteKey[] = ['oral', 'dermal', 'gas', 'vapour', 'mist'];
  const { categories, conversion, countsUpTo } = acuteToxicity;
  const four = (table: typeof categories) => ({
    ...table,
    ...Object.fromEntries(
      keys.map(key => [key, Object.fromEntries(Object.entries(table[key]).filter(([name]) => name !== '5'))]),
    ),
  });
  const bounds = Object.fromEntries(keys.map(key => [key, categories[key]['4']!])) as Record<
    AcuteKey,
    number
  >;
  return {
    acuteToxicity: {
      ...acuteToxicity,
      categories: four(categories),
      conversion: four(conversion),
      countsUpTo: { ...countsUpTo, ...bounds },
    },
  };
}

function withoutSkin3({ skin }: Thresholds): Partial<Thresholds> {
  return { skin: { ...skin, mild: null } };
}

function withoutEye2B({ eye }: Thresholds): Partial<Thresholds> {
  return { eye: { ...eye, mildIrritant: null, irritantCategory: '2' } };
}

function withoutAsp2({ aspiration }: Thresholds): Partial<Thresholds> {
  return {
    aspiration: {
      ...aspiration,
      categories: aspiration.categories.filter(({ category }) => category === '1'),
    },
  };
}

function withoutAquaticAcute23({ aquatic }: Thresholds): Partial<Thresholds> {
  return { aquatic: aquatic && { ...aquatic, acute: { ...aquatic.acute, categories: ['1'] } } };
}

function withoutFlamLiq4({ flammableLiquids }: Thresholds): Partial<Thresholds> {
  return {
    flammableLiquids: {
      ...flammableLiquids,
      flashPoint: { ...flammableLiquids.flashPoint, combustible: null },
      combustibleCategory: null,
    },
  };
}
