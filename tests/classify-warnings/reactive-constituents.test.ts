import { describe, expect, it } from 'vitest';
import groups from '../../hazard-data/reactivity/groups.json' with { type: 'json' };
import pairs from '../../hazard-data/reactivity/pairs.json' with { type: 'json' };
import { classesIn, type Mixture } from '../../src/classify/ingredient.ts';
import { reactiveAlone } from '../../src/classify/warnings/reactive-alone.ts';
import { reactiveConstituents } from '../../src/classify/warnings/reactive-constituents.ts';
import { isCas } from '../../src/notation/cas.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { Exact } from '../../src/quantity/exact.ts';
import { plain } from '../../src/quantity/print.ts';
import { quietScale } from '../../src/quantity/scale.ts';
import { en } from '../../src/words/en/index.ts';

interface Part {
  readonly name: string;
  readonly cas?: string;
  readonly percent: number;
  readonly hazards?: readonly string[];
  readonly additive?: boolean;
}

function mixtureOf(
  parts: readonly Part[],
  { form = 'liquid', pH }: { form?: Mixture['form']; pH?: number } = {},
): Mixture {
  const hazard = (text: string) => {
    const read = parseHazard(text);
    if (!read.ok) throw new Error(read.message);
    return read.value;
  };
  const ingredients = parts.map(({ name, cas, percent, hazards = [], additive = true }, index) => ({
    index,
    name,
    cas: cas ?? null,
    water: name === 'water',
    additive,
    relevant: false,
    percent: Exact.decimal(percent),
    data: {
      hazards: hazards.map(hazard),
      limits: [],
      ate: {},
      mFactors: { acute: 1, chronic: 1, given: new Set<'acute' | 'chronic'>() },
      peroxide: null,
      unknown: new Set<never>(),
      metal: null,
      noData: false,
      supplemental: [],
      supplementalLimits: [],
      source: { kind: 'record', named: 'test' } as const,
      minimum: false,
    },
  }));
  const measured =
    pH === undefined
      ? {}
      : { pH: { value: Exact.decimal(pH), written: String(pH), method: null, source: null } };
  const classes = classesIn(ingredients.map(({ data }) => data));
  return { form, ingredients, properties: { ...measured, other: {} }, evidence: [], classes };
}

const warned = (parts: readonly Part[], more: Parameters<typeof mixtureOf>[1] = {}) => {
  const telling = { names: (i: number) => parts[i]!.name, style: plain, amounts: true };
  return reactiveConstituents(mixtureOf(parts, more), quietScale).map(warning => ({
    ...warning,
    text: en.warning(warning, telling),
    cite: en.cites(warning.cites),
  }));
};

const bleach = { name: 'sodium hypochlorite', cas: '7681-52-9', percent: 4 };
const water = { name: 'water', cas: '7732-18-5', percent: 90 };
const lye = { name: 'sodium hydroxide', cas: '1310-73-2', percent: 1.5 };
const vinegar = { name: 'acetic acid', cas: '64-19-7', percent: 2 };

describe('mixtures that agencies warn of', () => {
  // National Fire Protection Association, 13 April 2020: bleach with vinegar, ammonia and rubbing alcohol,
  // hydrogen peroxide with vinegar, and what each gives.
  it.each([
    [bleach, vinegar, 'toxic gas', 'chlorine'],
    [bleach, { name: 'ammonia solution', cas: '1336-21-6', percent: 1 }, 'toxic gas', 'chloramines'],
    [bleach, { name: 'propan-2-ol', cas: '67-63-0', percent: 5 }, 'toxic gas', 'chloroform'],
    [{ name: 'hydrogen peroxide', cas: '7722-84-1', percent: 3 }, vinegar, 'new substance', 'peracids'],
    // 40 CFR 264 Appendix V, groups 5-A and 5-B (cyanide and sulfide with acid), 2-A and 2-B (metal with acid or caustic).
    [{ name: 'sodium sulfide', cas: '1313-82-2', percent: 1 }, vinegar, 'toxic gas', 'hydrogen sulfide'],
    [{ name: 'aluminium', cas: '7429-90-5', percent: 1 }, lye, 'fire or explosion', 'hydrogen'],
    [{ name: 'zinc', cas: '7440-66-6', percent: 1 }, vinegar, 'fire or explosion', 'hydrogen'],
    // EPA-600/2-80-076: 11 x 3 GT, 15 x 1 GT, 2 x 4 H F.
    [{ name: 'sodium cyanide', cas: '143-33-9', percent: 0.5 }, vinegar, 'toxic gas', 'hydrogen cyanide'],
    [
      { name: 'ammonium bifluoride', cas: '1341-49-7', percent: 1 },
      { name: 'hydrochloric acid', cas: '7647-01-0', percent: 5 },
      'toxic gas',
      'hydrogen fluoride',
    ],
    [
      { name: 'nitric acid', cas: '7697-37-2', percent: 10 },
      { name: 'ethanol', cas: '64-17-5', percent: 10 },
      'fire or explosion',
      'nitrogen oxides',
    ],
    // CLP Annex II 1.2.3 names sodium azide.
    [{ name: 'sodium azide', cas: '26628-22-8', percent: 0.1 }, vinegar, 'toxic gas', 'hydrazoic acid'],
    // NIOSH Current Intelligence Bulletin 15 (1976): diethanolnitrosamine in cutting fluids with nitrite.
    [
      { name: 'sodium nitrite', cas: '7632-00-0', percent: 2 },
      { name: 'diethanolamine', cas: '111-42-2', percent: 5 },
      'new substance',
      'nitrosamines',
    ],
  ])('%j with %j', (one, other, danger, gas) => {
    const found = warned([one, other, water]).filter(({ text }) => text.startsWith(`${danger}: `));
    expect(found).toHaveLength(1);
    expect(found[0]!.id).toBe('reactive-constituents');
    expect(found[0]!.text).toContain(gas);
    expect(found[0]!.text).toContain(`${one.percent} % ${one.name}`);
    expect(found[0]!.text).toContain(`${other.percent} % ${other.name}`);
  });

  it('puts toxic gas before heat', () => {
    const found = warned([bleach, lye, vinegar, water]);
    expect(found.map(({ text }) => text.split(':')[0])).toEqual(['toxic gas', 'heat']);
  });

  it('takes an oxidizer and a flammable liquid by their classes', () => {
    const oxidizer = { name: 'oxidizer', percent: 10, hazards: ['Ox. Liq. 2'] };
    const solvent = (percent: number) => ({ name: 'solvent', percent, hazards: ['Flam. Liq. 2'] });
    expect(warned([oxidizer, solvent(5)])).toHaveLength(1);
    expect(warned([oxidizer, solvent(4.9)])).toHaveLength(0);
  });
});

describe('what hides from a list of numbers', () => {
  const acid = { name: 'Muriatic acid 20 Baume', percent: 5 };

  it('a name without a CAS number', () => {
    expect(warned([{ name: 'Sodium hypochlorite 12 %', percent: 4 }, acid])[0]!.text).toContain('chlorine');
  });

  // From memory; the sources stand with the pairs.
  it.each([
    [bleach, { name: 'sodium dihydrogen phosphate', cas: '7558-80-7', percent: 5 }, 'chlorine'],
    [bleach, { name: 'copper sulfate', cas: '7758-98-7', percent: 1 }, 'oxygen'],
    [
      { name: 'bronopol', cas: '52-51-7', percent: 0.1 },
      { name: 'triethanolamine', cas: '102-71-6', percent: 5 },
      'nitrosamines',
    ],
    [
      { name: 'hydrogen peroxide', cas: '7722-84-1', percent: 20 },
      { name: 'sulfuric acid', cas: '7664-93-9', percent: 20 },
      'peracids',
    ],
    [
      { name: 'formaldehyde', cas: '50-00-0', percent: 5 },
      { name: 'hydrochloric acid', cas: '7647-01-0', percent: 10 },
      'bis(chloromethyl) ether',
    ],
    [{ name: 'trichloroethylene', cas: '79-01-6', percent: 30 }, lye, 'dichloroacetylene'],
  ])('%j with %j', (one, other, gas) => {
    expect(warned([one, other, water]).some(({ text }) => text.includes(gas))).toBe(true);
  });

  it('but a dilute oxidizer with a flammable liquid is no explosion', () => {
    const peroxide = { name: 'oxidizer', percent: 10, hazards: ['Ox. Liq. 1'] };
    const solvent = { name: 'solvent', percent: 10, hazards: ['Flam. Liq. 3'] };
    expect(warned([peroxide, solvent])[0]!.text).toMatch(/^heat: /);
    expect(warned([{ ...peroxide, percent: 50 }, solvent])[0]!.text).toMatch(/^fire or explosion: /);
    // Dry, little chlorate is enough.
    expect(warned([peroxide, solvent], { form: 'solid' })[0]!.text).toMatch(/^fire or explosion: /);
  });
});

// 29 CFR 1910.1200(d)(1)(ii): hazards of use that can be foreseen; National Fire Protection Association, 13 April 2020.
describe('a constituent that must not be mixed in use', () => {
  const alone = (parts: readonly Part[]) =>
    reactiveAlone(mixtureOf(parts), quietScale).map(found =>
      en.warning(found, { names: (i: number) => parts[i]!.name, style: plain, amounts: true }),
    );

  it('bleach gives its line by itself, once for the product', () => {
    const texts = alone([bleach, lye, water]);
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain('Do not mix with acids, ammonia');
    expect(alone([water])).toEqual([]);
  });
});

describe('mixtures that are sound', () => {
  it('hypochlorite in caustic soda, as it is sold', () => expect(warned([bleach, lye, water])).toEqual([]));

  it('one substance in two groups does not react with itself', () =>
    expect(warned([{ name: 'ammonium bifluoride', cas: '1341-49-7', percent: 5 }, water])).toEqual([]));

  it('traces below 0.1 %', () => {
    expect(warned([bleach, { ...vinegar, percent: 0.09 }])).toEqual([]);
    expect(warned([bleach, { ...vinegar, percent: 0.1 }])).toHaveLength(1);
  });

  it('dry acid and carbonate, as in effervescent tablets', () => {
    const dry = [
      { name: 'citric acid', cas: '77-92-9', percent: 40 },
      { name: 'sodium hydrogencarbonate', cas: '144-55-8', percent: 50 },
    ];
    expect(warned(dry, { form: 'solid' })).toEqual([]);
    expect(warned(dry)).toHaveLength(1);
  });
});

describe('pH', () => {
  const sequestrant = { name: 'etidronic acid', cas: '2809-21-4', percent: 0.5 };

  it('says that the acid is a salt at a measured high pH', () => {
    expect(warned([bleach, sequestrant])[0]!.text).not.toContain('as its salt');
    expect(warned([bleach, sequestrant], { pH: 12.6 })[0]!.text).toContain(
      'at the measured pH 12.6 the acid is present as its salt',
    );
    expect(warned([bleach, sequestrant], { pH: 9.9 })[0]!.text).not.toContain('as its salt');
  });

  // A.2.3.3.4: "For mixtures containing strong acids or bases the pH should be used as classification criteria".
  it('asks for what they form and the pH where acid meets base', () => {
    const acid = { name: 'phosphoric acid', cas: '7664-38-2', percent: 4 };
    const [found] = warned([acid, lye, water]);
    expect(found!.text).toContain('under `reacts` what they form');
    expect(found!.text).toContain('give the measured pH');
    expect(found!.cite).toContain('A.2.3.3.4');
    expect(warned([acid, lye], { pH: 6.5 })[0]!.text).toContain('measured pH 6.5');
    expect(
      warned([
        { ...acid, additive: false },
        { ...lye, additive: false },
      ]),
    ).toEqual([]);
    expect(warned([{ ...acid, additive: false }, lye])).toHaveLength(1);
  });
});

describe('the data', () => {
  it('has CAS numbers with a right check digit, each once in a group', () => {
    for (const { id, members } of groups.groups) {
      const numbers = members.map(({ cas }) => cas);
      expect(
        numbers.filter(cas => !isCas(cas)),
        id,
      ).toEqual([]);
      expect(new Set(numbers).size, id).toBe(numbers.length);
    }
  });

  it('pairs known groups, every group in some pair, each pair with a source and a known danger', () => {
    const ids = groups.groups.map(({ id }) => id);
    expect(new Set(pairs.pairs.flatMap(({ a, b }) => [...a, ...b]))).toEqual(new Set(ids));
    for (const { id, source, danger } of pairs.pairs) {
      expect(source.length, id).toBeGreaterThan(0);
      expect(pairs.order, id).toContain(danger);
    }
  });
});
