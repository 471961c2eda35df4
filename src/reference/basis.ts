import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { inForceOn, newestOn } from './dated.ts';
import type { ThresholdFile } from './threshold-file.ts';
import type { Basis, Figures } from './thresholds.ts';

export type BasisId = Basis['id'];

export const basisIds: readonly BasisId[] = ['us-hcs', 'eu-clp', 'un-ghs'];

/** The basis where none is named, and of the documents that follow US law. */
export const usual: BasisId = 'us-hcs';

/** The basis by which a sheet tells of the aquatic environment where its own has no such classes. */
export const environmentalBasis: BasisId = 'un-ghs';

const files: Readonly<Record<BasisId, () => Promise<{ default: unknown }>>> = {
  'us-hcs': () => import('../../hazard-data/us-hcs/thresholds.json', { with: { type: 'json' } }),
  'eu-clp': () => import('../../hazard-data/eu-clp/thresholds.json', { with: { type: 'json' } }),
  'un-ghs': () => import('../../hazard-data/un-ghs/thresholds.json', { with: { type: 'json' } }),
};

/**
 * The figures of a basis in force on a date.
 * @param asOf YYYY-MM-DD
 * @returns an error where no text held is in force on that date; it names the text that is.
 */
export async function loadBasis(id: BasisId, asOf: string): Promise<Outcome<Basis>> {
  const file = (await files[id]()).default as ThresholdFile;
  const inForce = newestOn(Object.keys(file.texts), asOf);
  if (inForce === null)
    return fail({
      code: 'no-text-in-force',
      severity: 'error',
      message: `no text of ${file.title} is held for ${asOf}`,
      hint: textsFor(file, asOf),
    });
  const { text, instrument, physicalInstrument } = file.texts[inForce]!;
  const figures = inForceOn(file.figures, asOf) as Figures;
  return succeed({ ...figures, text, inForce, instrument, physicalInstrument, id, title: file.title, asOf });
}

/** Names the earliest text held and the text that applied on a date before it. */
function textsFor({ texts, notHeld }: ThresholdFile, asOf: string): string {
  const earliest = Object.keys(texts).sort()[0]!;
  const held = `the earliest text held is that in force since ${earliest}: ${texts[earliest]!.text}`;
  const applied = notHeld.filter(({ from }) => from <= asOf).sort((a, b) => b.from.localeCompare(a.from))[0];
  if (!applied) return held;
  const still = (applied.mayBeUsed ?? []).map(use => `for ${use.for} until ${use.until}`).join(' and ');
  const uses = still && `; it may be used beside the later text ${still} (${applied.cite})`;
  return `${held}; not held: ${applied.text}${uses}`;
}
