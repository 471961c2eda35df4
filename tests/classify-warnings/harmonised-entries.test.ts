import { describe, expect, it } from 'vitest';
import { answerableNotes } from '../../src/reference/harmonised/entry-notes.ts';
import { classifyLines, classifyValue, recordAround } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
type Line = Record<string, unknown>;

const told = async (id: string, line: Line, basis: 'us-hcs' | 'eu-clp' = 'eu-clp') =>
  (await classifyLines([line, water], basis)).warnings.filter(warning => warning.id === id);
const codesOf = async (line: Line, basis: 'us-hcs' | 'eu-clp' = 'eu-clp') =>
  (await classifyLines([line, water], basis)).hazards.map(({ code }) => code);

// CLP Annex VI Table 3: 613-333-00-7 pyrithione zinc, M = 1000 and M = 10; 613-167-00-5 CMIT/MIT (3:1), Skin Sens. 1A
// from 0.0015 %, M = 100 and M = 100.
describe('hazards typed from a supplier sheet in place of a harmonised entry', () => {
  const zincPyrithione = {
    name: 'zinc pyrithione',
    cas: '13463-41-7',
    percent: 0.03,
    hazards: [
      'Repr. 1B; H360D',
      'Acute Tox. 2 (inhalation)',
      'Acute Tox. 3 (oral)',
      'STOT RE 1',
      'Eye Dam. 1',
      'Aquatic Acute 1',
      'Aquatic Chronic 1',
    ],
    source: 'example of a supplier sheet',
  };

  it('lose M-factors, which is told once with both sources and what they would change', async () => {
    const warnings = await told('record-replaces-entry', zincPyrithione);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({
      source: 'example of a supplier sheet',
      index: '613-333-00-7',
      lost: { hazards: [], mFactors: { acute: 1000, chronic: 10 } },
    });
    expect(warnings[0]!.text).toContain('M-factors (acute 1000, chronic 10)');
    const { worse } = warnings[0] as unknown as { worse: { within: string }[] };
    expect(worse.map(({ within }) => within).sort()).toEqual(['Aquatic Acute 1', 'Aquatic Chronic 3']);
    expect(warnings[0]!.text).toContain('Aquatic Acute 1 instead of not classified');
  });

  it.each(['us-hcs', 'eu-clp'] as const)('lose the specific limits of CMIT/MIT (%s)', async basis => {
    const line = {
      name: 'CMIT/MIT (3:1)',
      cas: '55965-84-9',
      percent: 0.01,
      hazards: ['Skin Corr. 1C', 'Eye Dam. 1', 'Skin Sens. 1A', 'Acute Tox. 3 (oral)'],
      source: 'example of a supplier sheet',
    };
    const [warning] = await told('record-replaces-entry', line, basis);
    expect(warning!.text).toContain('Skin Sens. 1A: C >= 0.0015 %');
    expect(warning!.text).toMatch(
      /with the entry the mixture would be .*Skin Sens\. 1 instead of not classified/,
    );
  });

  it('lose letters, organs, estimates and EUH codes', async () => {
    // 005-007-00-2 boric acid: H360FD.
    const [letters] = await told('record-replaces-entry', {
      name: 'boric acid',
      cas: '10043-35-3',
      percent: 5,
      hazards: ['Repr. 1B; H360D'],
      source: 'example',
    });
    expect(letters!.text).toContain('letters, organs or routes (Repr. 1B; H360FD)');
    // 605-001-00-5 formaldehyde: Carc. 1B by every route; H350i is by inhalation alone (CLP Annex VI 1.1.2.1.2).
    const [route] = await told('record-replaces-entry', {
      name: 'formaldehyde',
      cas: '50-00-0',
      percent: 5,
      hazards: ['Carc. 1B; H350i'],
      source: 'example',
    });
    expect(route!.text).toContain('letters, organs or routes (Carc. 1B');
    // 603-014-00-0 2-butoxyethanol: ATE oral 1200 mg/kg, vapour 3 mg/L.
    const [estimates] = await told('record-replaces-entry', {
      name: '2-butoxyethanol',
      cas: '111-76-2',
      percent: 5,
      hazards: ['Acute Tox. 3 (inhalation)', 'Acute Tox. 4 (oral)', 'Skin Irrit. 2', 'Eye Irrit. 2'],
      ate: { oral: '1200 mg/kg' },
      source: 'example',
    });
    expect(estimates!.text).toContain('estimates (vapour 3 mg/L)');
    // 017-011-00-1 sodium hypochlorite: EUH031.
    const [codes] = await told('record-replaces-entry', {
      name: 'sodium hypochlorite',
      cas: '7681-52-9',
      percent: 5,
      hazards: ['Skin Corr. 1B', 'Eye Dam. 1', 'Aquatic Acute 1', 'Aquatic Chronic 1'],
      'm-factors': { acute: 10, chronic: 1 },
      source: 'example',
    });
    expect(codes!.text).toContain('EUH031');
  });

  it('are not told where the record says at least as much', async () => {
    const same = {
      ...zincPyrithione,
      'm-factors': { acute: 1000, chronic: 10 },
      ate: { oral: '221 mg/kg', mist: '0.14 mg/L' },
    };
    expect(await told('record-replaces-entry', same)).toEqual([]);
  });
});

describe('several harmonised entries for one CAS number', () => {
  const acid = { name: 'hydrochloric acid', cas: '7647-01-0', percent: 12 };

  // 017-002-01-X hydrochloric acid … %: Skin Irrit. 2 and Eye Irrit. 2 from 10 to 25 %, STOT SE 3 from 10 %.
  it('hydrochloric acid in a liquid is not the compressed gas', async () => {
    expect((await codesOf(acid)).sort()).toEqual(['Eye Irrit. 2', 'STOT SE 3', 'Skin Irrit. 2']);
    const [warning] = await told('entry-chosen', acid);
    expect(warning!.text).toContain('017-002-01-X');
    expect(warning!.text).toContain('not taken: 017-002-00-2 (hydrogen chloride)');
  });

  it('the most severe is taken where nothing decides, and the record may name another', async () => {
    // 028-002-00-7 nickel, 028-002-01-4 nickel powder (Aquatic Chronic 3).
    const nickel = { name: 'nickel', cas: '7440-02-0', percent: 30 };
    const [warning] = await told('entry-chosen', nickel);
    expect(warning).toMatchObject({ index: '028-002-01-4', by: 'severity' });
    const named = { ...nickel, harmonised: { entry: '028-002-00-7', source: 'sieve analysis' } };
    expect((await told('entry-chosen', named))[0]).toMatchObject({ index: '028-002-00-7', by: 'record' });
    expect(await codesOf(named)).not.toContain('Aquatic Chronic 3');
  });

  it('an entry of another substance is not used in silence', async () => {
    const wrong = { ...acid, harmonised: { entry: '028-002-00-7', source: 'x' } };
    const [warning] = await told('entry-answer-unused', wrong);
    expect(warning!.text).toContain('017-002-01-X, 017-002-00-2');
  });
});

// Delegated Regulation (EU) 2025/1222 applies from 2027-02-01.
describe('rows of another date', () => {
  const on = async (asOf: string, line: Line) =>
    (await classifyValue(recordAround({ formula: [line, water] }), 'eu-clp', asOf)).warnings;

  it('trimethyl phosphate is not in force yet, and that is said', async () => {
    const warnings = await on('2026-11-25', { name: 'trimethyl phosphate', cas: '512-56-1', percent: 5 });
    const [warning] = warnings.filter(({ id }) => id === 'no-data');
    expect(warning!.text).toContain('not in force yet: it applies from 2027-02-01');
  });

  it('of a substance with hazards of the record too', async () => {
    const line = { name: 'trimethyl phosphate', cas: '512-56-1', percent: 5, hazards: [], source: 'x' };
    const [warning] = (await on('2026-11-25', line)).filter(({ id }) => id === 'entry-later');
    expect(warning!.text).toContain('applies from 2027-02-01');
    expect((await on('2027-02-01', line)).map(({ id }) => id)).toContain('record-replaces-entry');
  });

  it('a row that replaces one in force is told with what it adds', async () => {
    const captan = { name: 'captan', cas: '133-06-2', percent: 5 };
    const [warning] = (await on('2026-11-25', captan)).filter(({ id }) => id === 'entry-later');
    expect(warning!.text).toContain('from 2027-02-01');
    expect(warning!.text).toContain('STOT RE 1');
    expect((await on('2027-02-01', captan)).filter(({ id }) => id === 'entry-later')).toEqual([]);
  });
});

// CLP Annex VI 1.1.3.1, Note P: naphtha 649-327-00-6 (64742-48-9) is Carc. 1B and Muta. 1B unless benzene is below 0.1 %.
describe('notes of an entry', () => {
  const naphtha = { name: 'naphtha', cas: '64742-48-9', percent: 50 };

  it('say what must be known', async () => {
    const [warning] = await told('entry-notes', naphtha);
    expect(warning!.text).toContain('Note P: Carc. 1B, Muta. 1B applies unless');
    expect(warning!.text).toContain('benzene');
    expect(await codesOf(naphtha)).toContain('Carc. 1B');
  });

  it('are answered by the record', async () => {
    const line = { ...naphtha, harmonised: { notes: ['P'], source: 'certificate, benzene 0.02 %' } };
    const codes = await codesOf(line);
    expect(codes).not.toContain('Carc. 1B');
    expect(codes).not.toContain('Muta. 1B');
    const [warning] = await told('entry-notes', line);
    expect(warning!.text).toContain('left out');
    expect(warning!.text).toContain('certificate, benzene 0.02 %');
    const [unused] = await told('entry-answer-unused', {
      ...naphtha,
      harmonised: { notes: ['L'], source: 'x' },
    });
    expect(unused!.text).toContain('notes L');
  });

  // Note 1 of CLP Annex VI 1.1.3.2: limits of lead compounds count the metal (082-005-00-8).
  it('say that limits count the metal', async () => {
    const [warning] = await told('entry-notes', { name: 'lead acetate', cas: '301-04-2', percent: 1 });
    expect(warning?.text).toContain('percents of the metal');
  });

  it('can be answered where something can be shown', () => {
    expect(answerableNotes).toEqual(['J', 'K', 'L', 'M', 'N', 'P']);
  });
});

// 29 CFR 1910.1200 App. A, A.6.4.1 and A.6.4.2; App. F Part D.
describe('lists of carcinogens beside a constituent that is not classified as one', () => {
  const line = (name: string, cas: string | null, more: Line = {}): Line => ({
    name,
    ...(cas && { cas }),
    percent: 5,
    hazards: [],
    source: 'example',
    ...more,
  });

  // 29 CFR 1910.1048(m)(1)(i): cancer is a hazard to be considered for formaldehyde; IARC group 1, NTP known.
  it('what OSHA regulates for cancer shall be classified', async () => {
    const formaldehyde = line('formaldehyde', '50-00-0');
    expect(await codesOf(formaldehyde, 'us-hcs')).toContain('Carc. 1A');
    const [warning] = await told('carcinogen-listed', formaldehyde, 'us-hcs');
    expect(warning!.text).toContain('OSHA (29 CFR 1910.1048)');
    expect(warning!.text).toContain('counts as Carc. 1A');
    // The paragraph is of the United States alone.
    expect(await codesOf(formaldehyde, 'eu-clp')).toEqual([]);
    // The record or the entry classifies it: nothing to add, nothing to tell.
    expect(
      await told('carcinogen-listed', { name: 'formaldehyde', cas: '50-00-0', percent: 5 }, 'us-hcs'),
    ).toEqual([]);
  });

  it('alpha-naphthylamine, which no other list has, is Category 1B', async () => {
    expect(await codesOf(line('1-naphthylamine', '134-32-7'), 'us-hcs')).toContain('Carc. 1B');
  });

  it('what IARC or NTP list is told and not classified', async () => {
    // IARC group 2B, volume 101: coconut oil diethanolamine condensate; 2B, volume 77: ethylbenzene.
    for (const [name, cas] of [
      ['cocamide DEA', '68603-42-9'],
      ['ethylbenzene', '100-41-4'],
    ] as const) {
      expect(await codesOf(line(name, cas), 'us-hcs')).toEqual([]);
      const [warning] = await told('carcinogen-listed', line(name, cas), 'us-hcs');
      expect(warning!.text).toContain('IARC (group 2B)');
      expect(await told('carcinogen-listed', line(name, cas), 'eu-clp')).toEqual([]);
    }
  });

  it('is told by name where there is no number', async () => {
    expect(await told('carcinogen-listed', line('Ethylbenzene', null), 'us-hcs')).toHaveLength(1);
  });

  it.each([
    ['sodium hydroxide', '1310-73-2'],
    ['2-butoxyethanol', '111-76-2'],
    ['ethanol', '64-17-5'],
    ['isopropyl alcohol', '67-63-0'],
    ['citric acid', '77-92-9'],
    ['sodium laureth sulfate', null],
    ['fragrance', null],
    ['sodium metasilicate', '6834-92-0'],
    ['d-limonene', '5989-27-5'],
  ])('says nothing of %s', async (name, cas) => {
    expect(await told('carcinogen-listed', line(name, cas), 'us-hcs')).toEqual([]);
  });
});
