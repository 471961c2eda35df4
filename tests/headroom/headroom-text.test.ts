import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { reasonWriter } from '../../src/draft/because-json.ts';
import { answerOf } from '../../src/headroom/answer.ts';
import { headroomJson } from '../../src/headroom/headroom-json.ts';
import { headroomText } from '../../src/headroom/headroom-text.ts';
import { labelHeadBy } from '../../src/headroom/label-head.ts';
import { exactText, percentText } from '../../src/headroom/percent-text.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { en } from '../../src/words/en/index.ts';
import { headroomOf, water } from './_headroom.ts';

const labelOf = labelHeadBy(await loadLabelData('us-hcs'), { form: 'liquid' });
const agent = (percent: unknown) => [{ name: 'agent', percent, hazards: ['Skin Corr. 1B'] }, water];
// Steps at 1, 3 and 5 %: 29 CFR 1910.1200 Tables A.2.3 and A.3.3; label elements: C.4 of App. C.
const at = (percent: unknown) => headroomOf(agent(percent), { of: 'agent', labelOf });

describe('answer', () => {
  it('says what comes next above and below', async () => {
    expect(answerOf(await at(4.1))).toBe(
      'agent: now 4.1 %; from 5 % the label gets worse: Skin Corr. 1B instead of Skin Irrit. 2 (room for less than 0.9 % of the batch more in place of water); below 3 % the label gets better: Eye Irrit. 2A instead of Eye Dam. 1, signal word Warning instead of Danger, no longer pictogram GHS05, pictogram GHS07.',
    );
  });

  it('counts a limit that is just met as met', async () => {
    const answer = answerOf(await at(3));
    expect(answer).toContain('from 5 % the label gets worse');
    expect(answer).toContain('below 3 % the label gets better');
  });

  it('speaks for the high end of a range', async () => {
    expect(answerOf(await at([0.5, 2]))).toMatch(/^agent: now 0\.5 to 2 %; from 3 % /);
  });

  it('says when nothing comes', async () => {
    const answer = answerOf(await at(50));
    expect(answer).toContain('more of it, up to 100 %, makes no hazard more severe');
  });

  it('tells a category that only the data sheet names from a change of the label', async () => {
    const lines = [{ name: 'sodium hydroxide', cas: '1310-73-2', percent: 3 }, water];
    const found = await headroomOf(lines, { of: '1310-73-2', basis: 'eu-clp' });
    // CLP Annex VI 011-002-00-6: 1B below 5 %, 1A from there; both H314.
    expect(answerOf(found)).toContain('from 5 % the category, not the label, gets worse');
  });
});

describe('text and JSON', () => {
  it('table with the present step marked, and reasons with paragraphs', async () => {
    const lines = headroomText(await at(4.1), en).split('\n');
    expect(lines).toContain('> from 3 % to below 5 %  Danger: Skin Irrit. 2, Eye Dam. 1; GHS05');
    expect(lines).toContain('  below 1 %              not classified');
    expect(lines).toContain('  from 5 % to 100 %      Danger: Skin Corr. 1B, Eye Dam. 1; GHS05');
    expect(lines.find(line => line.includes('10 x 1 % agent = 10 % >= 10 %'))).toContain('Table A.2.3');
  });

  it('notes what is held still', async () => {
    const properties = { pH: 9, 'flash-point': 'none' };
    const evidence = [
      { class: 'Skin Corr.', result: 'not classified', kind: 'test', method: 'OECD 431', source: 'report' },
    ];
    const found = await headroomOf([...agent(2).slice(0, 1), { name: 'blank', percent: 5 }, water], {
      of: 'blank',
      more: { properties, evidence },
    });
    expect(found.notes.join('\n')).toMatch(/pH 9, flash point none/);
    expect(found.notes.join('\n')).toMatch(/evidence on the whole mixture is held for Skin Corr\./);
    expect(found.notes.join('\n')).toMatch(/no data on blank for acute-oral/);
  });

  it('JSON has numbers and exact texts', async () => {
    const lines = [
      { name: 'agent', percent: 2, hazards: ['Acute Tox. 3 (oral)'], ate: { oral: '100 mg/kg' } },
      water,
    ];
    const found = await headroomOf(lines, { of: 'agent', labelOf });
    const record = { name: 'Test', code: 'T', formula: lines };
    const json = JSON.parse(
      JSON.stringify(headroomJson(found, record, breakpoint => reasonWriter(breakpoint, en).because)),
    );
    expect(json.product).toEqual({ name: 'Test', code: 'T' });
    expect(json.current).toEqual({ from: 2, to: 2, exact: ['2', '2'] });
    expect(json.nextWorse).toEqual({ at: 5, exact: '5', side: 'at' });
    // 100 / ATEmix = x / 100 <= 100 / 300 (Table A.1.1).
    expect(json.breakpoints[1]).toMatchObject({ at: 100 / 3, exact: '100/3', side: 'at' });
    expect(json.steps.map((step: { signalWord: string | null }) => step.signalWord)).toEqual([
      null,
      'Warning',
      'Danger',
    ]);
    expect(json.steps[2].pictograms).toEqual(['GHS06']);
  });
});

describe('percents as text', () => {
  it('a decimal for reading; where it does not end, a fraction for data', () => {
    expect(exactText(new Fraction(49, 10))).toBe('4.9');
    expect(exactText(new Fraction(100))).toBe('100');
    expect(exactText(new Fraction(1, 1024))).toBe('0.0009765625');
    expect(exactText(new Fraction(100, 3))).toBe('100/3');
    expect(percentText(new Fraction(100, 3))).toBe('about 33.3333 %');
  });
});
