import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { nodeFiles } from '../../src/cli/files.ts';
import { loadRecord, parseRecordText, parseRecordValue } from '../../src/record/load.ts';
import type { ProductRecord } from '../../src/record/product-record.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { changed, env, files, load, product, told } from './_example.ts';

const good = (outcome: Outcome<ProductRecord>): ProductRecord => {
  if (!outcome.ok) throw new Error(outcome.diagnostics.map(({ message }) => message).join('\n'));
  return outcome.value;
};

// Places and excerpts differ between a file and a value; all else must not.
const withoutPlaces = (record: ProductRecord) =>
  JSON.parse(
    JSON.stringify(record, (key, value) =>
      ['at', 'excerpt', 'file', 'raw'].includes(key)
        ? undefined
        : typeof value?.exact === 'object'
          ? value.exact.toFraction()
          : value,
    ),
  );

describe('loadRecord', () => {
  it('reads the example from disk, with its maker and drum', () => {
    const record = good(loadRecord('tests/fixtures/good/patio-cleaner.yaml', nodeFiles));
    expect(record).toMatchObject({
      name: 'Kerbstone Patio Cleaner',
      code: 'KP-946',
      form: 'liquid',
      advisedAgainst: ['Do not use on aluminum'],
      appearance: { color: 'pale yellow', odor: 'chlorine', physicalState: null },
      maker: {
        name: 'Kerbstone Products LLC',
        telephone: '+1 555 0100',
        address: ['12 Quarry Lane', 'Springfield, OH 45500'],
      },
      properties: {
        pH: { written: '12.6' },
        density: { value: { value: 1.09 }, written: '1.09 g/mL' },
        flashPoint: { value: { kind: 'none' } },
        initialBoilingPoint: { value: { value: 100 } },
        kinematicViscosity40C: { value: { value: 1.1 } },
      },
      batch: { kind: 'mass', written: '117 kg' },
      copy: { tagline: 'Lifts grime and traffic film from stone' },
    });
    expect(record.formula).toHaveLength(6);
    expect(record.formula[0]).toMatchObject({
      kind: 'raw-material',
      material: {
        name: 'sodium hypochlorite solution 12 %',
        file: 'tests/fixtures/good/drums/hypochlorite-12.yaml',
      },
    });
    expect(record.formula[2]).toMatchObject({
      kind: 'substance',
      given: {
        hazards: [{ code: 'Flam. Liq. 3' }, {}, {}, {}, {}, { code: 'Aquatic Chronic 3' }],
        ate: { oral: { value: 4400 } },
      },
    });
    expect(record.formula[4]).toMatchObject({ given: { additive: false } });
    expect(record.packs[0]).toMatchObject({
      contents: { unit: 'mL', written: '946 mL' },
      gtin: '0614141000418',
      container: { shape: 'cylinder', diameter: 88, labelPanelHeight: 150, childResistant: false },
      label: { width: 130, height: 120, cornerRadius: 3 },
      roll: { core: 76, maxDiameter: 250, gap: 3, linerAndFace: 0.15, unwind: '4' },
      case: { count: 20, gtin: '10614141000415', tareKilograms: { value: 0.9 } },
      lotWindow: null,
    });
  });

  it('keeps the digits of codes, GTINs and telephone numbers that look like numbers', () => {
    const record = good(load(changed(['code: KP-946', 'code: 00946'], ['"0614141000418"', '0614141000418'])));
    expect(record.code).toBe('00946');
    expect(record.packs[0]!.gtin).toBe('0614141000418');
    expect(record.raw).toMatchObject({ code: '00946' });
  });

  it('reads the same record from YAML, from JSON text and from a parsed value', () => {
    const value = parse(product);
    const fromYaml = withoutPlaces(good(load(product)));
    expect(withoutPlaces(good(load(JSON.stringify(value))))).toEqual(fromYaml);
    expect(
      withoutPlaces(good(parseRecordText(JSON.stringify(value, null, 2), 'cleaner.yaml', env()))),
    ).toEqual(fromYaml);
    expect(withoutPlaces(good(parseRecordValue(value, env(), 'cleaner.yaml')))).toEqual(fromYaml);
  });

  it('takes maker and raw material written out in place of files', () => {
    const value = parse(product);
    value.maker = parse(files['maker.yaml']!);
    value.formula[0].use = parse(files['drums/hypochlorite-12.yaml']!);
    const inline = good(parseRecordValue(value, env(), 'cleaner.yaml'));
    const named = good(load(product));
    expect(withoutPlaces(inline).maker).toEqual(withoutPlaces(named).maker);
    expect(withoutPlaces(inline).formula[0].material.formula[1].given).toEqual(
      withoutPlaces(named).formula[0].material.formula[1].given,
    );
  });

  it('reads measured properties with method and source, and those of the data sheet alone', () => {
    const record = good(
      load(
        changed(
          [
            'flash-point: none',
            'flash-point: {value: 115 F (closed cup), method: ASTM D56, source: own laboratory}',
          ],
          ['pH: 12.6', 'pH: 12.6\n  vapor-pressure: 2.3 kPa at 20 C'],
        ),
      ),
    );
    expect(record.properties.flashPoint).toMatchObject({
      value: { kind: 'temperature', cup: 'closed' },
      written: '115 F (closed cup)',
      method: 'ASTM D56',
      source: 'own laboratory',
    });
    const { flashPoint } = record.properties;
    expect(flashPoint?.value.kind === 'temperature' && flashPoint.value.celsius.exact.toFraction()).toBe(
      '415/9',
    );
    expect(record.properties.other['vapor-pressure']).toMatchObject({
      value: '2.3 kPa at 20 C',
      method: null,
    });
  });

  it('reads evidence, choices, data-sheet texts, revision and the lot window', () => {
    const record = good(
      load(
        changed(
          [
            'evidence: []',
            `evidence:
  - {class: Met. Corr., result: not classified, kind: test, method: UN Manual 37.4, source: report 26-114}
  - {class: Acute Tox., result: Acute Tox. 4 (oral), kind: bridging, principle: dilution, method: OECD 423, source: report 26-115}`,
          ],
          ['choices: []', 'choices: [{reading: us-specific-limits, take: use, reason: supplier data}]'],
          [
            'copy:',
            'sds: {spill: Absorb., ppe: {hands: Nitrile gloves.}}\nrevision: 3\nrevised: 2026-11-25\ncopy:',
          ],
          ['    case:', '    lot-window: {width: 30 mm, height: 8 mm}\n    case:'],
        ),
      ),
    );
    expect(record.evidence).toMatchObject([
      { hazardClass: 'Met. Corr.', hazard: null, route: null, principle: null },
      { hazardClass: 'Acute Tox.', hazard: { code: 'Acute Tox. 4' }, route: 'oral', principle: 'dilution' },
    ]);
    expect(record.choices).toMatchObject([{ reading: 'us-specific-limits', take: 'use' }]);
    expect(record.sheet).toEqual({ spill: 'Absorb.', 'ppe.hands': 'Nitrile gloves.' });
    expect(record).toMatchObject({ revision: '3', revised: '2026-11-25' });
    expect(record.packs[0]!.lotWindow).toEqual({ width: 30, height: 8 });
  });

  it('drops a byte order mark and takes Windows line ends', () => {
    const marked = new TextEncoder().encode(`\ufeff${product.replaceAll('\n', '\r\n')}`);
    expect(withoutPlaces(good(load(marked)))).toEqual(withoutPlaces(good(load(product))));
  });
});

describe('hazards on the way in', () => {
  const given = (...hazards: string[]) =>
    load(
      changed([
        'hazards: [Flam. Liq. 3, Skin Irrit. 2',
        `hazards: [${hazards.map(each => JSON.stringify(each)).join(', ')}, Skin Irrit. 2`,
      ]),
    );
  const line = (outcome: ReturnType<typeof given>) => {
    if (!outcome.ok) throw new Error(told(outcome).join('\n'));
    const found = outcome.value.formula[2];
    if (found?.kind !== 'substance') throw new Error('not the line');
    return found.given;
  };

  it('are one notation inside, and say what was read another way', () => {
    const { hazards, readAs } = line(
      given('Serious eye damage (Category 1)', 'Acute toxicity (oral, dermal), Category 4'),
    );
    expect(hazards?.map(({ code, route }) => [code, route]).slice(0, 3)).toEqual([
      ['Eye Dam. 1', null],
      ['Acute Tox. 4', 'oral'],
      ['Acute Tox. 4', 'dermal'],
    ]);
    expect(readAs).toEqual([
      { written: 'Serious eye damage (Category 1)', read: ['Eye Dam. 1'] },
      {
        written: 'Acute toxicity (oral, dermal), Category 4',
        read: ['Acute Tox. 4 (oral)', 'Acute Tox. 4 (dermal)'],
      },
    ]);
    expect(line(given('Eye Dam. 1')).readAs).toBeUndefined();
  });

  // What no rule of the law takes up as written: CLP Annex VI Table 1.1 has no such codes but for entries to be completed.
  it.each([
    ['Carc. 1', /1A or 1B/],
    ['Muta. 1', /1A or 1B/],
    ['Repr. 1', /1A or 1B/],
    ['Expl. 1', /Expl\. 1\.1/],
    ['STOT SE 3', /respiratory irritation/],
    ['Acute Tox. 4', /\(oral\)/],
    ['H314', /Skin Corr\. 1A/],
    ['not classified', /hazards: \[\]/],
  ])('%s is a question', (hazard, answers) => {
    const outcome = given(hazard);
    expect(outcome.ok).toBe(false);
    expect(told(outcome)[0]).toMatch(answers);
  });
});
