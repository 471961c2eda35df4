import { describe, expect, it } from 'vitest';
import { basicDescription, nameWithParentheses } from '../../src/transport/answer.ts';
import { transportWorking } from '../../src/words/en/transport.ts';
import { type Material, ship } from './_ship.ts';

const bleach: Material = {
  flash: 'none',
  boil: 100,
  density: 1.2,
  formula: [{ name: 'sodium hypochlorite', cas: '7681-52-9', percent: 12.5 }],
  tests: [{ class: 'Skin Corr.', result: 'Skin Corr. 1C' }],
};
const acid: Material = {
  flash: 'none',
  boil: 100,
  density: 1.3,
  formula: [{ name: 'phosphoric acid', cas: '7664-38-2', percent: 50 }],
  tests: [{ class: 'Skin Corr.', result: 'Skin Corr. 1C' }],
};
const description = async (material: Material) => {
  const answer = await ship(material);
  return basicDescription(answer, answer.reportable);
};

// 49 CFR 172.203(c): RQ before or after the basic description, the name in parentheses where the proper shipping name
// does not identify the substance. Reportable quantities of Appendix A: sodium hypochlorite 100 lb, phosphoric acid
// 5,000 lb.
describe('hazardous substances in the description', () => {
  it('are named beside a name that does not identify them', async () => {
    expect(await description({ ...bleach, contents: '4000 L', count: 1 })).toBe(
      'RQ, UN1791, Hypochlorite solutions (sodium hypochlorite), 8, III',
    );
  });

  it('are not named twice', async () => {
    expect(await description({ ...acid, contents: '4000 L', count: 1 })).toBe(
      'RQ, UN1805, Phosphoric acid solution, 8, III',
    );
  });

  // 12.5 % of 1.2 kg/L: 100 lb, 45.359237 kg, are reached at 302.4 L (arithmetic).
  it.each([
    ['302 L', 'UN1791, Hypochlorite solutions, 8, III'],
    ['303 L', 'RQ, UN1791, Hypochlorite solutions (sodium hypochlorite), 8, III'],
  ])('are of one package: %s', async (contents, expected) => {
    expect(await description({ ...bleach, contents, count: 1 })).toBe(expected);
  });

  it('stand beside technical names, each once', () => {
    const outcome = { name: 'Corrosive liquids, n.o.s.', technical: ['Octanoyl chloride'] };
    expect(nameWithParentheses(outcome, ['octanoyl chloride', 'phenol'])).toBe(
      'Corrosive liquids, n.o.s. (Octanoyl chloride, phenol)',
    );
  });
});

describe('other modes', () => {
  const told = async (material: Material, id: string) =>
    (await ship(material)).because.filter(each => each.id === id);

  // 49 CFR 172.101, UN1791, packing group III: Column 9A 5 L, 9B 60 L.
  it.each([
    ['500 mL', 10, 'within', 'within'],
    ['500 mL', 11, 'over', 'within'],
    ['1 L', 60, 'over', 'within'],
    ['1 L', 61, 'over', 'over'],
  ])('holds %s times %d against the columns of aircraft', async (contents, count, passenger, cargo) => {
    const [fact] = await told({ ...bleach, contents, count }, 'aircraft-pack');
    expect(fact!.values).toMatchObject({ passenger, cargo });
    expect(transportWorking(fact!)).toContain('ICAO Technical Instructions');
  });

  // 49 CFR 173.27(f)(2), Table 3: Class 8, packing group III, liquid: 0.5 L an inner packaging, 1.0 L a package.
  it.each([
    ['500 mL', 2, 'within'],
    ['501 mL', 1, 'over'],
    ['500 mL', 3, 'over'],
    ['250 mL', 4, 'within'],
    ['250 mL', 5, 'over'],
  ])('holds %s times %d against limited quantities by air: %s', async (contents, count, verdict) => {
    const [fact] = await told({ ...bleach, contents, count }, 'aircraft-limited');
    expect(fact!.values).toMatchObject({ inner: '0.5 L', outer: '1 L', verdict });
    expect(transportWorking(fact!)).toContain('0.5 L');
  });

  // Table 3: Class 3, packing group III: 2.5 L in glass, 5 L in metal or plastic, 10 L a package.
  it.each([
    ['2.5 L', 4, 'within'],
    ['2.6 L', 3, 'by-material'],
    ['5 L', 2, 'by-material'],
    ['5.1 L', 1, 'over'],
  ])('knows glass from plastic: %s times %d: %s', async (contents, count, verdict) => {
    const solvent: Material = {
      flash: '40 C',
      boil: 180,
      formula: [{ name: 'mineral spirits', percent: 100, hazards: ['Flam. Liq. 3'] }],
      contents,
      count,
    };
    const [fact] = await told(solvent, 'aircraft-limited');
    expect(fact!.values.verdict).toBe(verdict);
  });

  // 173.27(a): packing group III of Class 8 in packagings of group II. (c)(2)(i): 75 kPa for packing group III of
  // Class 3 and Division 6.1, 95 kPa for other liquids.
  it('tells level and pressure of packagings', async () => {
    expect((await told(bleach, 'aircraft-performance'))[0]!.values.level).toBe('II');
    expect((await told(bleach, 'aircraft-pressure'))[0]!.values.kilopascals).toBe(95);
    const solvent: Material = {
      flash: '40 C',
      boil: 180,
      formula: [{ name: 'mineral spirits', percent: 100, hazards: ['Flam. Liq. 3'] }],
    };
    expect((await told(solvent, 'aircraft-pressure'))[0]!.values.kilopascals).toBe(75);
    expect(await told(solvent, 'aircraft-performance')).toEqual([]);
  });

  // The same row: Column 10A B, 10B 26, 53, 58.
  it('gives the stowage of the table', async () => {
    const [fact] = await told(bleach, 'vessel');
    expect(fact!.values).toMatchObject({ un: 'UN1791', stowage: 'B', other: '26, 53, 58' });
    expect(transportWorking(fact!)).toContain('IMDG Code');
  });

  // 171.8: a bulk packaging of a liquid holds more than 450 L.
  it.each([
    ['450 L', 0],
    ['451 L', 1],
  ])('of %s in one packaging is bulk: %d', async (contents, number) => {
    const found = await told({ ...bleach, contents, count: 1 }, 'bulk-package');
    expect(found).toHaveLength(number);
    if (number > 0) expect(transportWorking(found[0]!)).toContain('173.');
  });
});
