import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { inProcess, put, workshop } from './_command.ts';

// No outside source for the choice of words. The sections are those of 29 CFR 1910.1200 App. D, Table D.1: 2 hazards,
// 3 composition, 9 physical properties, 11 toxicology, 12 ecology.

const drum = `labelwright: raw-material/1
name: thickener
supplier: Example Chemicals
formula:
  - {name: gum, percent: 40, hazards: [STOT RE 2], source: example of a supplier sheet}
  - {name: carrier oil, percent: 60, hazards: [Asp. Tox. 1, Aquatic Chronic 1], source: example of a supplier sheet}
`;

const product = (formula: readonly string[], properties = ''): string =>
  ['labelwright: product/1', 'name: Test', 'code: T-1', 'form: liquid', properties, 'formula:']
    .concat(formula.map(line => `  - ${line}`))
    .concat('  - {name: water, amount: balance}')
    .filter(Boolean)
    .join('\n');

async function classified(text: string, ...more: string[]): Promise<string> {
  const folder = workshop();
  put(folder, 'drum.yaml', drum);
  const { out, status } = await inProcess(classify, [put(folder, 'p.yaml', text), ...more]);
  expect(status).toBe(0);
  return out;
}

const asked = z.object({
  ask: z.array(
    z.strictObject({
      rawMaterials: z.array(z.string()),
      ingredient: z.string().nullable(),
      section: z.union([2, 3, 9, 11, 12].map(section => z.literal(section))),
      wants: z.looseObject({ kind: z.string() }),
      text: z.string().min(1),
    }),
  ),
});

/** `thickener/gum 2 organs` */
async function questions(text: string, basis = 'us-hcs'): Promise<readonly string[]> {
  const { ask } = asked.parse(JSON.parse(await classified(text, '--json', '--basis', basis)));
  return ask.map(
    ({ rawMaterials, ingredient, section, wants }) =>
      `${[...rawMaterials, ingredient ?? 'product'].join('/')} ${section} ${wants.kind}`,
  );
}

const bought = ['{use: drum.yaml, percent: 30}'];

describe('the answer', () => {
  it('stands before the details', async () => {
    const out = await classified(
      product(['{name: sodium hydroxide, cas: 1310-73-2, percent: 6}'], 'properties: {pH: 13.5}'),
    );
    const lines = out.split('\n');
    // CLP Annex VI 011-002-00-6: Skin Corr. 1A from 5 %; 29 CFR 1910.1200 App. A, A.3.1.2.1: corrosive to eyes with it.
    expect(lines[3]).toMatch(/^Danger: .*Skin Corr\. 1[AB]?, Eye Dam\. 1/);
    expect(lines.indexOf('Constituents')).toBeGreaterThan(3);
  });

  it('says what is open and why where nothing is classified', async () => {
    // CLP Annex VI 603-002-00-5, ethanol: Flam. Liq. 2 alone, which only the flash point of the mixture decides.
    const out = await classified(product(['{name: ethanol, cas: 64-17-5, percent: 4}']));
    expect(out.split('\n')[3]).toBe(
      'Not classified; not decided: Flam. Liq. because the flash point is not given',
    );
  });

  it('says no more where nothing is open', async () => {
    const formula = ['{name: salt, cas: 7647-14-5, percent: 4, hazards: [], source: example of a sheet}'];
    const out = await classified(product(formula, 'properties: {flash-point: none}'));
    expect(out.split('\n')[3]).toBe('Not classified');
    expect(out).not.toContain('Ask your supplier for');
  });
});

describe('what to ask a supplier for', () => {
  it('is by raw material and section', async () => {
    expect(await questions(product(bought, 'properties: {flash-point: none}'))).toEqual([
      'thickener/gum 2 organs',
      'thickener/carrier oil 9 viscosity',
      'product 9 viscosity',
    ]);
    const out = await classified(product(bought, 'properties: {flash-point: none}'));
    expect(out).toMatch(/^ {2}thickener +section 2, classification: gum: the target organs of STOT RE 2$/m);
  });

  it('has ecology only where the basis has the class', async () => {
    const text = product(bought, 'properties: {flash-point: none}');
    expect(await questions(text, 'eu-clp')).toContain('thickener/carrier oil 12 m-factor');
  });

  it('asks everything of an ingredient without data', async () => {
    const text = product(['{name: mystery, percent: 3}'], 'properties: {flash-point: none}');
    expect(await questions(text, 'eu-clp')).toEqual([
      'mystery 2 classification',
      'mystery 3 identity',
      'mystery 3 limits',
      'mystery 11 acute',
      'mystery 12 aquatic',
    ]);
  });

  it('asks for what a harmonised entry leaves open', async () => {
    // CLP Annex VI 603-001-00-X, methanol: Acute Tox. 3 with `*` by three routes; Annex VI 1.2.1.
    const found = await questions(product(['{name: methanol, cas: 67-56-1, percent: 20}']));
    expect(found).toEqual(
      expect.arrayContaining(['methanol 2 minimum', 'methanol 9 flash-point', 'product 9 flash-point']),
    );
  });

  it('asks for the pH of a strong acid', async () => {
    const acid = product(['{name: hydrochloric acid, cas: 7647-01-0, percent: 2}']);
    expect(await questions(acid)).toEqual(expect.arrayContaining(['hydrochloric acid 9 pH', 'product 9 pH']));
  });
});
