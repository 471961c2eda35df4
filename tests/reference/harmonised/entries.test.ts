import { describe, expect, it } from 'vitest';
import { printLimit, printSupplementalLimit } from '../../../src/notation/parse-limit.ts';
import { printHazard } from '../../../src/notation/print-hazard.ts';
import type { PhysicalForm } from '../../../src/record/product-record.ts';
import { formatAct } from '../../../src/reference/harmonised/act.ts';
import { openHarmonised } from '../../../src/reference/harmonised/open-harmonised.ts';
import { bytes, table } from './_table.ts';

const today = '2026-11-25';
const show = (cas: string, asOf = today) => {
  const entry = table.byCas(cas, asOf);
  if (!entry) throw new Error(`no entry for ${cas}`);
  return { ...entry, hazards: entry.hazards.map(printHazard), limits: entry.limits.map(printLimit) };
};

// Regulation (EC) No 1272/2008, Annex VI Part 3 Table 3, under the index number named.
describe('entries of Table 3', () => {
  it('sodium hydroxide, 011-002-00-6', () => {
    expect(show('1310-73-2')).toMatchObject({
      index: '011-002-00-6',
      ec: '215-185-5',
      hazards: ['Skin Corr. 1A'],
      limits: [
        'Skin Corr. 1A; H314: C ≥ 5 %',
        'Skin Corr. 1B; H314: 2 % ≤ C < 5 %',
        'Skin Irrit. 2; H315: 0.5 % ≤ C < 2 %',
        'Eye Irrit. 2; H319: 0.5 % ≤ C < 2 %',
      ],
      minimum: false,
      act: '32008R1272',
    });
  });

  it('sulphuric acid, 016-020-00-8', () => {
    expect(show('7664-93-9')).toMatchObject({
      index: '016-020-00-8',
      hazards: ['Skin Corr. 1A'],
      limits: [
        'Skin Corr. 1A; H314: C ≥ 15 %',
        'Skin Irrit. 2; H315: 5 % ≤ C < 15 %',
        'Eye Irrit. 2; H319: 5 % ≤ C < 15 %',
      ],
      notes: ['B'],
    });
  });

  it('sodium hypochlorite, 017-011-00-1, as amended by Regulation (EU) 2018/1480', () => {
    const entry = show('7681-52-9');
    expect(entry).toMatchObject({
      index: '017-011-00-1',
      hazards: ['Skin Corr. 1B', 'Eye Dam. 1', 'Aquatic Acute 1', 'Aquatic Chronic 1'],
      mFactors: { acute: 10, chronic: 1 },
      singleMFactor: false,
      supplemental: ['EUH031'],
      act: '32018R1480',
    });
    expect(entry.supplementalLimits.map(printSupplementalLimit)).toEqual(['EUH031: C ≥ 5 %']);
  });

  it('hydrogen peroxide, 008-003-00-9', () => {
    expect(show('7722-84-1')).toMatchObject({
      index: '008-003-00-9',
      hazards: ['Ox. Liq. 1', 'Acute Tox. 4 * (inhalation)', 'Acute Tox. 4 * (oral)', 'Skin Corr. 1A'],
      limits: [
        'Ox. Liq. 1; H271: C ≥ 70 %',
        'Ox. Liq. 2; H272: 50 % ≤ C < 70 %',
        'Skin Corr. 1A; H314: C ≥ 70 %',
        'Skin Corr. 1B; H314: 50 % ≤ C < 70 %',
        'Skin Irrit. 2; H315: 35 % ≤ C < 50 %',
        'Eye Dam. 1; H318: 8 % ≤ C < 50 %',
        'Eye Irrit. 2; H319: 5 % ≤ C < 8 %',
        'STOT SE 3; H335: C ≥ 35 %',
      ],
      minimum: true,
      flags: [
        { mark: '****', on: 'limit Ox. Liq. 1' },
        { mark: '****', on: 'limit Ox. Liq. 2' },
        { mark: '*', on: 'limits' },
      ],
    });
  });

  it('d-limonene, 601-096-00-2, and the group of its isomers, 601-029-00-7', () => {
    expect(show('5989-27-5')).toMatchObject({
      index: '601-096-00-2',
      hazards: [
        'Flam. Liq. 3',
        'Asp. Tox. 1',
        'Skin Irrit. 2',
        'Skin Sens. 1B',
        'Aquatic Acute 1',
        'Aquatic Chronic 3',
      ],
      mFactors: { acute: 1 },
    });
    const group = ['Flam. Liq. 3', 'Skin Irrit. 2', 'Skin Sens. 1', 'Aquatic Acute 1', 'Aquatic Chronic 1'];
    expect(show('138-86-3')).toMatchObject({
      index: '601-029-00-7',
      hazards: group,
      name: 'dipentene; limonene',
    });
    expect(show('5989-54-8')).toMatchObject({ name: '(S)-p-mentha-1,8-diene; l-limonene', ec: '227-815-6' });
  });

  it('formaldehyde, 605-001-00-5, and methanol, 603-001-00-X', () => {
    const formaldehyde = show('50-00-0');
    expect(formaldehyde).toMatchObject({
      index: '605-001-00-5',
      hazards: [
        'Carc. 1B',
        'Muta. 2',
        'Acute Tox. 2 (inhalation)',
        'Acute Tox. 4 (oral)',
        'Skin Corr. 1B',
        'Skin Sens. 1A',
      ],
      ate: { gas: { value: 100 }, oral: { value: 500 } },
      supplemental: ['EUH071'],
      notes: ['B', 'D', 'F'],
    });
    expect(show('67-56-1')).toMatchObject({
      index: '603-001-00-X',
      hazards: [
        'Flam. Liq. 2',
        'Acute Tox. 3 * (inhalation)',
        'Acute Tox. 3 * (dermal)',
        'Acute Tox. 3 * (oral)',
        'STOT SE 1',
      ],
      limits: ['STOT SE 1; H370: C ≥ 10 %', 'STOT SE 2; H371: 3 % ≤ C < 10 %'],
    });
  });
});

describe('several entries for one CAS number', () => {
  const taken = (cas: string, percent: number, form: PhysicalForm = 'liquid') =>
    table.find({ cas, percent, form }, today).entry;

  it('nitric acid: above and up to 70 %, 007-004-00-1 and 007-030-00-3', () => {
    expect(table.candidates('7697-37-2', today).map(({ index }) => index)).toEqual([
      '007-004-00-1',
      '007-030-00-3',
    ]);
    expect(table.byCas('7697-37-2', today)?.index).toBe('007-004-00-1');
    expect(taken('7697-37-2', 70)?.index).toBe('007-030-00-3');
    expect(taken('7697-37-2', 70.5)?.index).toBe('007-004-00-1');
    expect(taken('7697-37-2', 5)?.ate.vapour?.value).toBe(2.65);
  });

  it('hydrogen fluoride and hydrofluoric acid: Note B is for solutions', () => {
    expect(taken('7664-39-3', 100)?.index).toBe('009-002-00-6');
    expect(taken('7664-39-3', 4)?.index).toBe('009-003-00-1');
  });

  it('hydroxylamine: above and up to 55 %', () => {
    expect(taken('7803-49-8', 56)?.index).toBe('612-122-00-7');
    expect(taken('7803-49-8', 20)?.index).toBe('612-122-01-4');
  });

  // Names of the entries: "silver massive: [particle diameter ≥ 1 mm]", "hydrogen chloride", "hydrochloric acid ... %".
  it.each([
    ['hydrochloric acid in a liquid is the solution', '7647-01-0', 31, 'liquid', '017-002-01-X'],
    ['in a solid too', '7647-01-0', 5, 'solid', '017-002-01-X'],
    ['and the gas in a gas', '7647-01-0', 5, 'gas', '017-002-00-2'],
    ['and by itself', '7647-01-0', 100, 'liquid', '017-002-00-2'],
    ['hydrobromic acid', '10035-10-6', 48, 'liquid', '035-002-01-8'],
    ['hydriodic acid', '10034-85-2', 57, 'liquid', '053-002-01-6'],
    ['ammonia solution by the number of the gas', '7664-41-7', 10, 'liquid', '007-001-01-2'],
    ['dimethylamine in a liquid', '124-40-3', 40, 'liquid', '612-001-01-6'],
    ['silver in a liquid is no massive metal', '7440-22-4', 1, 'liquid', '047-006-00-X'],
    ['piperazine in a solid', '110-85-0', 10, 'solid', '612-057-00-4'],
    ['piperazine in a liquid', '110-85-0', 10, 'liquid', '612-057-01-1'],
    ['imazalil sulphate in a liquid', '58594-72-2', 1, 'liquid', '613-043-01-8'],
    // Which of the two it is, nobody said: the more severe.
    ['butane, with butadiene or without', '106-97-8', 30, 'aerosol', '601-004-01-8'],
  ] as const)('%s', (_, cas, percent, form, index) => {
    expect(taken(cas, percent, form)?.index).toBe(index);
  });

  it('names all others of all numbers that have several, in every form', () => {
    const numbers = new Set<string>();
    for (const { cas } of table.allRows())
      if (cas && table.candidates(cas, today).length > 1) numbers.add(cas);
    expect(numbers.size).toBeGreaterThan(40);
    for (const cas of numbers)
      for (const form of ['liquid', 'solid', 'gas', 'aerosol'] as const)
        for (const percent of [0.1, 60, 100]) {
          const { entry, others, by } = table.find({ cas, percent, form }, today);
          expect([entry, ...others].map(each => each!.index).sort()).toEqual(
            table.candidates(cas, today).map(({ index }) => index),
          );
          expect(by).not.toBeNull();
        }
  });
});

// Delegated Regulation (EU) 2025/1222 applies from 2027-02-01 and replaces ten entries in force today.
describe('the ten entries with a row for today and one for 2027-02-01', () => {
  it.each([
    '015-012-00-1',
    '601-027-00-6',
    '602-025-00-8',
    '607-231-00-1',
    '613-044-00-6',
    '613-045-00-1',
    '615-008-00-5',
    '616-145-00-3',
    '616-211-00-1',
    '616-212-00-7',
  ])('%s', index => {
    const before = table.byIndex(index, '2027-01-31');
    const after = table.byIndex(index, '2027-02-01');
    expect(before?.act).not.toBe('32025R1222');
    expect(after).toMatchObject({ act: '32025R1222', appliesFrom: '2027-02-01', index });
    expect(before?.cas).toBe(after?.cas);
    expect(table.later(before!.cas!, today).map(row => row.act)).toEqual(['32025R1222']);
    expect(table.byCas(before!.cas!, today)).toEqual(before);
  });

  it('captan changes as published', () => {
    expect(show('133-06-2').hazards).toContain('Acute Tox. 3 * (inhalation)');
    expect(show('133-06-2', '2027-02-01').hazards).toContain('Repr. 2; H361f');
  });
});

describe('looking up', () => {
  it('finds nothing before a row applies, and nothing for what is not there', () => {
    expect(table.byCas('10024-97-2', today)).toBeNull();
    expect(table.byCas('10024-97-2', '2027-02-01')?.index).toBe('007-031-00-9');
    expect(table.byCas('7732-18-5', today)).toBeNull();
    expect(table.byCas('', today)).toBeNull();
    expect(table.byIndex('000-000-00-0', today)).toBeNull();
    expect(table.byName('kerbstone', today)).toBeNull();
  });

  it('finds every key of the file, the first and the last too', () => {
    const opened = openHarmonised(bytes);
    for (const line of bytes.toString('utf8').trimEnd().split('\n').slice(1)) {
      const [key, index] = line.split('\t');
      expect(opened.candidates(key!, '2100-01-01').map(entry => entry.index)).toContain(index);
    }
  });

  it('finds entries without a CAS number by index number', () => {
    expect(table.byIndex('017-002-01-X', today)).toMatchObject({
      cas: null,
      name: 'hydrochloric acid ... %',
    });
  });

  it('finds names and synonyms, exact but for case', () => {
    expect(table.byName('Caustic Soda', today)?.cas).toBe('1310-73-2');
    expect(table.byName('SULPHURIC ACID', today)?.cas).toBe('7664-93-9');
    expect(table.byName('sodium hypochlorite', today)?.cas).toBe('7681-52-9');
    expect(table.byName('d-limonene', today)?.cas).toBe('5989-27-5');
    expect(table.byName('l-limonene', today)?.cas).toBe('5989-54-8');
    expect(table.byName('hydrochloric acid', today)?.index).toBe('017-002-01-X');
    expect(table.byName('Sulfur', today)?.cas).toBe('7704-34-9');
    expect(table.byName('acid', today)).toBeNull();
  });

  it('reads only the lines it needs', () => {
    const broken = Buffer.concat([bytes, Buffer.from('999999-99-9\tx\t\tx\tnot a hazard\n')]);
    const opened = openHarmonised(broken);
    expect(opened.byCas('1310-73-2', today)?.index).toBe('011-002-00-6');
    expect(() => opened.byCas('999999-99-9', today)).toThrow('harmonised.tsv');
  });

  // CELEX numbers and titles as in the Official Journal.
  it.each([
    ['32008R1272', 'Regulation (EC) No 1272/2008'],
    ['32009R0790', 'Regulation (EC) No 790/2009'],
    ['32011R0286', 'Regulation (EU) No 286/2011'],
    ['32016R1179', 'Regulation (EU) 2016/1179'],
    ['32025R1222', 'Regulation (EU) 2025/1222'],
  ])('names the act %s', (celex, title) => expect(formatAct(celex)).toBe(title));
});
