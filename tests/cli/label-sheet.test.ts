import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { extractText } from '../support/render.ts';
import { demoWith, inProcess, put, workshop } from './_command.ts';

const DIE = '{width: 130 mm, height: 120 mm, corner-radius: 3 mm}';
const SHEET = `labelwright: label-sheet/1
page: {width: 8.5 in, height: 11 in}
margin: {left: 0.25 in, top: 0.5 in}
rows: 2
columns: 1
pitch: {down: 5.2 in}
start: 2
lots: [K2611-01, K2611-02, K2611-03]
`;

async function made(sheet: string, ...more: string[]) {
  const folder = workshop();
  const out = join(folder, 'made');
  const record = put(
    folder,
    'p.yaml',
    demoWith([DIE, '{width: 5 in, height: 4.75 in, corner-radius: 0.125 in}']),
  );
  const result = await inProcess(label, [
    record,
    '--sheet',
    put(folder, 'sheet.yaml', sheet),
    '--out',
    out,
    ...more,
  ]);
  return { ...result, file: (name: string) => new Uint8Array(readFileSync(join(out, name))) };
}

describe('labels on sheets', () => {
  it('begin at the first free place and carry a lot each', async () => {
    const { status, file } = await made(SHEET, '--picture', 'png');
    expect(status).toBe(0);
    const pages = await extractText(file('label-bottle-946-sheet.pdf'));
    const lots = pages.map(page => page.match(/K2611-\d\d/g));
    expect(lots).toEqual([['K2611-01'], ['K2611-02', 'K2611-03']]);
    expect(pages.map(page => page.match(/DRAFT for qualified review/g)?.length)).toEqual([1, 2]);
    // A picture for listings: at least 1600 pixels long (common practice, no source), its sides as those of the die.
    const png = file('label-bottle-946.png');
    const { width, height } = await loadImage(Buffer.from(png));
    expect(Math.max(width, height)).toBeGreaterThanOrEqual(1600);
    expect(width / height).toBeCloseTo(5 / 4.75, 2);
    expect(Buffer.from(png).toString('latin1').match(/sRGB/g)).toHaveLength(1);
  });

  it.each<[string, (sheet: string) => string, number, RegExp]>([
    [
      'too wide a page',
      s => s.replace('columns: 1', 'columns: 2'),
      1,
      /need 10\.25 in of width, and the page has 8\.5 in/,
    ],
    [
      'labels over each other',
      s => s.replace('down: 5.2 in', 'down: 4 in'),
      1,
      /pitch of 4 in is less than the height of the label, 4\.75 in/,
    ],
    [
      'a place that is none',
      s => s.replace('start: 2', 'start: 3'),
      2,
      /sheet\.yaml:7:8: error: the sheet has 2 places/,
    ],
    ['an unknown key', s => s.replace('rows: 2', 'rowz: 2'), 2, /rowz/],
  ])('of %s is told', async (_, change, status, message) => {
    const result = await made(change(SHEET));
    expect(result.status).toBe(status);
    expect(result.err).toMatch(message);
    expect(result.err).not.toMatch(/\d\.\d{4,} (?:in|mm)/);
  });
});
