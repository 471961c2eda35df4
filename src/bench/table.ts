import { readFileSync } from 'node:fs';
import { packagePath } from '../environment/package-files.ts';
import { openHarmonised } from '../reference/harmonised/open-harmonised.ts';
import type { Ratio } from './classification.ts';
import { secondsOfEach } from './timing.ts';

/** Opening the harmonised table and answering a first lookup, against reading and parsing a JSON file of its size. */
export function tableRatios(): Ratio[] {
  const path = packagePath('hazard-data', 'substances', 'harmonised.tsv');
  const rows = readFileSync(path, 'utf8')
    .split('\n')
    .map(line => line.split('\t'));
  const json = JSON.stringify(rows).slice(0, readFileSync(path).length);
  const whole = `${json.slice(0, json.lastIndexOf('],['))}]]`;
  const [parse, first] = secondsOfEach(
    () => void JSON.parse(Buffer.from(whole).toString('utf8')),
    () => void openHarmonised(readFileSync(path)).byCas('7664-38-2', '2026-11-25'),
  );
  return [
    {
      what: 'open the harmonised table and answer a first lookup',
      against: 'JSON.parse of a file of its size',
      ratio: first! / parse!,
    },
  ];
}
