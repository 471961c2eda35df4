import { describe, expect, it } from 'vitest';
import classes from '../../../hazard-data/hazard-classes.json' with { type: 'json' };
import type { Classification } from '../../../src/classify/classification.ts';
import { consumerFacts } from '../../../src/labelling/consumer/consumer-facts.ts';
import type { ConsumerFacts, ConsumerProduct } from '../../../src/labelling/consumer/facts.ts';
import { Exact } from '../../../src/quantity/exact.ts';
import { en } from '../../../src/words/en/index.ts';
import { classified } from '../_classified.ts';

const product: ConsumerProduct = { form: 'liquid', flashPoint: 'none', viscosity: null, inhalable: null };

const facts = (
  hazards: readonly string[],
  more: Partial<Classification> = {},
  of: Partial<ConsumerProduct> = {},
): ConsumerFacts => consumerFacts({ ...classified('us-hcs', hazards), ...more }, { ...product, ...of });

const kinds = ({ hazards }: ConsumerFacts) => hazards.map(({ kind }) => kind);

const mixture = (parts: Readonly<Record<string, number | string>>) => ({
  constituents: Object.entries(parts).map(([cas, percent]) => ({
    name: cas,
    cas,
    low: Exact.decimal(percent),
    high: Exact.decimal(percent),
    data: { hazards: [] },
    additive: true,
    relevant: false,
    water: false,
  })) as unknown as Classification['constituents'],
});

describe('nothing that the classification holds vanishes', () => {
  const codes = classes.classes
    .filter(({ us }) => us !== null)
    .flatMap(({ class: name, categories }) =>
      categories.map(({ category }) => (category ? `${name} ${category}` : name)),
    )
    .filter(code => !/^(Expl\.|Press\. Gas|Acute Tox\. 5|Self-react\.|Org\. Perox\.)$/.test(code));

  it.each(codes)('%s is a hazard of the law or told with a reason', code => {
    const found = facts([/^Acute Tox/.test(code) ? `${code} (oral)` : code]);
    const told = [...found.hazards.map(en.consumer.hazard), ...found.uncovered.map(en.consumer.uncovered)];
    expect(told.length).toBeGreaterThan(0);
    for (const line of told) expect(line).toMatch(/16 CFR 1500/);
    // What rests on a class is a proposal, with the data that would settle it.
    for (const { from, settledBy, kind } of found.hazards)
      if (from.kind === 'class' && kind !== 'pressure') expect(settledBy.length).toBeGreaterThan(0);
  });

  it('a class that is open is told', () => {
    const open = { class: 'Carc.', outcome: 'insufficient-data', because: { kind: 'screening', cites: [] } };
    const { open: told } = facts([], { otherClasses: [open] as unknown as Classification['otherClasses'] });
    expect(told).toMatchObject([{ what: 'class', of: ['Carc.'] }]);
  });
});

// 15 U.S.C. 1261(p)(1)(C), (D), repeated in 16 CFR 1500.3(b)(14)(i): DANGER on substances that are extremely
// flammable, corrosive or highly toxic; WARNING or CAUTION on all others.
describe('the signal word', () => {
  it('of the maker goes before the proposal where the law has either, and says so', () => {
    const chosen = facts(['Skin Irrit. 2'], {}, { signal: 'WARNING' });
    expect(chosen.signal).toMatchObject({ word: 'WARNING', proposed: 'CAUTION' });
    expect(chosen.refusedSignal).toBeNull();
    const said = en.consumer.signal(chosen.signal!, 'a test of the product');
    expect(said).toMatch(/WARNING, chosen by the maker in place of CAUTION: a test of the product \(16 CFR/);
    expect(facts(['Skin Irrit. 2'], {}, { signal: 'CAUTION' }).signal).not.toHaveProperty('proposed');
  });

  it('is not the maker’s to choose where the law sets it, or asks for none', () => {
    const corrosive = facts(['Skin Corr. 1'], {}, { signal: 'CAUTION' });
    expect([corrosive.signal?.word, corrosive.refusedSignal?.set]).toEqual(['DANGER', 'DANGER']);
    const harmless = facts([], {}, { signal: 'CAUTION' });
    expect([harmless.signal, harmless.refusedSignal?.set]).toEqual([null, null]);
    for (const { refusedSignal } of [corrosive, harmless])
      expect(en.consumer.refusedSignal(refusedSignal!)).toContain('signal word');
    // 16 CFR 1500.14(b)(2): diethylene glycol from 10 % bears WARNING.
    const glycol = facts([], mixture({ '111-46-6': 20 }), { signal: 'CAUTION' });
    expect([glycol.signal?.word, glycol.refusedSignal?.set]).toEqual(['WARNING', 'WARNING']);
  });
});

// 16 CFR 1500.3(b)(6), (c)(1)(ii): 50 mg/kg oral, 200 mg/kg skin, 200 ppm and 2 mg/L over one hour, each "or less";
// the upper ends of toxic, (c)(2)(i), from memory: 5 g/kg oral, 2 g/kg skin, 20,000 ppm, 200 mg/L.
describe('toxic by dose', () => {
  it.each([
    ['oral', 50, 'highly-toxic'],
    ['oral', 50.1, 'toxic'],
    ['oral', 5000, 'toxic'],
    ['oral', 5001, null],
    ['dermal', 200, 'highly-toxic'],
    ['dermal', 201, 'toxic'],
    ['dermal', 2000, 'toxic'],
    ['dermal', 2001, null],
    // An estimate of four hours is half, for mists a quarter, of that of one hour (29 CFR 1910.1200 Table A.1.1, note b).
    ['gas', 100, 'highly-toxic'],
    ['gas', 10_000, 'toxic'],
    ['gas', 10_001, null],
    ['mist', 0.5, 'highly-toxic'],
    ['mist', 50, 'toxic'],
    ['mist', 51, null],
  ] as const)('%s %s', (route, value, kind) => {
    const ateMix = { oral: null, dermal: null, gas: null, vapour: null, mist: null, [route]: value };
    expect(kinds(facts([], { ateMix }))).toEqual(kind ? [kind] : []);
  });

  it('a highly toxic product bears the signal word, Poison and the symbol', () => {
    const ateMix = { oral: 20, dermal: null, gas: null, vapour: null, mist: null };
    const found = facts(['Acute Tox. 2 (oral)'], { ateMix });
    expect(found.signal?.word).toBe('DANGER');
    expect(found.poison).toContain('1500.121(b)(5)');
    expect(found.statements).toEqual(['fatal-swallowed']);
  });

  it('a concentration that is not met in use is no hazard', () => {
    const ateMix = { oral: null, dermal: null, gas: null, vapour: null, mist: 20 };
    expect(kinds(facts([], { ateMix }, { inhalable: false }))).toEqual([]);
  });
});

// 16 CFR 1500.3(c)(6)(i) to (iii): at or below 20 F; below 100 F; to and including 150 F, closed cup.
describe('flammable by flash point', () => {
  const celsius = (fahrenheit: number) =>
    Exact.fraction(
      Exact.decimal(fahrenheit - 32)
        .exact.div(9)
        .mul(5),
    );

  it.each([
    [20, 'extremely-flammable'],
    [20.01, 'flammable'],
    [99.99, 'flammable'],
    [100, 'combustible'],
    [150, 'combustible'],
    [150.01, null],
  ])('%s F', (fahrenheit, kind) => {
    const flashPoint = { celsius: celsius(fahrenheit), cup: 'closed' } as const;
    expect(kinds(facts([], {}, { flashPoint }))).toEqual(kind ? [kind] : []);
  });

  it('above 150 F the class is told as not stated', () => {
    const flashPoint = { celsius: celsius(180), cup: 'closed' } as const;
    expect(facts(['Flam. Liq. 4'], {}, { flashPoint }).uncovered).toMatchObject([
      { why: 'above-combustible' },
    ]);
  });

  it('without a flash point the worst of the class is taken', () => {
    expect(kinds(facts(['Flam. Liq. 2'], {}, { flashPoint: null }))).toEqual(['extremely-flammable']);
  });
});

// 16 CFR 1500.14(b), 1500.129 and 1500.13, percents "or more" read word for word.
describe('substances with words of their own', () => {
  it.each([
    ['67-56-1', 4, 'DANGER', ['fatal-or-blindness', 'vapor-harmful'], ['not-nonpoisonous'], true],
    ['107-21-1', 10, 'WARNING', ['harmful-or-fatal-swallowed'], [], false],
    ['111-46-6', 10, 'WARNING', ['harmful-swallowed'], [], false],
    ['64742-47-8', 10, 'DANGER', ['harmful-or-fatal-swallowed'], ['call-physician'], false],
    ['108-88-3', 10, 'DANGER', ['harmful-or-fatal-swallowed', 'vapor-harmful'], ['call-physician'], false],
    ['71-43-2', 5, 'DANGER', ['vapor-harmful'], [], true],
    ['71-43-2', 10, 'DANGER', ['harmful-or-fatal-swallowed', 'vapor-harmful'], ['call-physician'], true],
    ['8006-64-2', 10, 'DANGER', ['harmful-or-fatal-swallowed'], [], false],
    ['1310-73-2', 10, 'POISON', [], [], false],
    ['7647-01-0', 10, 'POISON', [], [], false],
    ['50-00-0', 1, 'WARNING', ['strong-sensitizer'], [], false],
  ] as const)('%s from %s %%', (cas, limit, word, statements, also, poison) => {
    const at = facts([], mixture({ [cas]: limit }));
    expect(at.signal?.word).toBe(word);
    expect(at.statements).toEqual(statements);
    expect(at.also).toEqual(also);
    expect(at.poison !== null).toBe(poison);
    // Just under the figure the words of the rule are gone.
    const below = facts([], mixture({ [cas]: limit - 0.01 }));
    expect([below.signal?.word, below.statements]).not.toEqual([at.signal?.word, at.statements]);
  });

  // Sodium hypochlorite yields 0.9525 of its mass as available chlorine (70.906 / 74.442).
  it('10 percent of available chlorine asks for the word poison', () => {
    expect(facts([], mixture({ '7681-52-9': 10.5 })).signal?.word).toBe('POISON');
    expect(facts([], mixture({ '7681-52-9': 10.4 })).signal).toBeNull();
  });

  // 16 CFR 1500.83(a)(13): at least 100 Saybolt universal seconds, 20.5 mm2/s (from memory).
  it('a thick liquid is spared the words on aspiration', () => {
    const thick = facts([], mixture({ '64742-47-8': 40 }), { viscosity: Exact.decimal('20.5') });
    expect(thick.statements).toEqual([]);
    expect(thick.uncovered).toMatchObject([{ why: 'thick' }]);
  });
});

// 16 CFR 1500.3(b)(14)(i)(C), (D).
describe('signal word', () => {
  it.each([
    [['Skin Corr. 1B', 'Eye Dam. 1', 'Skin Irrit. 2'], 'DANGER', ['skin-and-eye-burns']],
    [['Skin Irrit. 2', 'Eye Irrit. 2A'], 'CAUTION', ['skin-and-eye-irritant']],
    [['Carc. 2', 'Eye Irrit. 2A'], 'WARNING', ['as-classified', 'eye-irritant']],
    [['Met. Corr. 1'], null, []],
  ] as const)('%j', (hazards, word, statements) => {
    const found = facts(hazards);
    expect(found.signal?.word ?? null).toBe(word);
    expect(found.statements).toEqual(statements);
  });
});
