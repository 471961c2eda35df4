import { join } from 'node:path';
import type { Environment } from '../environment/environment.ts';
import { isOfRecord, otherRecord } from './_folder.ts';
import { locked } from './_locked.ts';
import { planOf } from './_plan.ts';
import { build, putManifest, switchIn } from './_switch.ts';
import type { Delivery } from './delivery.ts';
import type { OutputFact } from './facts.ts';
import { MANIFEST } from './manifest.ts';

/** What became of a delivery. */
export interface Delivered {
  /** Why nothing was written; empty where all was. */
  readonly refused: readonly OutputFact[];
  /** What happened to other files of the folder. */
  readonly told: readonly OutputFact[];
  /** Paths of the documents written. */
  readonly written: readonly string[];
}

/**
 * Writes documents into the output folder of a product: built aside, flushed to the disk, switched in whole, with a
 * manifest. Nothing that a person changed is overwritten or removed. A refused delivery marks the packet that it
 * leaves behind as out of date.
 * @throws OutputError where the folder cannot be written; what stood there before still stands, or the next run
 * carries on where this one stopped.
 */
export function deliver(delivery: Delivery, env: Environment): Promise<Delivered> {
  const { folder } = delivery;
  return locked(env, folder, (found, held) => {
    const old = found === 'unreadable' ? null : found;
    if (old && !isOfRecord(env.files, folder, old, delivery.inputs.record.path, delivery.product.code))
      return refusal(otherRecord(folder, old));
    const plan = planOf(delivery, old, found === 'unreadable', env);
    if (plan.changed.length > 0 && !delivery.replace) {
      if (old) putManifest(env, folder, { ...old, state: 'out-of-date', reason: reasonOf(plan.changed) });
      return refusal(...plan.changed);
    }
    const from = build(env, folder, plan.built);
    // Another run may have taken this one for dead, and cleaned up after it.
    if (!held.ours() || env.files.kind(join(folder, from)) !== 'folder')
      throw Object.assign(new Error('the lock was lost'), { code: 'ELOCKED' });
    if (found === 'unreadable') {
      // The new manifest takes its place before anything else moves.
      const { to } = plan.aside.find(({ name }) => name === MANIFEST)!;
      env.files.rename(join(folder, MANIFEST), join(folder, to));
    }
    switchIn(env, folder, plan.manifest, { from, ...plan.steps });
    return {
      refused: [],
      told: plan.told,
      written: delivery.files.map(({ name }) => join(folder, name)),
    };
  });
}

const refusal = (...refused: readonly OutputFact[]): Delivered => ({ refused, told: [], written: [] });

const reasonOf = (changed: readonly { readonly name: string }[]): string =>
  `changed by hand and not replaced: ${changed.map(({ name }) => name).join(', ')}`;
