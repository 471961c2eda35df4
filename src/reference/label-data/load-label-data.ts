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

type Load = () => Promise<{ default: unknown }>;

const files: Readonly<
  Record<BasisId, Readonly<Record<'statements' | 'allocation' | 'pictograms' | 'rules', Load>>>
> = {
  'us-hcs': {
    statements: () => import('../../../hazard-data/us-hcs/statements.json', { with: { type: 'json' } }),
    allocation: () => import('../../../hazard-data/us-hcs/allocation.json', { with: { type: 'json' } }),
    pictograms: () => import('../../../hazard-data/us-hcs/pictogram-rules.json', { with: { type: 'json' } }),
    rules: () => import('../../../hazard-data/us-hcs/label-rules.json', { with: { type: 'json' } }),
  },
  'eu-clp': {
    statements: () => import('../../../hazard-data/eu-clp/statements.json', { with: { type: 'json' } }),
    allocation: () => import('../../../hazard-data/eu-clp/allocation.json', { with: { type: 'json' } }),
    pictograms: () => import('../../../hazard-data/eu-clp/pictogram-rules.json', { with: { type: 'json' } }),
    rules: () => import('../../../hazard-data/eu-clp/label-rules.json', { with: { type: 'json' } }),
  },
  'un-ghs': {
    statements: () => import('../../../hazard-data/un-ghs/statements.json', { with: { type: 'json' } }),
    allocation: () => import('../../../hazard-data/un-ghs/allocation.json', { with: { type: 'json' } }),
    pictograms: () => import('../../../hazard-data/un-ghs/pictogram-rules.json', { with: { type: 'json' } }),
    rules: () => import('../../../hazard-data/un-ghs/label-rules.json', { with: { type: 'json' } }),
  },
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
  const of = files[basis];
  const [statements, allocation, pictograms, rules, precautions] = await Promise.all([
    of.statements(),
    of.allocation(),
    of.pictograms(),
    of.rules(),
    import('../../../hazard-data/precaution-rules.json', { with: { type: 'json' } }) as Promise<{
      default: unknown;
    }>,
  ]);
  return {
    basis,
    statements: statements.default as StatementFile,
    allocation: allocation.default as AllocationFile,
    pictograms: pictograms.default as PictogramRules,
    rules: rules.default as LabelRules,
    precautions: precautions.default as PrecautionRules,
  };
}
