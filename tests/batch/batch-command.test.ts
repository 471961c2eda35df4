import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/batch.ts';
import { inProcess, put, workshop } from '../cli/_command.ts';
import { extractText } from '../support/render.ts';

const folder = workshop();
const record = join(folder, 'patio-cleaner.yaml');
const out = join(folder, 'batch');
const call = (...args: string[]) => inProcess(run, [record, '--out', out, ...args]);
const answer = async (...args: string[]) => JSON.parse((await call(...args, '--json')).out);

const formula = (lines: string) => `labelwright: product/1
name: Invented Mix
code: IM-1
form: liquid
properties: {density: 1.05 g/mL}
formula:
${lines}
`;
const mixed = async (name: string, lines: string, ...args: string[]) => {
  const path = put(folder, `${name}.yaml`, formula(lines));
  const { out: text, err } = await inProcess(run, [
    path,
    '--size',
    '100 gal',
    '--out',
    join(folder, name),
    '--json',
    ...args,
  ]);
  expect(err).toBe('');
  const { steps, keepApart } = JSON.parse(text);
  return {
    names: steps.map((step: { name: string }) => step.name),
    ids: (step: number): string[] => steps[step].cautions.map(({ id }: { id: string }) => id),
    texts: (step: number): string => steps[step].cautions.map(({ text: t }: { text: string }) => t).join(' '),
    keepApart,
  };
};

describe('batch', () => {
  it('weighs out all of the batch and no more', async () => {
    const { size, steps } = await answer('--size', '250 gal');
    const sum = steps.reduce((total: number, { grams }: { grams: number }) => total + grams, 0);
    expect(sum).toBeCloseTo(size.grams, 3);
    // 250 US gal x 3.785411784 L x 1.09 kg/L / 0.45359237 kg (arithmetic on NIST Handbook 44, Appendix C).
    expect(size.pounds).toBeCloseTo((250 * 3.785411784 * 1.09) / 0.45359237, 6);
  });

  it('fills bottles and cases', async () => {
    const { yields } = await answer('--size', '250 gal');
    // 250 x 3785.411784 mL / 946 mL = 1000.37 (arithmetic).
    expect(yields).toEqual([
      { pack: 'bottle-946', contents: '946 mL', packs: 1000, casesOf: 20, cases: 50, loose: 0 },
    ]);
  });

  it('takes the batch of the record, its day and its number of the day into the lot', async () => {
    const { lot, made, size } = await answer('--made', '2026-11-25', '--number', '2');
    expect([lot.slice(0, 8), made, size.grams]).toEqual(['26112502', '2026-11-25', 945_000]);
    const { out: told, status } = await inProcess(run, ['--lot', lot, '--json']);
    expect(status).toBe(0);
    expect(JSON.parse(told)).toMatchObject({ made: '2026-11-25', number: 2 });
  });

  it('writes a ticket that says it is a draft and a review copy', async () => {
    await call('--size', '3 drums');
    const page = readFileSync(join(out, 'batch-ticket.html'), 'utf8');
    for (const words of ['DRAFT for qualified review', 'content="review"', 'batch of 3 drums', 'Initials'])
      expect(page).toContain(words);
  });

  it('labels what is poured into other containers, one page each, water aside', async () => {
    await call('--size', '3 drums');
    const pages = await extractText(new Uint8Array(readFileSync(join(out, 'raw-materials.pdf'))));
    // 29 CFR 1910.1200(f)(6)(ii): product identifier and words or pictograms on the hazards.
    expect(pages).toHaveLength(4);
    const bleach = pages.find(page => page.includes('hypochlorite'))!;
    expect(bleach).toContain('DANGER');
    expect(bleach).toContain('Causes severe skin burns and eye damage');
    expect(bleach.indexOf('hypochlorite')).toBeLessThan(bleach.indexOf('DANGER'));
    expect(pages.find(page => page.includes('builder blend'))).toContain('No hazard data');
    for (const page of pages) expect(page).toContain('DRAFT for qualified review');
  });

  it('keeps a lot of the shop as it is, and refuses a wrong check character', async () => {
    expect((await answer('--lot', 'B-77')).lot).toBe('B-77');
    const { status, err } = await call('--lot', '261125010');
    expect(status).toBe(1);
    expect(err).toContain('check character');
  });

  it('keeps the temperature of a density, and says where none is named', async () => {
    const path = put(
      folder,
      'warm.yaml',
      formula(`  - {name: propan-2-ol, cas: 67-63-0, percent: 20, density: 0.786 g/mL at 20 C}
  - {name: glycerol, cas: 56-81-5, percent: 10, density: 1.26 g/mL}
  - {name: water, amount: balance}`).replace('1.05 g/mL', '1.05 g/mL at 68 F'),
    );
    const target = join(folder, 'warm');
    const { out: text, status } = await inProcess(run, [
      path,
      '--size',
      '100 gal',
      '--out',
      target,
      '--json',
    ]);
    expect(status).toBe(0);
    const { size, steps } = JSON.parse(text);
    // 100 US gal x 3.785411784 L x 1.05 kg/L (arithmetic): the temperature changes no figure.
    expect(size.grams).toBeCloseTo(100 * 3785.411784 * 1.05, 3);
    const at = Object.fromEntries(
      steps.map((step: { name: string; densityAt: string | null }) => [step.name, step.densityAt]),
    );
    expect(at).toEqual({ 'propan-2-ol': '20 C', glycerol: null, water: '20 C' });
    const ticket = readFileSync(join(target, 'batch-ticket.html'), 'utf8');
    for (const words of [
      'propan-2-ol 0.786 at 20 C',
      'glycerol 1.26 (no temperature named)',
      '1.05 g/mL at 68 F',
    ])
      expect(ticket).toContain(words);
  });

  it.each([
    ['1.05 g/mL at noon', /noon.*does not begin with a number/],
    ['1.05 g/mL at 20', /no unit/],
    ['1.05 g/mL at 900 C', /no temperature at which a density is measured/],
  ])('refuses a density of %s', async (density, message) => {
    const path = put(
      folder,
      'noon.yaml',
      formula('  - {name: water, amount: balance}').replace('1.05 g/mL', density),
    );
    const { status, err } = await inProcess(run, [path, '--size', '100 gal', '--out', join(folder, 'noon')]);
    expect(status).toBe(2);
    expect(err).toMatch(message);
  });

  it('needs a density for a size by volume', async () => {
    const path = put(
      folder,
      'thin.yaml',
      formula('  - {name: water, amount: balance}').replace('density: 1.05 g/mL', ''),
    );
    const target = join(folder, 'thin');
    const { status, err } = await inProcess(run, [path, '--size', '250 gal', '--out', target]);
    expect([status, err.includes('density')]).toEqual([1, true]);
    expect(existsSync(target)).toBe(false);
  });

  it.each([
    [['--size', '3']],
    [['--number', '100']],
    [['--lot', '261126016', '--number', '2']],
    [['--printer', '72']],
  ])('is a wrong call with %j', async args => {
    expect((await call(...args)).status).toBe(2);
  });
});

// Groups and pairs as hazard-data/reactivity holds them, each with its source; acid into water is common practice.
describe('order and cautions', () => {
  it('puts water first, alkali before acid, bleach last', async () => {
    const { names } = await mixed(
      'order',
      `  - {name: sodium hypochlorite, cas: 7681-52-9, percent: 5}
  - {name: citric acid, cas: 77-92-9, percent: 1}
  - {name: sodium hydroxide, cas: 1310-73-2, percent: 2}
  - {name: sodium chloride, cas: 7647-14-5, percent: 1, hazards: [], source: example}
  - {name: water, amount: balance}`,
    );
    expect(names).toEqual([
      'water',
      'sodium chloride',
      'sodium hydroxide',
      'citric acid',
      'sodium hypochlorite',
    ]);
  });

  it('says acid into water, and stops water onto acid', async () => {
    const lines = `  - {name: sulfuric acid, cas: 7664-93-9, percent: 20}
  - {name: water, amount: balance}`;
    const right = await mixed('acid', lines);
    expect(right.ids(1)).toContain('acid-into-water');
    const wrong = await mixed('acid-listed', lines, '--as-listed');
    expect(wrong.ids(1)).toContain('water-onto-acid');
    expect(wrong.texts(1)).toContain('STOP');
  });

  it('names what must never meet, with the gas', async () => {
    const { texts, keepApart, names } = await mixed(
      'gas',
      `  - {name: hydrochloric acid, cas: 7647-01-0, percent: 3}
  - {name: sodium hypochlorite, cas: 7681-52-9, percent: 5}
  - {name: water, amount: balance}`,
    );
    expect(keepApart).toHaveLength(1);
    expect(keepApart[0]).toMatchObject({ danger: 'toxic gas', text: expect.stringContaining('chlorine') });
    expect(texts(names.indexOf('sodium hypochlorite'))).toContain('TOXIC GAS');
  });

  it('tells heat where acid and alkali meet', async () => {
    const { texts, names } = await mixed(
      'heat',
      `  - {name: phosphoric acid, cas: 7664-38-2, percent: 10}
  - {name: potassium hydroxide, cas: 1310-58-3, percent: 5}
  - {name: water, amount: balance}`,
    );
    expect(names).toEqual(['water', 'potassium hydroxide', 'phosphoric acid']);
    expect(texts(2)).toContain('HEAT');
  });

  it('keeps ignition away from a flammable solvent and runs the exhaust', async () => {
    const { ids } = await mixed('solvent', `  - {name: propan-2-ol, cas: 67-63-0, percent: 100}`);
    expect(ids(0)).toEqual(expect.arrayContaining(['flammable', 'ventilate']));
  });

  it('asks for an amount where the formula leaves a range', async () => {
    const { ids } = await mixed(
      'range',
      `  - {name: citric acid, cas: 77-92-9, percent: [3, 5]}
  - {name: water, amount: balance}`,
    );
    expect(ids(1)).toContain('range');
  });
});
