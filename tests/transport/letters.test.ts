import { describe, expect, it } from 'vitest';
import { described, type Material, ship } from './_ship.ts';

/**
 * Letters of interpretation of the Pipeline and Hazardous Materials Safety Administration, by reference number, as
 * published at phmsa.dot.gov/regulations/title49/interp. What a letter does not say of its product is a sample. Of
 * 08-0291, 09-0204, 12-0014 and 22-0041 the question and the facts could be read, the whole answer not: what is
 * expected there follows from the table and from 173.2a, 173.121 and 173.154.
 */
const isopropanol = { name: 'propan-2-ol', cas: '67-63-0' };
const surfactant = { name: 'a nonionic surfactant', hazards: ['Eye Irrit. 2'] };
const hypochlorite = { name: 'sodium hypochlorite', cas: '7681-52-9' };
const hydrochloric = { name: 'hydrochloric acid', cas: '7647-01-0' };
const skin = (category: string) => [{ class: 'Skin Corr.', result: `Skin Corr. ${category}` }];
const oil = (flash: string): Material => ({
  flash,
  boil: 200,
  formula: [{ name: 'a distillate', percent: 100, hazards: ['Asp. Tox. 1'] }],
});

describe('letters of interpretation', () => {
  it('98-0413: hypochlorite solution of 12.5 % is UN1791, PG III, and a hazardous substance in a tank', async () => {
    const bleach: Material = {
      flash: 'none',
      boil: 100,
      density: 1.2,
      formula: [{ ...hypochlorite, percent: 12.5 }],
      tests: skin('1C'),
    };
    const tank = await ship({ ...bleach, contents: '4000 L', count: 1 });
    expect(described(tank)).toBe('UN1791, Hypochlorite solutions, 8, III');
    expect(tank.because.map(({ id }) => id)).toContain('hazardous-substance');
    const pail = await ship({ ...bleach, contents: '5 gal', count: 1 });
    expect(pail.because.map(({ id }) => id)).toContain('reportable-quantity-below');
  });

  it('06-0005: muriatic acid is UN1789, Hydrochloric acid, PG III, with the exception of 173.154', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 100,
      formula: [{ ...hydrochloric, percent: 15 }],
      tests: skin('1C'),
    });
    expect(described(answer)).toBe('UN1789, Hydrochloric acid, 8, III');
    expect(answer.limitedQuantity?.cite).toContain('173.154(b)');
  });

  it('10-0078: hydrochloric acid with up to 2 % phosphoric acid stays UN1789', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 100,
      formula: [
        { ...hydrochloric, percent: 30 },
        { name: 'phosphoric acid', cas: '7664-38-2', percent: 2 },
      ],
      tests: skin('1B'),
    });
    expect(described(answer)).toBe('UN1789, Hydrochloric acid, 8, II');
  });

  it('09-0204: sodium hydroxide of 30 % in bottles of 40 fl oz is over the limit of 1 L', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 100,
      formula: [{ name: 'sodium hydroxide', cas: '1310-73-2', percent: 30 }],
      tests: skin('1B'),
      contents: '40 fl oz',
      count: 12,
    });
    expect(described(answer)).toBe('UN1824, Sodium hydroxide solution, 8, II');
    expect(answer.limitedQuantity).toMatchObject({ allowed: false, innerLimit: '1 L' });
  });

  it.each([
    ['1 qt', true],
    ['1 gal', false],
  ])('08-0054: Class 3, PG II in %s cans: %s', async (contents, allowed) => {
    const answer = await ship({
      flash: '10 C',
      boil: 80,
      contents: contents === '1 qt' ? '32 fl oz' : contents,
      count: 4,
      formula: [{ name: 'toluene', cas: '108-88-3', percent: 100 }],
    });
    expect(answer.packingGroup).toBe('II');
    expect(answer.limitedQuantity?.allowed).toBe(allowed);
  });

  it('15-0130: flash point 150 F is a combustible liquid; 08-0066, 16-0140, 23-0018: not subject in non-bulk', async () => {
    const drum = await ship({ ...oil('150 F'), contents: '55 gal', count: 1 });
    expect(drum.answer).toBe('not-regulated');
    expect(drum.because.map(({ id }) => id)).toContain('combustible-non-bulk');
    const bulk = await ship({ ...oil('150 F'), contents: '275 gal', count: 1 });
    expect(bulk.answer).not.toBe('not-regulated');
    expect(bulk.class).toBe('Comb liq');
  });

  it('16-0140: from 100 F a flammable liquid may be reclassed, and is then not subject in non-bulk', async () => {
    const { alternatives } = await ship(oil('100.4 F'));
    expect(alternatives.map(({ answer, when }) => [when[0]!.id, answer])).toContainEqual([
      'reclassed-combustible',
      'not-regulated',
    ]);
  });

  it('13-0212, 04-0074: a combustible liquid that is a marine pollutant is not subject in non-bulk by highway', async () => {
    const stabilizer = await ship({
      flash: '68 C',
      boil: 200,
      formula: [
        { name: 'dipentene', cas: '138-86-3', percent: 20 },
        { name: 'a distillate', percent: 80, hazards: ['Asp. Tox. 1'] },
      ],
    });
    expect(stabilizer.marinePollutant).toBe(true);
    expect(stabilizer.answer).toBe('not-regulated');
    expect(stabilizer.alternatives.map(({ when }) => when[0]!.id)).toContain('by-vessel');
  });

  it('19-0065: a marine pollutant of no other class is excepted in non-bulk, UN3082 by vessel', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 200,
      formula: [
        { name: 'nonylphenol', cas: '84852-15-3', percent: 12, hazards: ['Aquatic Chronic 1'] },
        { name: 'a carrier', percent: 88, hazards: [] },
      ],
    });
    expect(answer.answer).toBe('not-regulated');
    expect(answer.alternatives.map(described)).toEqual([
      'UN3082, Environmentally hazardous substance, liquid, n.o.s. (nonylphenol), 9, III',
    ]);
  });

  it('06-0191: 10 % isopropanol in water with a surfactant, flash point 104 F, is not subject', async () => {
    const answer = await ship({
      flash: '104 F',
      boil: 95,
      density: 0.98,
      formula: [
        { ...isopropanol, percent: 10 },
        { ...surfactant, percent: 12 },
      ],
    });
    expect(answer.answer).toBe('not-regulated');
    expect(answer.because.map(({ id }) => id)).toContain('aqueous-alcohol');
  });

  it('16-0079: not with another hazardous material in it', async () => {
    const answer = await ship({
      flash: '104 F',
      boil: 95,
      density: 0.98,
      formula: [
        { ...isopropanol, percent: 10 },
        { name: 'a corrosive salt', percent: 1, hazards: ['Skin Corr. 1B'] },
      ],
    });
    expect(answer.because.map(({ id }) => id)).not.toContain('aqueous-alcohol');
    expect(answer.answer).not.toBe('not-regulated');
  });

  it('12-0014: ethanol and methanol in water, flash point 24 C, is packing group III', async () => {
    const answer = await ship({
      flash: '24 C',
      boil: 80,
      formula: [
        { name: 'ethanol', cas: '64-17-5', percent: 50 },
        { name: 'methanol', cas: '67-56-1', percent: 2 },
      ],
    });
    expect([answer.class, answer.packingGroup]).toEqual(['3', 'III']);
    expect(answer.limitedQuantity?.innerLimit).toBe('5 L');
  });

  it('15-0169: sulfuric acid of 98 % with an inhibitor is UN1830, PG II', async () => {
    const answer = await ship({
      flash: 'none',
      boil: 300,
      formula: [
        { name: 'sulphuric acid', cas: '7664-93-9', percent: 98 },
        { name: 'an inhibitor', percent: 1, hazards: [] },
      ],
    });
    expect(described(answer)).toBe('UN1830, Sulfuric acid, 8, II');
  });

  it('15-0081: a solid needs no test on metals', async () => {
    const answer = await ship({
      form: 'solid',
      formula: [
        { name: 'citric acid', cas: '77-92-9', percent: 60 },
        { name: 'a filler', percent: 40, hazards: [] },
      ],
    });
    expect(answer.missing.map(({ id }) => id)).not.toContain('metal-corrosion-test');
  });

  it('08-0291: 3 II, 8 II and 6.1 III together are UN3286', async () => {
    const answer = await ship({
      flash: '10 C',
      boil: 100,
      formula: [
        {
          name: 'a silazane',
          percent: 100,
          hazards: ['Flam. Liq. 2', 'Skin Corr. 1B', 'Acute Tox. 3 (oral)'],
          ate: { oral: '250 mg/kg' },
        },
      ],
      tests: skin('1B'),
    });
    expect(described(answer)).toBe(
      'UN3286, Flammable liquid, toxic, corrosive, n.o.s. (a silazane), 3 (6.1, 8), II',
    );
  });

  it('22-0041, 05-0282: 8 II with 3 III and 6.1 III: corrosive first, both others described', async () => {
    const answer = await ship({
      flash: '40 C',
      boil: 150,
      formula: [
        {
          name: 'an amine',
          percent: 100,
          hazards: ['Flam. Liq. 3', 'Skin Corr. 1B', 'Acute Tox. 3 (oral)'],
          ate: { oral: '250 mg/kg' },
        },
      ],
      tests: skin('1B'),
    });
    expect([answer.class, [...answer.subsidiary].sort(), answer.packingGroup]).toEqual([
      '8',
      ['3', '6.1'],
      'II',
    ]);
  });
});
