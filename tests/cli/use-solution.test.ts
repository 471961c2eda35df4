import { describe, expect, it } from 'vitest';
import { run as classify } from '../../src/cli/commands/classify.ts';
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
});
