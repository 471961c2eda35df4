import { spawnSync } from 'node:child_process';
import { packagePath } from '../environment/package-files.ts';
import type { Ratio } from './classification.ts';

/** Invented; substances by CAS number, one by its own hazards, one that is not known in part. */
const product = {
  labelwright: 'product/1',
  name: 'Bench',
  code: 'B-1',
  form: 'liquid',
  properties: { pH: 12.6, density: '1.05 g/mL', 'flash-point': '46 C (closed cup)' },
  formula: [
    { name: 'ethanol', cas: '64-17-5', percent: 12 },
    { name: '2-butoxyethanol', cas: '111-76-2', percent: 5 },
    { name: 'sodium hydroxide', cas: '1310-73-2', percent: 1.5 },
    { name: 'fragrance', percent: 0.2, hazards: ['Skin Sens. 1B', 'Aquatic Chronic 2'], source: 'supplier' },
    { name: 'builder', percent: 3, hazards: [], source: 'supplier', unknown: ['acute-dermal'] },
    { name: 'water', amount: 'balance' },
  ],
};

const LINES = 4000;
const ROUNDS = 5;

/** Reads JSON lines and writes for each as much JSON as a result has, and nothing else. */
const bareProgram = (result: string): string => `
const { createInterface } = require('node:readline');
const result = JSON.parse(${JSON.stringify(result)});
let out = [];
createInterface({ input: process.stdin }).on('line', line => {
  JSON.parse(line);
  out.push(JSON.stringify(result));
  if (out.length === 100) { process.stdout.write(out.join('\\n') + '\\n'); out = []; }
});`;

/** A stream of records, classified with reasons, against a process that reads and writes the same JSON. */
export function lineRatios(): Ratio[] {
  const input = `${JSON.stringify(product)}\n`.repeat(LINES);
  const main = packagePath('out', 'dist', 'cli', 'main.js');
  const seconds = (args: readonly string[], given: string): { spent: number; out: string } => {
    const start = process.hrtime.bigint();
    const { status, stdout, stderr } = spawnSync(process.execPath, args, {
      input: given,
      maxBuffer: 2 ** 30,
      encoding: 'utf8',
    });
    if (status !== 0)
      throw new Error(`${args.join(' ')} ended with ${status}: ${stderr || stdout.slice(0, 400)}`);
    return { spent: Number(process.hrtime.bigint() - start) / 1e9, out: stdout };
  };
  const [first = ''] = seconds(
    [main, 'classify', '--lines'],
    input.slice(0, input.indexOf('\n') + 1),
  ).out.split('\n');
  const bare = ['-e', bareProgram(first)];
  let best = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] as [number, number];
  for (let i = 0; i < ROUNDS; i++)
    best = [
      Math.min(best[0], seconds([main, 'classify', '--lines'], input).spent),
      Math.min(best[1], seconds(bare, input).spent),
    ];
  return [
    {
      what: `labelwright classify --lines of ${LINES} records, whole process`,
      against: 'a process that parses the records and writes the results as JSON',
      ratio: best[0] / best[1],
    },
  ];
}
