import { createCanvas, loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { labelHeadBy } from '../../src/headroom/label-head.ts';
import { stripChart } from '../../src/headroom/strip-chart.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { headroomOf, water } from './_headroom.ts';

const labelOf = labelHeadBy(await loadLabelData('us-hcs'), { form: 'liquid' });
const found = await headroomOf([{ name: 'agent', percent: 4.1, hazards: ['Skin Corr. 1B'] }, water], {
  of: 'agent',
  labelOf,
});

type Ink = 'red' | 'yellow' | 'pale' | 'blue' | 'white' | 'other';
const inkOf = ([r, g, b]: readonly number[]): Ink => {
  if (r! > 240 && g! > 240 && b! > 240) return 'white';
  if (b! > 150 && r! < 60) return 'blue';
  if (r! > 130 && g! < 70 && b! < 70) return 'red';
  if (r! > 200 && g! > 150 && b! < 80) return 'yellow';
  return r! > 200 && g! > 200 ? 'pale' : 'other';
};

/** Draws the chart with an independent renderer. */
async function pixels(svg: string): Promise<(x: number, y: number) => Ink> {
  const image = await loadImage(Buffer.from(svg));
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  const { data, width } = context.getImageData(0, 0, image.width, image.height);
  return (x, y) => {
    const start = (y * width + x) * 4;
    return inkOf([...data.subarray(start, start + 3)]);
  };
}

describe('strip chart', () => {
  it('draws the signal word as the percent grows, each band in its colour', async () => {
    const at = await pixels(stripChart(found, 'Test'));
    const [top] = [...Array(400).keys()].filter(y => at(900, y) === 'red');
    const row = [...Array(960).keys()].map(x => at(x, top! + 2));
    // Bands, without the hair lines between them.
    const bands = row.filter(
      (ink, x) => ink !== 'white' && row[x - 1] === ink && row[x - 2] !== ink && row[x + 1] === ink,
    );
    // Nothing below 1 %, Warning to 3 %, Danger from there (App. C, C.4.4 and C.4.5), 4.1 % in the midst of it.
    expect(bands.filter((ink, i) => ink !== bands[i - 1])).toEqual(['pale', 'yellow', 'red']);
  });

  it('marks the present percent between 3 % and 5 %', async () => {
    const at = await pixels(stripChart(found, 'Test'));
    const rows = [...Array(400).keys()];
    const line = [...Array(960).keys()].filter(x => rows.filter(y => at(x, y) === 'blue').length > 60);
    const middle = (line[0]! + line.at(-1)!) / 2;
    // Logarithmic from 1 % at 284 to 100 % at 930: 284 + 646 log10(4.1) / 2.
    expect(Math.abs(middle - 481.9)).toBeLessThan(1.5);
  });

  it('says in its description what it shows, and keeps marks of XML out of it', () => {
    const svg = stripChart(found, 'A <b> & "c"\u0007');
    expect(svg).toContain('role="img" aria-labelledby="headroom-title headroom-description"');
    expect(svg).toContain('from 3 % to below 5 %: Danger: Skin Irrit. 2, Eye Dam. 1; GHS05');
    expect(svg).toContain('A &lt;b&gt; &amp; &quot;c&quot;\uFFFD');
    expect(svg).not.toContain('<b>');
  });

  it('survives any name', async () => {
    const at = await pixels(stripChart(found, ']]> <!-- </svg> &amp; \u0000'));
    expect(at(5, 5)).toBe('white');
  });
});
