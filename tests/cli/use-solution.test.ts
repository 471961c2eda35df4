import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { inProcess, put, workshop } from './_command.ts';

const record = (more: string) => `labelwright: product/1
name: Quarrygate Degreaser
code: D-1
form: liquid
${more}
formula:
  - {name: builder, percent: 10, hazards: [Skin Corr. 1B, Eye Dam. 1], source: supplier SDS}
  - {name: water, amount: balance}
packs:
  - id: drum
    contents: 20 L
    dilution: [{ratio: "1:16", use: light soil}, {ratio: "1:1", use: heavy soil}]
`;

// 29 CFR 1910.1200(d)(1)(ii): hazards of use that can be foreseen; App. A, Table A.2.3.
describe('the solution that a user holds is classified beside the concentrate', () => {
  it('by parts in volume, with the density of the product', async () => {
    const path = put(workshop(), 'p.yaml', record('properties: {density: 1.10 g/mL}'));
    const { out, status } = await inProcess(classify, [path, '--brief']);
    expect(status).toBe(0);
    const [concentrate, light, heavy] = out.trim().split('\n');
    expect(concentrate).toContain('Skin Corr. 1B');
    // 1.10 / (1.10 + 16 x 0.998) = 6.4 % of the product, 0.64 % of the builder: below every cut-off.
    expect(light).toContain('use solution 1:16 in water for light soil (drum)');
    expect(light).toContain('no hazard class given');
    // 1.10 / (1.10 + 0.998) = 52.4 %, 5.24 % of the builder: Category 1 from 5 %.
    expect(heavy).toContain('Skin Corr. 1B');
  });

  it('in JSON too, summing to 100 %', async () => {
    const path = put(workshop(), 'p.yaml', record('properties: {density: 1.10 g/mL}'));
    const { out } = await inProcess(classify, [path, '--json']);
    const { useSolutions } = JSON.parse(out) as {
      useSolutions: { ratio: string; constituents: { percent: number }[] }[];
    };
    expect(useSolutions.map(({ ratio }) => ratio)).toEqual(['1:16', '1:1']);
    for (const { constituents } of useSolutions)
      expect(constituents.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 9);
  });

  it('and without a density the record is asked for it', async () => {
    const path = put(workshop(), 'p.yaml', record(''));
    const { err } = await inProcess(classify, [path, '--brief']);
    expect(err).toContain('need the density of the product');
  });

  const MAKER =
    'labelwright: maker/1\nname: Quarrygate Works\naddress: 1 Quarry Lane\ntelephone: +1 555 0100\nemergency: {telephone: +1 555 0199, hours: always}\n';
  const whole = (dir: string) => {
    put(dir, 'maker.yaml', MAKER);
    return put(
      dir,
      'p.yaml',
      `${record('maker: maker.yaml\nuse: Degreaser\nproperties: {density: 1.10 g/mL, flash-point: none}')}    label: {width: 180 mm, height: 150 mm, corner-radius: 3 mm}\n`,
    );
  };

  it('on the sheet too, apart from the product as sold', async () => {
    const dir = workshop();
    await inProcess(sds, [whole(dir), '--out', join(dir, 'o')]);
    const sheet = readFileSync(join(dir, 'o', 'sds.html'), 'utf8').replace(/<[^>]*>/g, ' ');
    expect(sheet).toMatch(/All other sections are of the product as sold/);
    expect(sheet).toMatch(/Diluted 1:16 in water for light soil: No hazard class is met as far as data go/);
    expect(sheet).toMatch(/Diluted 1:1 in water for heavy soil: Danger\. Skin corrosion, Category 1/);
    // Section 2 is of the concentrate alone.
    expect(sheet.split('Composition/information')[0]).not.toContain('1:16');
  });

  it('in the work sheet, and the label tells how to dilute', async () => {
    const dir = workshop();
    const path = whole(dir);
    const { out: work } = await inProcess(classify, [path]);
    expect(work).toContain('not the product as sold');
    // 128 fl oz to the US gallon: 1:16 is 8 fl oz to a gallon, 62.5 mL to a liter.
    const { out: drawn } = await inProcess(label, [path, '--json', '--out', join(dir, 'o')]);
    const texts = (JSON.parse(drawn) as { texts: { text: string }[] }).texts
      .map(({ text }) => text)
      .join(' ');
    expect(texts.replace(/\s+/g, ' ')).toContain('Light soil 1:16: 8 fl oz to 1 gal, 63 mL to 1 L of water');
  });
});
