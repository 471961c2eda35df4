import { randomBytes } from 'node:crypto';
import type { Environment, Held } from './environment.ts';
import { nodeOutputFiles } from './node-output-files.ts';

/** A lock whose holder has not touched it for so long is one that a killed run left. */
const STALE = 5_000;
/** How long a run waits for another, in tries and milliseconds between them. */
const WAIT = { retries: 600, minTimeout: 50, maxTimeout: 100, randomize: true } as const;

/** This computer. */
export const nodeEnvironment: Environment = {
  files: nodeOutputFiles,
  now: () => new Date(),
  randomName: () => randomBytes(10).toString('hex'),
  lock: async (path): Promise<Held> => {
    const { default: lockfile } = await import('proper-lockfile');
    let ours = true;
    const release = await lockfile.lock(path, {
      lockfilePath: path,
      realpath: false,
      stale: STALE,
      update: STALE / 5,
      retries: WAIT,
      onCompromised: () => {
        ours = false;
      },
    });
    return {
      ours: () => ours,
      release: async () => {
        if (ours) await release();
      },
    };
  },
};
