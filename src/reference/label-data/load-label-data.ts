import precautions from '../../../hazard-data/precaution-rules.json' with { type: 'json' };
import type { BasisId } from '../basis.ts';
import type { AllocationFile } from './allocation.ts';
import type { LabelRules, PictogramRules, PrecautionRules } from './rules.ts';
import type { StatementFile } from './statements.ts';

/** Everything that a basis prescribes for labels. */
export interface LabelData {
  readonly basis: BasisId;
  readonly statements: StatementFile;
  readonly allocation: AllocationFile;
  readonly pictograms: PictogramRules;
  readonly rules: LabelRules;
  readonly precautions: PrecautionRules;
}

interface Tables {
  readonly statements: unknown;
  readonly allocation: unknown;
  readonly pictograms: unknown;
  readonly rules: unknown;
}

const tables: Readonly<Record<BasisId, () => Promise<Tables>>> = {
  'us-hcs': () => import('./us-hcs.ts'),
  'eu-clp': () => import('./eu-clp.ts'),
  'un-ghs': () => import('./un-ghs.ts'),
};

const loaded = new Map<BasisId, Promise<LabelData>>();

/** Statements, allocation table and precedence rules of a basis; read once. */
export function loadLabelData(basis: BasisId): Promise<LabelData> {
  const known = loaded.get(basis);
  if (known) return known;
  const loading = read(basis);
  loaded.set(basis, loading);
  return loading;
}

async function read(basis: BasisId): Promise<LabelData> {
  const { statements, allocation, pictograms, rules } = await tables[basis]();
  return {
    basis,
    statements: statements as StatementFile,
    allocation: allocation as AllocationFile,
    pictograms: pictograms as PictogramRules,
    rules: rules as LabelRules,
    precautions: precautions as unknown as PrecautionRules,
  };
}
