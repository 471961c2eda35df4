import { describe, expect, it } from 'vitest';
import rules from '../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };
import { isCas } from '../../src/notation/cas.ts';
import { type BasisId, loadBasis } from '../../src/reference/basis.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';

// Abridged standard atomic weights, IUPAC 2021.
const weights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Li: 6.94,
  Cr: 51.996,
  Br: 79.904,
  Pb: 207.2,
};

function massOf(formula: string): number {
  let mass = 0;
  for (const part of formula.split('.')) {
    const [, times, body] = /^(\d*)(.*)$/.exec(part)!;
    const flat = body!.replace(/\(([^)]*)\)(\d*)/g, (_, inner: string, n: string) =>
      inner.repeat(Number(n || 1)),
    );
    for (const [, element, count] of flat.matchAll(/([A-Z][a-z]?)(\d*)/g))
      mass += weights[element!]! * Number(count || 1) * Number(times || 1);
  }
  return mass;
}

function walk(value: unknown, visit: (node: Record<string, unknown>) => void): void {
  if (Array.isArray(value)) for (const item of value) walk(item, visit);
  else if (value && typeof value === 'object') {
    visit(value as Record<string, unknown>);
    for (const item of Object.values(value)) walk(item, visit);
  }
}

describe('supplemental.json', () => {
  it('has CAS numbers with a right check digit', () => {
    const wrong: unknown[] = [];
    walk(rules, ({ cas }) => {
      if (typeof cas === 'string' && !isCas(cas)) wrong.push(cas);
    });
    expect(wrong).toEqual([]);
  });

  it.each(rules.activeChlorine.members)(
    'active chlorine of $name',
    ({ formula, positiveHalogens, activeChlorine }) => {
      expect(activeChlorine).toBeCloseTo((positiveHalogens * 2 * weights.Cl!) / massOf(formula), 3);
    },
  );

  it.each([...rules.lead.members, ...rules.cement.chromates])(
    'metal in $name',
    ({ formula, atoms, fraction }) => {
      const metal = formula.includes('Pb') ? weights.Pb! : weights.Cr!;
      expect(fraction).toBeCloseTo((atoms * metal) / massOf(formula), 3);
    },
  );

  it('names only statements of the law, each with its paragraph and source', async () => {
    const { statements } = await loadLabelData('eu-clp');
    const found: string[] = [];
    walk(rules, ({ code, milderCode, shortCode, cite, source }) => {
      for (const name of [code, milderCode, shortCode]) if (typeof name === 'string') found.push(name);
      if (code !== undefined) expect([typeof cite, typeof source]).toEqual(['string', 'string']);
    });
    expect(found.filter(code => !statements.supplemental?.[code])).toEqual([]);
    expect(found.length).toBeGreaterThan(15);
  });
});

const figuresOf = async (id: BasisId) => {
  const loaded = await loadBasis(id, '2026-11-25');
  if (!loaded.ok) throw new Error(id);
  return loaded.value;
};

describe('thresholds', async () => {
  const eu = await figuresOf('eu-clp');
  const un = await figuresOf('un-ghs');

  it('lists the building blocks that the UN criteria hold', () => {
    const { buildingBlocks, aquatic, aspiration, acuteToxicity, skin, eye, flammableLiquids } = un;
    const held = [
      ...aquatic!.acute.categories.slice(1).map(category => `Aquatic Acute ${category}`),
      ...aspiration.categories.slice(1).map(({ category }) => `Asp. Tox. ${category}`),
      ...Object.keys(acuteToxicity.conversion.oral)
        .slice(4)
        .map(category => `Acute Tox. ${category}`),
      ...(skin.mild ? ['Skin Irrit. 3'] : []),
      `Eye Irrit. ${eye.mildIrritant!.category}`,
      `Flam. Liq. ${flammableLiquids.combustibleCategory}`,
    ];
    expect(Object.keys(buildingBlocks!).sort()).toEqual(held.sort());
  });

  // 4.3.3.2 and 4.4.3.2; the agency's page on Delegated Regulation (EU) 2023/707.
  it('applies the classes of Delegated Regulation (EU) 2023/707 to mixtures from 1 May 2026', () => {
    const { environmental } = eu;
    for (const table of [
      environmental['ED HH'],
      environmental['ED ENV'],
      environmental.PBT,
      environmental.vPvB,
      environmental.PMT,
      environmental.vPvM,
    ])
      expect(table).toMatchObject({ mixturesFrom: '2026-05-01', mixturesOnMarketFrom: '2028-05-01' });
  });
});
