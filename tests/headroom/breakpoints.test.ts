import { describe, expect, it } from 'vitest';
import { changesText } from '../../src/headroom/answer.ts';
import type { Headroom } from '../../src/headroom/headroom.ts';
import { exactText } from '../../src/headroom/percent-text.ts';
import { type Asked, headroomOf, water } from './_headroom.ts';

/** Breakpoints at which a hazard changes. */
const written = ({ breakpoints }: Headroom): string[] =>
  breakpoints.flatMap(({ at, side, changes }) => {
    const hazards = changes.filter(({ what }) => what === 'hazard');
    return hazards.length > 0 ? [`${side} ${exactText(at)}: ${changesText(hazards)}`] : [];
  });

const one = (hazards: readonly string[], more: Record<string, unknown> = {}) => [
  { name: 'agent', percent: 2, hazards, ...more },
  water,
];
const find = (lines: readonly Record<string, unknown>[], asked: Partial<Asked> = {}) =>
  headroomOf(lines, { of: 'agent', ...asked });

describe('one constituent in water', () => {
  it('Skin Corr. 1B: 29 CFR 1910.1200 Table A.2.3 (10 x >= 10, >= 5) and Table A.3.3 (10 x >= 10, >= 3)', async () => {
    expect(written(await find(one(['Skin Corr. 1B'])))).toEqual([
      'at 1: Skin Irrit. 2, Eye Irrit. 2A',
      'at 3: Eye Dam. 1 instead of Eye Irrit. 2A',
      'at 5: Skin Corr. 1B instead of Skin Irrit. 2',
    ]);
  });

  it('Acute Tox. 4 (oral), point estimate 500: 100/(x/500) = 2000, Tables A.1.1 and A.1.2', async () => {
    expect(written(await find(one(['Acute Tox. 4 (oral)'])))[0]).toBe('at 25: Acute Tox. 4 (oral)');
  });

  it('LD50 300 mg/kg: Category 4 from 100 x 300 / 2000; alone it is Category 3, whose bound 300 it meets (Table A.1.1)', async () => {
    expect(written(await find(one(['Acute Tox. 3 (oral)'], { ate: { oral: '300 mg/kg' } })))).toEqual([
      'at 15: Acute Tox. 4 (oral)',
      'at 100: Acute Tox. 3 (oral) instead of Acute Tox. 4 (oral)',
    ]);
  });

  it('LD50 100 mg/kg: 5 % and 100/3 % exactly (Table A.1.1, A.1.3.6.1)', async () => {
    expect(written(await find(one(['Acute Tox. 3 (oral)'], { ate: { oral: '100 mg/kg' } })))).toEqual([
      'at 5: Acute Tox. 4 (oral)',
      'at 100/3: Acute Tox. 3 (oral) instead of Acute Tox. 4 (oral)',
    ]);
  });

  it('sodium hydroxide under eu-clp: CLP Annex VI 011-002-00-6, specific limits 0.5, 2 and 5 %', async () => {
    const lines = [{ name: 'sodium hydroxide', cas: '1310-73-2', percent: 1 }, water];
    expect(written(await headroomOf(lines, { of: '1310-73-2', basis: 'eu-clp' }))).toEqual([
      'at 0.5: Skin Irrit. 2, Eye Irrit. 2',
      'at 2: Skin Corr. 1B instead of Skin Irrit. 2, Eye Dam. 1 instead of Eye Irrit. 2',
      'at 5: Skin Corr. 1A instead of Skin Corr. 1B',
    ]);
  });

  it('nitric acid under eu-clp changes its entry above 70 % (CLP Annex VI 007-030-00-3 and 007-004-00-1)', async () => {
    const lines = [{ name: 'nitric acid', cas: '7697-37-2', percent: 10 }, water];
    const found = written(await headroomOf(lines, { of: 'nitric acid', basis: 'eu-clp' }));
    expect(found.filter(each => each.startsWith('above'))).toEqual([
      'above 70: Acute Tox. 1 (inhalation: vapour) instead of Acute Tox. 3 (inhalation: vapour)',
    ]);
    // ATE 2.65 mg/L (vapours) of 007-030-00-3: 100 x 2.65 / 20 and / 10.
    expect(found).toContain('at 13.25: Acute Tox. 4 (inhalation: vapour)');
    expect(found.find(each => each.startsWith('at 26.5:'))).toContain('Acute Tox. 3 (inhalation: vapour)');
  });

  it('a limit written with > counts above it, one with >= at it (CLP Article 10)', async () => {
    const limit = (text: string) => find(one(['Skin Sens. 1'], { limits: [text] }), { basis: 'eu-clp' });
    expect(written(await limit('Skin Sens. 1; C > 0.5'))).toEqual(['above 0.5: Skin Sens. 1']);
    expect(written(await limit('Skin Sens. 1; C >= 0.5'))).toEqual(['at 0.5: Skin Sens. 1']);
  });

  it('aquatic summation with M = 10: CLP Tables 4.1.1 and 4.1.2, 25 % over M and over the weights 10 and 100', async () => {
    const lines = one(['Aquatic Acute 1', 'Aquatic Chronic 1'], { 'm-factors': { acute: 10, chronic: 1 } });
    expect(written(await find(lines, { basis: 'eu-clp' }))).toEqual([
      'at 0.25: Aquatic Chronic 3',
      'at 2.5: Aquatic Acute 1, Aquatic Chronic 2 instead of Aquatic Chronic 3',
      'at 25: Aquatic Chronic 1 instead of Aquatic Chronic 2',
    ]);
  });

  it('STOT SE 3 from 20 %, aspiration from 10 % where thin enough (A.8.3.4.5, A.10.3.3.1)', async () => {
    const more = { properties: { 'kinematic-viscosity-40C': '5 mm2/s' } };
    expect(written(await find(one(['STOT SE 3 (narcotic effects)', 'Asp. Tox. 1']), { more }))).toEqual([
      'at 10: Asp. Tox. 1',
      'at 20: STOT SE 3 (narcotic effects)',
    ]);
  });

  it('EUH208 from a tenth of the limit of a sensitizer, until it is one itself (CLP Annex II 2.8, Table 3.4.6)', async () => {
    const { breakpoints } = await find(one(['Skin Sens. 1']), { basis: 'eu-clp' });
    const told = breakpoints.flatMap(({ at, side, changes }) =>
      changes.flatMap(change =>
        'code' in change && change.code === 'EUH208' ? [`${side} ${exactText(at)} ${change.kind}`] : [],
      ),
    );
    expect(told).toEqual(['at 0.1 appears', 'at 1 disappears']);
  });

  it('cut-offs by ingredient: 29 CFR 1910.1200 Tables A.4.5, A.6.1, A.8.2; CLP Tables 3.4.5, 3.6.2, 3.8.3', async () => {
    const lines = one(['Skin Sens. 1B', 'Carc. 1B', 'STOT SE 2']);
    expect(written(await find(lines))).toEqual(['at 0.1: Carc. 1B', 'at 1: Skin Sens. 1, STOT SE 2']);
    expect(written(await find(lines, { basis: 'eu-clp' }))).toEqual([
      'at 0.1: Carc. 1B',
      'at 1: Skin Sens. 1',
      'at 10: STOT SE 2',
    ]);
  });
});

describe('beside other constituents', () => {
  it('adds up from the cut-off for relevant ingredients on: 2 + 1 = 3, 2 + 3 = 5 (Tables A.2.3, A.3.3; A.2.3.3.1)', async () => {
    const lines = [{ name: 'other', percent: 2, hazards: ['Skin Corr. 1B'] }, ...one(['Skin Corr. 1B'])];
    expect(written(await find(lines))).toEqual([
      'at 1: Eye Dam. 1 instead of Eye Irrit. 2A',
      'at 3: Skin Corr. 1B instead of Skin Irrit. 2',
    ]);
  });

  it('by ratios where one has a limit of its own: 1/2 + x/5 = 1 (CLP Table 3.2.3, 1.1.2.2.2)', async () => {
    const other = {
      name: 'other',
      percent: 1,
      hazards: ['Skin Corr. 1B'],
      limits: ['Skin Corr. 1B; C >= 2'],
    };
    const found = await find([other, ...one(['Skin Corr. 1B'])], { basis: 'eu-clp' });
    expect(written(found).find(each => each.includes('Skin Corr. 1B instead'))).toMatch(/^at 2\.5:/);
  });

  it('unknown toxicity: 20 x 2000/500 + u = 100 at u = 20 (A.1.3.6.2.4)', async () => {
    const lines = [
      { name: 'known', percent: 20, hazards: [], source: 'test', ate: { oral: '500 mg/kg' } },
      { name: 'agent', percent: 2, hazards: [], source: 'test', unknown: ['acute-oral'] },
      water,
    ];
    expect(written(await find(lines))).toEqual(['at 20: Acute Tox. 4 (oral)']);
  });

  it('unknown toxicity counts only above 10 %: 23 x 2000/500 + u passes 100 from u = 8 on, corrected above 10', async () => {
    const lines = [
      { name: 'known', percent: 23, hazards: [], source: 'test', ate: { oral: '500 mg/kg' } },
      { name: 'agent', percent: 2, hazards: [], source: 'test', unknown: ['acute-oral'] },
      water,
    ];
    expect(written(await find(lines))).toEqual(['above 10: Acute Tox. 4 (oral)']);
  });

  it('others in proportion fall below their cut-off: 2 (100 - x) / 85 = 1 at x = 57.5 (Table A.4.5)', async () => {
    const lines = [
      { name: 'agent', percent: 15, hazards: [], source: 'test' },
      { name: 'dye', percent: 2, hazards: ['Skin Sens. 1B'] },
      water,
    ];
    const { steps, breakpoints } = await find(lines, { others: 'scaled' });
    expect(
      breakpoints.map(({ at, side, changes }) => `${side} ${exactText(at)}: ${changesText(changes)}`),
    ).toEqual(['above 57.5: no longer Skin Sens. 1']);
    expect(breakpoints[0]!.workedAt.gt(57.5)).toBe(true);
    expect(steps.map(({ fromInclusive, toInclusive }) => [fromInclusive, toInclusive])).toEqual([
      [true, true],
      [false, true],
    ]);
  });

  it('all ingredients in one category decide without the formula only where there is no water left (A.1.3.3(c))', async () => {
    expect(written(await find(one(['Acute Tox. 4 (oral)']))).at(-1)).toBe('at 25: Acute Tox. 4 (oral)');
    const lines = [
      { name: 'agent', percent: 50, hazards: ['Acute Tox. 4 (dermal)'] },
      { name: 'filler', percent: 50, hazards: [], source: 'test' },
    ];
    // Point estimate 1100 (Table A.1.2): 100 x 1100 / 2000.
    expect(written(await find(lines, { others: 'scaled' }))).toEqual(['at 55: Acute Tox. 4 (dermal)']);
  });

  it('chromium (VI) against the cement, not the mixture: 0.321 c / 30 % > 0.0002 % (CLP Annex II 2.3)', async () => {
    const lines = [
      { name: 'Portland cement', cas: '65997-15-1', percent: 30, hazards: [], source: 'test' },
      { name: 'sodium chromate', cas: '7775-11-3', percent: 0.001 },
      water,
    ];
    const { breakpoints } = await headroomOf(lines, {
      of: 'sodium chromate',
      basis: 'eu-clp',
      more: { form: 'solid' },
    });
    const [first] = breakpoints;
    // 0.0002 x 30 / 32.1
    expect([first!.side, exactText(first!.at), changesText(first!.changes)]).toEqual([
      'above',
      '1/5350',
      'statement EUH203',
    ]);
  });

  it('ranges of others: each hazard at the worse end', async () => {
    const lines = [{ name: 'other', percent: [1, 2], hazards: ['Skin Corr. 1B'] }, ...one(['Skin Corr. 1B'])];
    expect(written(await find(lines)).at(-1)).toBe('at 3: Skin Corr. 1B instead of Skin Irrit. 2');
  });
});
