import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileCercla, compileProp65, compileToxicChemicals } from '../../../src/generate/regulatory.ts';
import { findClass } from '../../../src/notation/classes.ts';
import { openExposure } from '../../../src/reference/exposure/open-exposure.ts';
import { openRegulatory } from '../../../src/reference/regulatory/open-regulatory.ts';
import { deMinimis, hazardTypes, productPounds } from '../../../src/reference/regulatory/programs.ts';
import type { Share } from '../../../src/reference/regulatory/regulatory-facts.ts';

const bytes = (name: string) => readFileSync(`hazard-data/${name}`);
const exposure = openExposure(bytes('exposure/osha-pel.tsv'), bytes('exposure/carcinogen-lists.tsv'));
const table = openRegulatory(
  bytes('regulatory/cercla.tsv'),
  bytes('regulatory/epcra-313.tsv'),
  bytes('regulatory/prop65.tsv'),
);
const rows = (name: string) =>
  parse(bytes(`sources/${name}.csv`), { columns: true }) as Record<string, string>[];
const facts = (
  shares: readonly Share[],
  classes: readonly string[] = [],
  form: 'liquid' | 'solid' = 'liquid',
) => table.facts(shares, { form, classes }, exposure.carcinogens);
const share = (name: string, cas: string | null, percent: number): Share => ({ name, cas, percent });

describe('CERCLA', () => {
  // Reportable quantities of 40 CFR 302.4; the pounds of product worked by hand, RQ / (percent / 100).
  it.each([
    ['methanol', '67-56-1', 34, 5000, 14706],
    ['hydrochloric acid', '7647-01-0', 12, 5000, 41667],
    ['ammonium hydroxide', '1336-21-6', 1.2, 1000, 83333],
    ['sodium hypochlorite', '7681-52-9', 6, 100, 1667],
    ['sodium hydroxide', '1310-73-2', 1.822, 1000, 54885],
    ['sodium hypochlorite', '7681-52-9', 5.025, 100, 1990],
  ])('%s at %s: %s %% reaches %s lb', (name, cas, percent, quantity, pounds) => {
    const [found, ...others] = facts([share(name, cas, percent)]).reportable;
    expect(others).toEqual([]);
    expect(found!.found.row.pounds).toBe(quantity);
    expect(Math.round(found!.productPounds!)).toBe(pounds);
  });

  it('takes hydrates, solutions and names of the trade for the substance (40 CFR 116.4)', () => {
    const of = (name: string, cas: string | null) =>
      facts([share(name, cas, 10)]).reportable.map(({ found }) => found.row.name);
    expect(of('copper sulfate pentahydrate', '7758-99-8')).toEqual(['Cupric sulfate']);
    expect(of('muriatic acid', null)).toEqual(['Hydrochloric acid']);
    expect(of('Household ammonia', null)).toEqual(['Ammonium hydroxide']);
    expect(of('Caustic soda, 50 %', null)).toEqual(['Sodium hydroxide']);
    expect(of('lyocell', null)).toEqual([]);
  });

  it('holds the quantity in the pounds it gives, and none in a product without the substance', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(1, 10, 100, 1000, 5000),
        fc.double({ min: 0.001, max: 100, noNaN: true }),
        (rq, percent) => {
          expect((productPounds(rq, percent)! * percent) / 100).toBeCloseTo(rq, 6);
        },
      ),
    );
    expect(productPounds(100, 0)).toBeNull();
  });

  it('marks what was not read', () => {
    expect(table.cercla({ name: '1-bromopropane', cas: '106-94-5' }).found[0]!.row.compared).toBe(false);
    expect(table.cercla({ name: 'methanol', cas: '67-56-1' }).found[0]!.row.compared).toBe(true);
  });
});

describe('EPCRA section 313', () => {
  const one = (percent: number, more: Partial<Parameters<typeof deMinimis>[1]> = {}) =>
    deMinimis([percent], { carcinogen: false, specialConcern: false, aqueousAmmonia: false, ...more });

  it('"below 1 percent of the mixture, or 0.1 percent … a carcinogen" (40 CFR 372.38(a)(1))', () => {
    expect(one(0.999).below).toBe(true);
    expect(one(1).below).toBe(false);
    expect(one(0.1, { carcinogen: true }).below).toBe(false);
    expect(one(0.0999, { carcinogen: true }).below).toBe(true);
    // Members of one category together; decimal arithmetic.
    expect(
      deMinimis([0.7, 0.2, 0.1], { carcinogen: false, specialConcern: false, aqueousAmmonia: false }),
    ).toMatchObject({
      below: false,
      limit: 1,
    });
  });

  it('has no de minimis for chemicals of special concern (40 CFR 372.38(a)(2))', () => {
    expect(one(0.0001, { specialConcern: true })).toMatchObject({ limit: null, below: false });
    const [lead] = facts([share('lead', '7439-92-1', 0.001)]).toxic;
    expect(lead).toMatchObject({ deMinimis: { limit: null } });
  });

  it('counts 10 percent of aqueous ammonia (40 CFR 372.65(a))', () => {
    const of = (percent: number) => facts([share('ammonium hydroxide', '1336-21-6', percent)]).toxic[0]!;
    expect(of(10)).toMatchObject({ condition: 'aqueous-ammonia', deMinimis: { below: false } });
    expect(of(9.9).deMinimis.below).toBe(true);
    // Salts and ammonia are one entry.
    expect(
      facts([share('ammonia', '7664-41-7', 6), share('ammonium chloride', '12125-02-9', 4)]).toxic[0]!
        .deMinimis.below,
    ).toBe(false);
  });

  it('adds the glycol ethers of category N230', () => {
    const entries = facts([
      share('2-butoxyethanol', '111-76-2', 0.6),
      share('Butyl diglycol', '112-34-5', 0.4),
      share('Dipropylene glycol methyl ether', '34590-94-8', 5),
    ]).toxic;
    expect(entries).toHaveLength(1);
    expect(entries[0]).toMatchObject({
      row: { category: 'N230', basis: 'text' },
      deMinimis: { below: false },
    });
    expect(entries[0]!.members).toHaveLength(2);
  });

  it('asks for a notice for a toxic chemical, not for dissolved acid or a user of isopropyl alcohol', () => {
    // 40 CFR 372.65(a): hydrochloric acid (acid aerosols …), isopropyl alcohol (… no supplier notification).
    expect(facts([share('methanol', '67-56-1', 34)]).supplierNotice).toBe(true);
    expect(facts([share('methanol', '67-56-1', 0.9)]).supplierNotice).toBe(false);
    expect(facts([share('hydrochloric acid', '7647-01-0', 12)]).supplierNotice).toBe(false);
    expect(facts([share('isopropanol', '67-63-0', 70)]).supplierNotice).toBe(false);
  });
});

describe('hazard types of EPCRA sections 311 and 312 (40 CFR 370.66)', () => {
  it('are in the words of the section', () => {
    expect(hazardTypes(['Flam. Liq.', 'Acute Tox.', 'STOT SE', 'Aquatic Acute', 'HNOC'])).toEqual({
      health: [
        'acute toxicity (any route of exposure)',
        'specific target organ toxicity (single or repeated exposure)',
        'hazard not otherwise classified (HNOC)',
      ],
      physical: ['flammable (gases, aerosols, liquids or solids)', 'hazard not otherwise classified (HNOC)'],
    });
  });

  it('cover every class that 29 CFR 1910.1200 has', () => {
    const { classes } = JSON.parse(bytes('hazard-classes.json').toString()) as {
      classes: { class: string; us: string | null }[];
    };
    const covered = classes.filter(({ us }) => us !== null).map(each => each.class);
    expect(covered.length).toBeGreaterThan(20);
    for (const name of covered) {
      const { health, physical } = hazardTypes([name]);
      expect([findClass(name)!.kind === 'health' ? health : physical, name]).not.toEqual([[], name]);
    }
  });
});

describe('Proposition 65', () => {
  it.each([
    // As published 2023-12-29: methanol and ethylene glycol (ingested) developmental; the others have no CAS number.
    ['methanol', '67-56-1', 'Methanol'],
    ['ethylene glycol', '107-21-1', 'Ethylene glycol (ingested)'],
    ['quartz', '14808-60-7', 'Silica, crystalline (airborne particles of respirable size)'],
    ['cocamide DEA', '68603-42-9', 'Coconut oil diethanolamine condensate (cocamide diethanolamine)'],
  ])('%s', (name, cas, entry) => {
    expect(table.prop65({ name, cas }).found.map(({ row }) => row.name)).toContain(entry);
  });

  it('takes no ethanol for a drink', () => {
    expect(table.prop65({ name: 'ethanol', cas: '64-17-5' }).found).toEqual([]);
  });
});

describe('the compiled tables', () => {
  const text = (name: string) => bytes(name).toString();
  const source = JSON.parse(text('regulatory/epcra-313.source.json')) as {
    readSince: { cas: string[]; categories: string[] };
  };

  it('are current', () => {
    expect(text('regulatory/cercla.tsv')).toBe(compileCercla(text('sources/epa-lists.csv')));
    expect(text('regulatory/epcra-313.tsv')).toBe(
      compileToxicChemicals(text('sources/epa-lists.csv'), [
        ...source.readSince.cas,
        ...source.readSince.categories,
      ]),
    );
    expect(text('regulatory/prop65.tsv')).toBe(compileProp65(text('sources/prop65.csv')));
  });

  it('hold nothing of the lists that are known from memory throughout', () => {
    // 40 CFR 355 Appendix A and 68.130: column basis of the source says K for every row.
    const epa = rows('epa-lists');
    expect(epa.filter(row => row.epcra_302_tpq_lb !== '' && !row.basis!.includes('302:K'))).toEqual([]);
    expect(epa.filter(row => row.caa_112r_tq_lb !== '' && !row.basis!.includes('112r:K'))).toEqual([]);
    for (const name of ['cercla', 'epcra-313'])
      expect(text(`regulatory/${name}.tsv`)).not.toMatch(/\b302: |112\(r\)/u);
    expect(facts([]).notHeld).toEqual(expect.arrayContaining(['epcra-302', 'caa-112r', 'tsca-inventory']));
  });

  it('give back every row of the sources by number, else by name', () => {
    const sought = (row: Record<string, string>) =>
      row.cas_no ? { name: '', cas: row.cas_no.split('; ')[0]! } : { name: row.name!, cas: null };
    for (const row of rows('epa-lists')) {
      if (row.cercla_rq_lb)
        expect(
          table.cercla(sought(row)).found.some(({ row: found }) => found.pounds === Number(row.cercla_rq_lb)),
          row.name,
        ).toBe(true);
      if (row.epcra_313)
        expect(
          table.toxicChemicals(sought(row)).found.some(({ row: found }) => found.name === row.name),
          row.name,
        ).toBe(true);
    }
    for (const row of rows('prop65').filter(({ toxicity_type }) => toxicity_type !== '')) {
      const { found, setAside } = table.prop65(sought(row));
      expect(
        [...found, ...setAside].some(
          ({ row: listed }) => listed.name === row.name && listed.toxicity.join(';') === row.toxicity_type,
        ),
        row.name,
      ).toBe(true);
    }
  });
});
