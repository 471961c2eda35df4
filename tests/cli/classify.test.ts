import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { demo, demoWith, inProcess, labelwright, put, stackTrace, TODAY, workshop } from './_command.ts';

// The document `labelwright/classification/1` as it is fixed; further keys may stand beside these.
const because = z.object({
  rule: z.string().min(1),
  cite: z.string().min(1),
  working: z.string().min(1),
  total: z.number().optional(),
  limit: z.number().optional(),
  unit: z.string().optional(),
  terms: z.array(z.object({ name: z.string(), percent: z.number(), weight: z.number() })).optional(),
});
const statement = (code: RegExp) => z.object({ code: z.string().regex(code), text: z.string().min(1) });
const percent = z.number().min(0).max(100);
const estimate = z.number().positive().nullable();
const classification = z.object({
  schema: z.literal('labelwright/classification/1'),
  product: z.object({ name: z.string().min(1), code: z.string().min(1) }),
  basis: z.object({
    id: z.enum(['us-hcs', 'eu-clp', 'un-ghs']),
    title: z.string().min(1),
    asOf: z.iso.date(),
  }),
  constituents: z
    .array(
      z.looseObject({
        name: z.string().min(1),
        cas: z
          .string()
          .regex(/^\d{2,7}-\d\d-\d$/)
          .nullable(),
        percent,
        hazards: z.array(z.string()),
        source: z.string().min(1),
      }),
    )
    .min(1),
  hazards: z.array(
    z.object({
      code: z.string().regex(/^[A-Z][^()]+$/),
      route: z.enum(['oral', 'dermal', 'inhalation']).nullable(),
      statements: z.array(z.string().regex(/^(H\d{3}\w*|EUH\d{3}\w*)$/)),
      because,
    }),
  ),
  otherClasses: z.array(
    z.looseObject({
      class: z.string().min(1),
      outcome: z.enum(['not-classified', 'insufficient-data', 'not-applicable']),
      because,
    }),
  ),
  ateMix: z.strictObject({
    oral: estimate,
    dermal: estimate,
    gas: estimate,
    vapour: estimate,
    mist: estimate,
  }),
  unknownAcuteToxicity: z.strictObject({ oral: percent, dermal: percent, inhalation: percent }),
  signalWord: z.enum(['Danger', 'Warning']).nullable(),
  pictograms: z.array(z.string().regex(/^GHS0[1-9]$/)),
  hazardStatements: z.array(statement(/^(H\d{3}\w*|EUH\d{3}\w*)(\+H\d{3}\w*)*$/)),
  precautionaryStatements: z.array(
    statement(/^P\d{3}(\+P\d{3})*$/).extend({
      group: z.enum(['general', 'prevention', 'response', 'storage', 'disposal']),
    }),
  ),
  supplemental: z.array(statement(/./)),
  readings: z.array(z.object({ id: z.string().min(1), taken: z.string().min(1), cite: z.string().min(1) })),
  warnings: z.array(z.object({ id: z.string().min(1), text: z.string().min(1) })),
});

const demos = ['patio-cleaner', 'descaler', 'degreaser'].map(name => `templates/demo/${name}.yaml`);

describe('classify --json', () => {
  it.each(
    demos.flatMap(path => (['us-hcs', 'eu-clp', 'un-ghs'] as const).map(basis => [path, basis] as const)),
  )('keeps its form: %s, %s', async (path, basis) => {
    const { status, out } = await inProcess(classify, [path, '--json', '--basis', basis]);
    expect(status).toBe(0);
    const result = classification.parse(JSON.parse(out));
    expect(result.basis).toMatchObject({ id: basis, asOf: TODAY });
    // A class is either given or among the others, and the constituents make the whole.
    const given = new Set(result.hazards.map(({ code, route }) => `${code.replace(/ \d.*$/, '')} ${route}`));
    for (const { class: name, route = null } of result.otherClasses)
      expect(given).not.toContain(`${name} ${route}`);
    // Of a range `percent` is the upper end.
    const ends = result.constituents.map(
      ({ percent: share, percentRange }) => (percentRange ?? [share, share]) as [number, number],
    );
    const sum = (end: 0 | 1) => ends.reduce((total, range) => total + range[end], 0);
    expect(sum(0)).toBeLessThan(100.001);
    expect(sum(1)).toBeGreaterThan(99.999);
  });

  it('prints the document alone, one for one record and a list for several', () => {
    const one = labelwright(['classify', demos[0]!, '--json', '--as-of', TODAY]);
    expect(one).toMatchObject({ status: 0, err: '' });
    expect(classification.parse(JSON.parse(one.out)).product.code).toBe('KP-946');
    const all = labelwright(['classify', ...demos, '--json', '--as-of', TODAY]);
    expect(all.status).toBe(0);
    const codes = z
      .array(classification)
      .parse(JSON.parse(all.out))
      .map(({ product }) => product.code);
    expect(codes).toEqual(['KP-946', 'LD-1000', 'CD-500']);
  });

  it('gives the same bytes again', async () => {
    const [first, second] = [
      await inProcess(classify, [...demos, '--json']),
      await inProcess(classify, [...demos, '--json']),
    ];
    expect(first.out).toBe(second.out);
  });

  it('needs no maker', async () => {
    const path = put(workshop(), 'p.yaml', demoWith(['maker: maker.yaml\n', '']));
    const { status, out, err } = await inProcess(classify, [path, '--json']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(classification.parse(JSON.parse(out)).signalWord).toBe('Danger');
  });
});

describe('classify', () => {
  it('shows the working with its paragraphs', async () => {
    const { status, out } = await inProcess(classify, [demos[0]!]);
    expect(status).toBe(0);
    // 1.5 % sodium hydroxide and that of the bleach: 29 CFR 1910.1200 App. A, A.2 and A.3 sum corrosives.
    expect(out).toMatch(/^ {2}Skin Corr\. 1[ABC]? +H314$/m);
    expect(out).toMatch(/29 CFR 1910\.1200 App\. A, A\.2/);
    expect(out).toContain('Draft for qualified review');
    expect(out.toLowerCase()).not.toMatch(/\b(compliant|approved)\b/);
  });
});

const base = parse(demo) as Record<string, unknown>;
const inline = (code: string, percentage: unknown): string =>
  JSON.stringify({
    ...base,
    maker: undefined,
    code,
    batch: undefined,
    formula: [
      { name: 'sodium hydroxide', cas: '1310-73-2', percent: percentage },
      { name: 'water', amount: 'balance' },
    ],
  });

describe('classify --lines', () => {
  it('answers a thousand lines in order, and goes on after a wrong one', () => {
    const lines = Array.from({ length: 1000 }, (_, at) => {
      if (at % 100 === 50) return '{"labelwright": "product/1", ';
      if (at % 100 === 75) return inline(`N-${at}`, '1,5');
      return inline(`N-${at}`, (at % 80) / 10);
    });
    const { status, out, err } = labelwright(['classify', '--lines', '--as-of', TODAY], {
      input: `${lines.join('\n')}\n`,
    });
    expect({ status, err }).toEqual({ status: 2, err: '' });
    const results = out
      .trimEnd()
      .split('\n')
      .map(line => JSON.parse(line) as Record<string, never>);
    expect(results).toHaveLength(1000);
    for (const [at, result] of results.entries()) {
      if (at % 100 === 50) {
        expect(result).toEqual({ error: { message: expect.stringMatching(/^not JSON: /), path: '' } });
      } else if (at % 100 === 75) {
        expect(result).toEqual({
          error: {
            message: expect.stringContaining('`1,5` has a decimal comma'),
            path: 'formula[0].percent',
          },
        });
      } else {
        const { product, hazards } = classification.parse(result);
        expect(product.code).toBe(`N-${at}`);
        // The caustic is corrosive at least from 5 % on: 29 CFR 1910.1200 App. A, Table A.2.3.
        if ((at % 80) / 10 >= 5) expect(hazards.map(({ code }) => code).join()).toContain('Skin Corr. 1');
      }
    }
  });

  it('says 0 where every line is good, and nothing for blank lines', async () => {
    const { status, out } = await inProcess(
      classify,
      ['--lines'],
      `${inline('A', 1)}\n\n${inline('B', 2)}\n`,
    );
    expect(status).toBe(0);
    expect(out.trimEnd().split('\n')).toHaveLength(2);
  });

  it.each([
    ['a list', '[]', 'this is a list, not a record'],
    ['a number', '12', 'not a record'],
    ['null', 'null', 'not a record'],
    ['an empty object', '{}', '`labelwright` is missing'],
    ['a maker', '{"labelwright": "maker/1"}', 'this is a maker record'],
    ['brackets without end', '['.repeat(100_000), 'not JSON'],
    ['a nest too deep', `${'['.repeat(5000)}${']'.repeat(5000)}`, 'deep'],
  ])('answers %s with an error line', async (_, line, said) => {
    const { status, out } = await inProcess(classify, ['--lines'], `${line}\n`);
    expect(status).toBe(2);
    const { error } = JSON.parse(out) as { error: { message: string; path: string } };
    expect(error.message).toContain(said);
    expect(error.message).not.toMatch(stackTrace);
  });
});
