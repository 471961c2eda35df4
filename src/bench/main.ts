import { browserRatios } from './browser.ts';
import { classificationRatios, growthRatios, type Ratio } from './classification.ts';
import { labelRatios } from './label.ts';
import { lineRatios } from './lines.ts';
import { startUpRatios } from './start-up.ts';
import { tableRatios } from './table.ts';

const print = (title: string, ratios: readonly Ratio[]): void => {
  process.stdout.write(`${title}\n`);
  for (const { what, against, ratio, seconds } of ratios) {
    const times = seconds ? ` (${seconds.map(each => `${(1000 * each).toFixed(0)} ms`).join(' / ')})` : '';
    process.stdout.write(`  ${ratio.toFixed(2).padStart(8)}  ${what} / ${against}${times}\n`);
  }
};

process.stdout.write('Ratios measured in this run; the least of several rounds each.\n');
print('Classification', await classificationRatios());
print('Growth', await growthRatios());
print('Harmonised table', tableRatios());
print('Label', await labelRatios());
print('Browser (none where Chromium is not installed)', await browserRatios());
print('Stream', lineRatios());
print('Start-up', startUpRatios());
