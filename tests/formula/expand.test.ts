import { describe, expect, it } from 'vitest';
import { expand, formulaOf, messages, percents } from './_formula.ts';

const water = { name: 'water', amount: 'balance' };
const lye = { name: 'sodium hydroxide', cas: '1310-73-2' };

describe('shares', () => {
  it('takes percentages as they are, exactly, the balance as the rest', () => {
    expect(percents(formulaOf([{ ...lye, percent: 0.1 }, { name: 'a', percent: 0.2 }, water]))).toEqual({
      water: '997/10',
      a: '1/5',
      'sodium hydroxide': '1/10',
    });
  });

  it('divides weights by their total, whatever their units', () => {
    expect(
      percents(
        formulaOf([
          { name: 'a', amount: '1 kg' },
          { name: 'b', amount: '500 g' },
          { name: 'c', amount: '500000 mg' },
        ]),
      ),
    ).toEqual({
      a: '50',
      b: '25',
      c: '25',
    });
    // 16 oz make a pound.
    expect(
      percents(
        formulaOf([
          { name: 'a', amount: '1 lb' },
          { name: 'b', amount: '16 oz' },
        ]),
      ),
    ).toEqual({ a: '50', b: '50' });
  });

  it('weighs volumes by their density', () => {
    // 1 US gallon of density 1.25 g/mL beside as many grams: 3785.411784 x 1.25 = 4731.76473 g.
    expect(
      percents(
        formulaOf([
          { name: 'a', amount: '1 gal', density: '1.25 kg/L' },
          { name: 'b', amount: '4731.76473 g' },
        ]),
      ),
    ).toEqual({ a: '50', b: '50' });
    // 128 fl oz make a gallon.
    expect(
      percents(
        formulaOf([
          { name: 'a', amount: '128 fl oz', density: '1 g/mL' },
          { name: 'b', amount: '1 gal', density: '1 g/mL' },
        ]),
      ),
    ).toEqual({ a: '50', b: '50' });
  });

  it('knows the density of water alone', () => {
    const { constituents } = formulaOf([
      { name: 'water', amount: '1 L' },
      { name: 'a', amount: '998.2 g' },
    ]);
    expect(constituents[0]!.high.value).toBeCloseTo(50, 6);
    expect(messages(expand([{ name: 'acetone', amount: '1 L' }, water], { batch: '10 kg' }))).toEqual([
      '`1 L` of acetone is a volume, and its density is not given -> add `density: … g/mL` to the line, or give the amount as a weight',
    ]);
  });

  it('lets weights share what percentages leave', () => {
    expect(
      percents(
        formulaOf([
          { name: 'a', percent: 10 },
          { name: 'b', amount: '2 kg' },
          { name: 'c', amount: '1 kg' },
        ]),
      ),
    ).toEqual({ b: '60', c: '30', a: '10' });
    expect(
      messages(
        expand([
          { name: 'a', percent: 100 },
          { name: 'b', amount: '2 kg' },
        ]),
      )[0],
    ).toMatch(/nothing is left for the weighed lines/);
  });

  it('reads weights beside percentages and a balance per 100 of their unit, and says so', () => {
    const lines = [{ name: 'a', amount: '40 kg' }, { ...lye, percent: 1.5 }, water];
    expect(percents(formulaOf(lines))).toEqual({ water: '117/2', a: '40', 'sodium hydroxide': '3/2' });
    expect(expand(lines).diagnostics.map(({ code, severity }) => [code, severity])).toEqual([
      ['batch-size-assumed', 'warning'],
    ]);
    const mixed = [
      { name: 'a', amount: '40 kg' },
      { name: 'b', amount: '2 lb' },
      { ...lye, percent: 1.5 },
      water,
    ];
    expect(messages(expand(mixed))[0]).toMatch(/size of the whole batch is not known/);
  });

  it('needs the batch size where weights stand beside a balance', () => {
    const lines = [{ name: 'a', amount: '40 kg' }, { ...lye, percent: 1.5 }, water];
    expect(percents(formulaOf(lines, { batch: '400 kg' }))).toEqual({
      water: '177/2',
      a: '10',
      'sodium hydroxide': '3/2',
    });
    expect(percents(formulaOf(lines, { batch: '400 L', properties: { density: '1 g/mL' } }))).toEqual({
      water: '177/2',
      a: '10',
      'sodium hydroxide': '3/2',
    });
    expect(messages(expand([{ name: 'a', amount: '40 kg' }, water]))[0]).toMatch(
      /`40 kg` cannot be turned into percent, because the size of the whole batch is not known.*`batch: 945 kg`/,
    );
    expect(messages(expand(lines, { batch: '400 L' }))[0]).toMatch(/density of the whole is not given/);
    expect(messages(expand([{ name: 'a', amount: '40 kg' }, water], { batch: '30 kg' }))[0]).toMatch(
      /133.3333 %: nothing is left.*take 33.3333 % out; `40 kg` is 133.3333 %/,
    );
    expect(messages(expand([{ name: 'a', amount: '40 kg' }], { batch: '50 kg' }))[0]).toMatch(
      /sum to 80 %: 20 % is missing/,
    );
  });

  it('counts by volume where the form is gas', () => {
    expect(
      percents(
        formulaOf(
          [
            { name: 'propane', amount: '3 L' },
            { name: 'butane', amount: '1 L' },
          ],
          { form: 'gas' },
        ),
      ),
    ).toEqual({ propane: '75', butane: '25' });
    expect(messages(expand([{ name: 'propane', amount: '3 kg' }], { form: 'gas' }))[0]).toMatch(
      /is a weight, but the percentages of a gas are by volume/,
    );
  });

  it('accounts for 100 % within 0.01', () => {
    expect(
      expand([
        { name: 'a', percent: 60 },
        { name: 'b', percent: 40.01 },
      ]).ok,
    ).toBe(true);
    expect(
      expand([
        { name: 'a', percent: 60 },
        { name: 'b', percent: 39.99 },
      ]).ok,
    ).toBe(true);
    expect(
      messages(
        expand([
          { name: 'a', percent: 60 },
          { name: 'b', percent: 40.0101 },
        ]),
      )[0],
    ).toMatch(/100.0101 %: 0.0101 % too much/);
    expect(
      messages(
        expand([
          { name: 'a', percent: 60 },
          { name: 'b', percent: 44 },
        ]),
      )[0],
    ).toMatch(/the lines sum to 104 %: 4 % too much/);
    expect(messages(expand([{ name: 'a', percent: 60 }]))[0]).toMatch(
      /sum to 60 %: 40 % is missing -> .*amount: balance/,
    );
    // Thirds, as they are written.
    expect(expand([33.33, 33.33, 33.34].map((percent, i) => ({ name: `s${i}`, percent }))).ok).toBe(true);
  });

  it('allows one balance', () => {
    expect(messages(expand([{ name: 'a', amount: 'balance' }, water]))[0]).toMatch(
      /a second balance line: water/,
    );
  });
});

describe('raw materials', () => {
  const drum = {
    name: 'bleach',
    formula: [
      { name: 'sodium hypochlorite', cas: '7681-52-9', percent: 12 },
      { ...lye, percent: 0.5 },
      water,
    ],
  };

  it('are expanded, and constituents that come in twice are one', () => {
    const formula = formulaOf([{ use: drum, percent: 40 }, { ...lye, percent: 1 }, water]);
    expect(percents(formula)).toEqual({
      water: '94',
      'sodium hypochlorite': '24/5',
      'sodium hydroxide': '6/5',
    });
    expect(formula.constituents.map(({ name, via, water }) => [name, via, water])).toEqual([
      ['water', ['bleach'], true],
      ['sodium hypochlorite', ['bleach'], false],
      ['sodium hydroxide', ['bleach'], false],
    ]);
  });

  it('nest to any depth', () => {
    const inner = { name: 'inner', formula: [{ name: 'a', percent: 50 }, water] };
    const outer = {
      name: 'outer',
      formula: [
        { use: inner, percent: 50 },
        { name: 'b', percent: 50 },
      ],
    };
    const formula = formulaOf([{ use: outer, percent: 20 }, water]);
    expect(percents(formula)).toEqual({ water: '85', b: '10', a: '5' });
    expect(formula.constituents.find(({ name }) => name === 'a')!.via).toEqual(['outer', 'inner']);
  });

  it('give their density and have batch sizes of their own', () => {
    const dense = {
      name: 'dense',
      density: '2 g/mL',
      batch: '10 kg',
      formula: [{ name: 'a', amount: '1 kg' }, water],
    };
    expect(
      percents(
        formulaOf([
          { use: dense, amount: '1 L' },
          { name: 'b', amount: '2 kg' },
        ]),
      ),
    ).toEqual({ b: '50', water: '45', a: '5' });
  });

  it('must sum to 100 % themselves', () => {
    const short = { name: 'short', formula: [{ name: 'a', percent: 50 }] };
    expect(messages(expand([{ use: short, percent: 100 }]))).toEqual([
      'short: the lines sum to 50 %: 50 % is missing -> correct a line, or give the line that takes the rest `amount: balance`',
    ]);
  });

  it('that use each other twice over many levels take no time to speak of', () => {
    const level = (i: number) =>
      `labelwright: raw-material/1\nname: d${i}\nformula:\n${[1, 2].map(() => `  - {use: d${i + 1}.yaml, percent: 50}`).join('\n')}\n`;
    const files: Record<string, string> = {
      'd60.yaml':
        'labelwright: raw-material/1\nname: last\nformula: [{name: a, percent: [10, 20]}, {name: water, amount: balance}]\n',
    };
    for (let i = 0; i < 60; i++) files[`d${i}.yaml`] = level(i);
    expect(percents(formulaOf([{ use: 'd0.yaml', percent: 100 }], {}, files))).toEqual({
      water: '80..90',
      a: '10..20',
    });
  });
});

describe('one constituent from two lines', () => {
  it('takes the data of the line that has them', () => {
    const { constituents } = formulaOf([
      { ...lye, percent: 1 },
      { ...lye, percent: 2, hazards: ['Skin Corr. 1A'], source: 'sheet' },
      water,
    ]);
    expect(constituents[1]).toMatchObject({
      given: { hazards: [{ code: 'Skin Corr. 1A' }], source: 'sheet' },
    });
  });

  it('accepts the same data twice, in any order and from any source', () => {
    const twice = [
      { ...lye, percent: 1, hazards: ['Skin Corr. 1A', 'Met. Corr. 1'], source: 'a' },
      { ...lye, percent: 2, hazards: ['Met. Corr. 1', 'Skin Corr. 1A'], source: 'b' },
      water,
    ];
    expect(percents(formulaOf(twice))['sodium hydroxide']).toBe('3');
  });

  it('names both lines where they contradict each other', () => {
    const outcome = expand([
      { ...lye, percent: 1, hazards: ['Skin Corr. 1A'] },
      { ...lye, percent: 2, additive: false },
      water,
    ]);
    expect(messages(outcome)[0]).toMatch(
      /sodium hydroxide \(1310-73-2\) is described in two ways: at record, formula\[0\] and at record, formula\[1\]/,
    );
  });

  it('goes by CAS number, and by name only without one', () => {
    expect(
      percents(
        formulaOf([
          { name: 'A  dye', percent: 1 },
          { name: 'a dye', percent: 1 },
          { name: 'a dye', cas: '50-00-0', percent: 1 },
          water,
        ]),
      ),
    ).toEqual({ water: '97', 'A  dye': '2', 'a dye': '1' });
    expect(
      percents(
        formulaOf([{ name: 'caustic soda', cas: '1310-73-2', percent: 1 }, { ...lye, percent: 1 }, water]),
      ),
    ).toEqual({ water: '98', 'caustic soda': '2' });
  });

  it('knows water by its CAS number and its names', () => {
    for (const line of [
      { name: 'Deionized Water' },
      { name: 'purified water' },
      { name: 'process liquid', cas: '7732-18-5' },
    ]) {
      const { constituents } = formulaOf([
        { ...line, percent: 50 },
        { name: 'water', percent: 50 },
      ]);
      expect(constituents).toMatchObject([{ water: true, cas: '7732-18-5', low: { value: 100 } }]);
    }
    expect(formulaOf([{ name: 'water glass', percent: 100 }]).constituents[0]!.water).toBe(false);
  });

  it('leaves out what makes 0 %', () => {
    expect(percents(formulaOf([{ name: 'a', percent: 0 }, { name: 'b', percent: 100 }, water]))).toEqual({
      b: '100',
    });
  });
});

describe('a line that comes to nothing', () => {
  it('is told', () => {
    const outcome = expand([
      { name: 'sodium carbonate', cas: '497-19-8', percent: 0 },
      { name: 'water', amount: 'balance' },
    ]);
    expect(outcome.diagnostics).toMatchObject([{ code: 'nothing-of-it', severity: 'warning' }]);
    expect(outcome.ok).toBe(true);
  });
});
