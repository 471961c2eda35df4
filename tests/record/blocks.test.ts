import { describe, expect, it } from 'vitest';
import { noFiles } from '../../src/record/files.ts';
import { parseRecordText, parseRecordValue } from '../../src/record/load.ts';
import type { ProductRecord } from '../../src/record/product-record.ts';
import { changed, load, told } from './_example.ts';

type Value = Readonly<Record<string, unknown>>;
const bare = {
  labelwright: 'product/1',
  name: 'A',
  code: 'A',
  form: 'liquid',
  formula: [{ name: 'water', percent: 100 }],
};
const read = (more: Value) => parseRecordValue({ ...bare, ...more }, noFiles);
function recordOf(more: Value): ProductRecord {
  const outcome = read(more);
  if (!outcome.ok) throw new Error(told(outcome).join('\n'));
  return outcome.value;
}
const refused = (more: Value) => read(more).diagnostics.map(({ path, message }) => `${path}: ${message}`);

describe('bounds', () => {
  // The worse end: 29 CFR 1910.1200 App. B.6 and A.10.2 list by an upper limit of flash point and viscosity.
  it('are carried with the worse end as the value', () => {
    const { properties } = recordOf({
      properties: {
        'flash-point': '> 200 F (closed cup)',
        'kinematic-viscosity-40C': '< 20 mm2/s',
        'initial-boiling-point': { value: '≥ 35 C', method: 'ASTM D86', 'measured-on': 'revision 2' },
      },
    });
    const { flashPoint, kinematicViscosity40C: viscosity, initialBoilingPoint: boiling } = properties;
    expect(flashPoint?.value).toMatchObject({ kind: 'temperature', cup: 'closed' });
    expect(flashPoint?.bound?.sign).toBe('>');
    expect(flashPoint?.bound?.limit.value).toBeCloseTo(93.333, 3);
    expect(flashPoint?.written).toBe('> 200 F (closed cup)');
    expect([viscosity?.value.value, viscosity?.bound?.limit.value]).toEqual([0, 20]);
    expect([boiling?.value.value, boiling?.bound?.sign, boiling?.measuredOn]).toEqual([
      35,
      '>=',
      'revision 2',
    ]);
    expect(recordOf({ properties: { 'flash-point': '46 C' } }).properties.flashPoint?.bound).toBeUndefined();
  });

  it('of a pH are refused', () => {
    expect(refused({ properties: { pH: '> 12' } })).toHaveLength(1);
  });
});

describe('blocks of the record', () => {
  it('sold-to', () => {
    expect(recordOf({ 'sold-to': { users: 'consumers', markets: ['us', 'eu'] } }).soldTo).toEqual({
      users: ['consumers'],
      markets: ['us', 'eu'],
    });
    expect(refused({ 'sold-to': { users: 'people', markets: 'us' } })).toEqual([
      'sold-to.users: `users` cannot be `people`',
    ]);
    expect(refused({ 'sold-to': { users: [], markets: 'us' } })).toHaveLength(1);
  });

  it('statements', () => {
    const { statements } = recordOf({
      statements: {
        words: { 'p370 + P378': 'dry sand', P230: { material: ['water'] } },
        conditions: { sprayed: true, volatile: false },
        choose: { P260: ['mist', 'spray'] },
        keep: ['P102'],
        omit: [{ code: 'P264', reason: 'closed system' }],
      },
    });
    expect(statements?.words).toEqual({ 'P370+P378': { '*': ['dry sand'] }, P230: { material: ['water'] } });
    expect(statements?.conditions).toMatchObject({ sprayed: true, volatile: false, inhalable: null });
    expect(statements?.choose).toEqual({ P260: ['mist', 'spray'] });
    expect(statements?.omit).toMatchObject([{ code: 'P264', reason: 'closed system' }]);
    expect(refused({ statements: { words: { P37: 'x' } } })).toEqual([
      'statements.words.P37: `P37` is not a statement code',
    ]);
    expect(refused({ statements: { omit: [{ code: 'P264' }] } })).toHaveLength(1);
  });

  it('sds: texts, what was searched, and ingredients', () => {
    const record = recordOf({
      sds: {
        spill: 'Take up with sand.',
        storage: { searched: 'supplier sheets, 2026-03-02' },
        ppe: { hands: 'nitrile', eyes: { searched: 'nothing found' } },
        ingredients: [{ of: '141-43-5', limits: [{ list: 'TLV-TWA', value: '3 ppm', date: '2026-01-01' }] }],
      },
    });
    expect(record.sheet).toEqual({ spill: 'Take up with sand.', 'ppe.hands': 'nitrile' });
    expect(record.sheetSearched).toEqual({
      storage: 'supplier sheets, 2026-03-02',
      'ppe.eyes': 'nothing found',
    });
    expect(record.sheetIngredients).toMatchObject([
      { of: '141-43-5', limits: [{ value: '3 ppm' }], list: false },
    ]);
  });

  it('trade-secret on a line', () => {
    const claimed = (claim: unknown) => {
      const [line] = recordOf({ formula: [{ name: 'x', percent: 100, 'trade-secret': claim }] }).formula;
      return line?.kind === 'substance' ? line.tradeSecret : null;
    };
    expect(claimed('percent')).toEqual({
      identity: false,
      percent: true,
      shownAs: null,
      alternativeName: null,
    });
    expect(claimed(['identity', 'percent'])).toEqual({
      identity: true,
      percent: true,
      shownAs: null,
      alternativeName: null,
    });
    expect(claimed({ claim: ['identity'], 'shown-as': 'an alcohol' })).toEqual({
      identity: true,
      percent: false,
      shownAs: 'an alcohol',
      alternativeName: null,
    });
    expect(refused({ formula: [{ name: 'x', percent: 100, 'trade-secret': 'all' }] })).toHaveLength(1);
  });

  // Molar masses from the standard atomic weights (IUPAC): citric acid C6H8O7, sodium hydroxide, trisodium citrate.
  const citrate = {
    consumes: [
      { of: '77-92-9', moles: 1, 'molar-mass': '192.12 g/mol' },
      { of: 'sodium hydroxide', moles: 3, 'molar-mass': '40.00 g/mol' },
    ],
    forms: [
      { name: 'trisodium citrate', cas: '68-04-2', moles: 1, 'molar-mass': '258.07 g/mol' },
      { name: 'water', moles: 3, 'molar-mass': '18.015 g/mol' },
    ],
  };

  it('reacts: what forms weighs as much as what reacts', () => {
    const [reaction] = recordOf({ reacts: [citrate] }).reacts;
    expect(reaction?.consumes.map(({ of }) => of)).toEqual(['77-92-9', 'sodium hydroxide']);
    expect(reaction?.forms[0]?.molarMass.value).toBe(258.07);
    const dry = { ...citrate, forms: citrate.forms.slice(0, 1) };
    expect(refused({ reacts: [dry] })).toEqual([
      'reacts[0].forms: what forms weighs 258.07 g, and what reacts 312.12 g',
    ]);
  });

  it('dilution on a pack: one or several', () => {
    const dilutions = (dilution: unknown) =>
      recordOf({ packs: [{ id: 'a', contents: '1 L', dilution }] }).packs[0]?.dilutions?.map(
        each => `${each.product.value}:${each.diluent.value} ${each.with} ${each.use}`,
      );
    expect(dilutions({ with: 'water', ratio: '1:16' })).toEqual(['1:16 water null']);
    expect(dilutions([{ ratio: '1 to 32', use: 'light soil' }, { ratio: '1:4' }])).toEqual([
      '1:32 water light soil',
      '1:4 water null',
    ]);
    expect(refused({ packs: [{ id: 'a', contents: '1 L', dilution: { ratio: '16' } }] })).toHaveLength(1);
  });

  it('a ratio without quotes stays a ratio', () => {
    const text = JSON.stringify(bare).slice(0, -1);
    const outcome = parseRecordText(
      `${text}, packs: [{id: a, contents: 1 L, dilution: {ratio: 1:16}}]}`,
      'r.yaml',
      noFiles,
    );
    expect(outcome.ok && outcome.value.packs[0]?.dilutions?.[0]?.written).toBe('1:16');
  });

  it('maker.brand and copy.artwork', () => {
    const record = recordOf({
      maker: {
        name: 'K',
        address: 'a',
        telephone: '1',
        emergency: { telephone: '1', hours: 'always' },
        brand: { color: 'cmyk(80, 20, 60, 10)', logo: 'art/logo.svg' },
      },
      copy: {
        artwork: {
          file: 'art/front.pdf',
          areas: [{ holds: 'regulated', left: '4 mm', bottom: 0, width: '2 in', height: '80 mm' }],
        },
      },
    });
    expect(record.maker?.brand).toMatchObject({
      color: { kind: 'cmyk', parts: [80, 20, 60, 10] },
      logo: 'art/logo.svg',
    });
    expect(record.copy.artwork?.areas).toEqual([
      { holds: 'regulated', left: 4, bottom: 0, width: 50.8, height: 80, ground: 'white' },
    ]);
    expect(refused({ copy: { artwork: { file: 'a', areas: [] } } })).toHaveLength(1);
  });

  it('review', () => {
    const review = {
      by: 'A. Reviewer',
      date: '2026-11-25',
      of: ['classification'],
      fingerprint: 'sha256:00',
    };
    expect(recordOf({ review: [review] }).reviews).toMatchObject([review]);
    expect(refused({ review: [{ ...review, date: '2026-02-30' }] })).toHaveLength(1);
  });

  it('container, roll and case', () => {
    const [pack] = recordOf({
      packs: [
        {
          id: 'a',
          contents: '1 L',
          container: {
            shape: 'rectangular',
            width: '90 mm',
            depth: '60 mm',
            capacity: '1.05 L',
            'tactile-warning': true,
          },
          case: { count: 12, length: '400 mm', 'per-layer': 8, layers: 4 },
        },
      ],
    }).packs;
    expect(pack?.container).toMatchObject({ width: 90, depth: 60, tactileWarning: true, height: null });
    expect(pack?.container?.capacityMillilitres?.value).toBe(1050);
    expect(pack?.case).toMatchObject({ count: 12, length: 400, perLayer: 8, layers: 4 });
  });
});

it('lengths have bounds', () => {
  const label = (width: string) =>
    refused({ packs: [{ id: 'a', contents: '1 L', label: { width, height: '1 m' } }] });
  expect(label('1e30 mm')).toEqual([expect.stringContaining('`1e30 mm` is not the side of a label')]);
  expect(label('1 m')).toEqual([]);
});

describe('a raw material known by its hazards alone', () => {
  const drum = (more: string) =>
    load(changed(), {
      'drums/hypochlorite-12.yaml': `labelwright: raw-material/1\nname: acid blend\n${more}`,
    });

  it('is one constituent of its name', () => {
    const outcome = drum(
      'density: 1.1 g/mL\nsupplier: S\nsheet: {revision: 3, date: 2026-02-11}\nstrength: 80 %\nhazards: [Eye Dam. 1]\nsource: SDS revision 3\n',
    );
    if (!outcome.ok) throw new Error(told(outcome).join('\n'));
    const [line] = outcome.value.formula;
    if (line?.kind !== 'raw-material') throw new Error('no raw material');
    expect(line.material).toMatchObject({
      sheet: { revision: '3', date: '2026-02-11', file: null },
      strength: '80 %',
    });
    expect(line.material.formula).toMatchObject([
      { name: 'acid blend', undisclosed: true, given: { hazards: [{ code: 'Eye Dam. 1' }] } },
    ]);
  });

  it('is told what is missing, and no data are proposed', () => {
    const [first] = drum('density: 1.1 g/mL\n').diagnostics;
    expect(first?.message).toMatch(/neither a composition/);
    expect(`${first?.hint}`).not.toMatch(/water|balance/);
  });

  it('cannot have both', () => {
    expect(drum('formula: [{name: water, percent: 100}]\nhazards: [Eye Dam. 1]\nsource: s\n').ok).toBe(false);
  });

  it('is asked for a source of its hazards', () => {
    const outcome = drum('density: 1 g/mL\nhazards: [Eye Dam. 1]\n');
    expect(outcome.ok).toBe(true);
    expect(outcome.diagnostics).toMatchObject([{ code: 'source-missing', severity: 'warning' }]);
  });
});

describe('names that hold a strength', () => {
  it.each([
    'alcohol 99 %',
    'hydrochloric acid 20 Baume',
    'muriatic acid',
    'sodium hydroxide solution',
    'caustic, 50%',
  ])('%s is asked about', name => {
    const { diagnostics } = read({ formula: [{ name, cas: '7647-01-0', percent: 100 }] });
    expect(diagnostics).toMatchObject([{ code: 'strength-in-name', severity: 'warning' }]);
  });
  it('without a CAS number too, unless its hazards are given', () => {
    const line = { name: 'alcohol 99 %', percent: 100 };
    expect(read({ formula: [line] }).diagnostics).toMatchObject([{ code: 'strength-in-name' }]);
    const given = { ...line, hazards: ['Flam. Liq. 2'], source: 'supplier sheet' };
    expect(read({ formula: [given] }).diagnostics).toEqual([]);
  });
  it.each(['2-butoxyethanol', 'alcohols, C9-11, ethoxylated', 'sodium carbonate'])('%s is not', name => {
    expect(read({ formula: [{ name, cas: '7647-01-0', percent: 100 }] }).diagnostics).toEqual([]);
  });
});
