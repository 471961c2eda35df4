import { spawnSync } from 'node:child_process';
import { packagePath } from '../environment/package-files.ts';
import type { Ratio } from './classification.ts';

const ROUNDS = 40;

function secondsOfProcess(args: readonly string[]): number {
  const start = process.hrtime.bigint();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}

/** Commands as processes against a node process that does nothing; taken in turns, so that a busy moment meets all. */
export function startUpRatios(): Ratio[] {
  const main = packagePath('out', 'dist', 'cli', 'main.js');
  const record = packagePath('templates', 'demo', 'patio-cleaner.yaml');
  const nothing = { args: ['-e', '0'], best: Number.POSITIVE_INFINITY };
  const gtin = { args: [main, 'gtin', '0614141000418'], best: Number.POSITIVE_INFINITY };
  const classify = { args: [main, 'classify', record], best: Number.POSITIVE_INFINITY };
  for (let i = 0; i < ROUNDS; i++)
    for (const each of [nothing, gtin, classify])
      each.best = Math.min(each.best, secondsOfProcess(each.args));
  const against = 'node -e 0';
  return [
    { what: 'labelwright gtin', against, ratio: gtin.best / nothing.best },
    { what: 'labelwright classify of one record', against, ratio: classify.best / nothing.best },
  ];
}
