import { spawnSync } from 'node:child_process';
import { packagePath } from '../reference/package-files.ts';
import type { Ratio } from './classification.ts';

function secondsOfProcess(args: readonly string[], rounds = 15): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < rounds; i++) {
    const start = process.hrtime.bigint();
    const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
    if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}`);
    best = Math.min(best, Number(process.hrtime.bigint() - start) / 1e9);
  }
  return best;
}

/** Commands as processes against a node process that does nothing. */
export function startUpRatios(): Ratio[] {
  const main = packagePath('out', 'dist', 'cli', 'main.js');
  const record = packagePath('templates', 'demo', 'patio-cleaner.yaml');
  const nothing = secondsOfProcess(['-e', '0']);
  const against = 'node -e 0';
  return [
    { what: 'labelwright gtin', against, ratio: secondsOfProcess([main, 'gtin', '0614141000418']) / nothing },
    {
      what: 'labelwright classify of one record',
      against,
      ratio: secondsOfProcess([main, 'classify', record]) / nothing,
    },
  ];
}
