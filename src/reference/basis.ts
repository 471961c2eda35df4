import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Basis, Thresholds } from './thresholds.ts';

export type BasisId = Basis['id'];

export const basisIds: readonly BasisId[] = ['us-hcs', 'eu-clp', 'un-ghs'];

interface ThresholdFile {
  readonly id: string;
  readonly title: string;
  readonly versions: readonly Thresholds[];
}

const files: Readonly<Record<BasisId, () => Promise<{ default: unknown }>>> = {
  'us-hcs': () => import('../../hazard-data/us-hcs/thresholds.json', { with: { type: 'json' } }),
  'eu-clp': () => import('../../hazard-data/eu-clp/thresholds.json', { with: { type: 'json' } }),
  'un-ghs': () => import('../../hazard-data/un-ghs/thresholds.json', { with: { type: 'json' } }),
};

/**
 * The figures of a basis in force on a date.
 * @param asOf YYYY-MM-DD
 * @returns an error where no text of the basis was in force on that date.
 */
export async function loadBasis(id: BasisId, asOf: string): Promise<Outcome<Basis>> {
  const file = (await files[id]()).default as ThresholdFile;
  const inForce = file.versions.filter(version => version.inForce <= asOf);
  const version = inForce.reduce<Thresholds | null>(
    (newest, candidate) => (newest && newest.inForce > candidate.inForce ? newest : candidate),
    null,
  );
  if (!version) {
    const earliest = file.versions.map(({ inForce }) => inForce).sort()[0];
    return fail({
      code: 'no-text-in-force',
      severity: 'error',
      message: `no text of ${file.title} is held for ${asOf}`,
      hint: `the earliest text held is that in force since ${earliest}`,
    });
  }
  return succeed({ ...version, id, title: file.title, asOf });
}
