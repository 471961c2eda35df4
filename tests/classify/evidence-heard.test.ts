import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const entry = (hazardClass: string, result: string, more: Record<string, unknown> = {}) => ({
  class: hazardClass,
  result,
  kind: 'test',
  method: 'study',
  source: 'report',
  ...more,
});

const unused = async (...evidence: readonly Record<string, unknown>[]) =>
  (await classifyLines([water], 'us-hcs', { evidence })).warnings
    .filter(({ id }) => id === 'evidence-not-used')
    .map(({ text }) => text);

describe('evidence is used or its disuse is told', () => {
  it('a class that the basis does not have', async () => {
    expect(await unused(entry('Aquatic Acute', 'not classified'))).toEqual([
      expect.stringContaining('has no such class'),
    ]);
  });

  // A.1.3.2: acute toxicity is classified for each route.
  it('acute toxicity without a route', async () => {
    expect(await unused(entry('Acute Tox.', 'not classified'))).toEqual([
      expect.stringContaining('names no route'),
    ]);
    expect(await unused(entry('Acute Tox.', 'not classified', { route: 'oral' }))).toEqual([]);
  });

  it('a second entry for one class', async () => {
    const first = entry('Met. Corr.', 'Met. Corr. 1');
    expect(await unused(first, entry('Met. Corr.', 'not classified'))).toEqual([
      expect.stringContaining('earlier entry'),
    ]);
  });
});

describe('evidence on acid or alkaline reserve', () => {
  const acid = (result: string) =>
    classifyLines(
      [{ name: 'acid', percent: 2, hazards: ['Skin Irrit. 2'], source: 'test' }, water],
      'us-hcs',
      { properties: { pH: 1.5 }, evidence: [entry('Skin Corr.', result, { kind: 'reserve' })] },
    );

  // A.2.3.1.3: the pH is set aside, which other data must confirm.
  it('sets an extreme pH aside, says so in the working and asks for confirmation', async () => {
    const { hazards, otherClasses, warnings } = await acid('not classified');
    expect(hazards).toEqual([]);
    const skin = otherClasses.find(({ class: name }) => name === 'Skin Corr./Irrit.')!;
    expect(skin.because.working).toContain(
      'pH 1.5 <= 2 is set aside by evidence on acid or alkaline reserve',
    );
    expect(warnings.map(({ id }) => id)).toContain('reserve-to-be-confirmed');
  });

  it('sets nothing aside where it finds the mixture corrosive', async () => {
    const { hazards } = await acid('Skin Corr. 1');
    expect(hazards.map(({ code }) => code)).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
  });
});

// A.8.3.4.1: the organ and route are those of the category that decides, not of transient effects beside it.
it('the route of STOT SE 1 is told beside STOT SE 3 of the same ingredient', async () => {
  const { hazards } = await classifyLines(
    [
      {
        name: 'solvent',
        percent: 30,
        hazards: ['STOT SE 1 (optic nerve; oral)', 'STOT SE 3 (narcotic effects)'],
        source: 'test',
      },
      water,
    ],
    'us-hcs',
  );
  expect(hazards.find(({ category }) => category === '1')).toMatchObject({
    route: 'oral',
    organs: ['optic nerve'],
  });
});

// A.1.2.4: corrosivity as the mechanism of toxicity by inhalation is for the classifier to consider.
it('a mixture toxic by inhalation and corrosive asks about the respiratory tract', async () => {
  const line = { name: 'acid', percent: 50, source: 'test' };
  const ids = async (hazards: readonly string[]) =>
    (await classifyLines([{ ...line, hazards }, water], 'us-hcs')).warnings.map(({ id }) => id);
  expect(await ids(['Skin Corr. 1A', 'Acute Tox. 2 (inhalation)'])).toContain('respiratory-tract');
  expect(await ids(['Skin Corr. 1A'])).not.toContain('respiratory-tract');
});

// CLP Annex I, Table 3.1.3: one statement for each route and category of acute toxicity.
describe('a test by one route', () => {
  it.each([
    ['oral', 'Acute Tox. 4', 'H302'],
    ['dermal', 'Acute Tox. 3', 'H311'],
    ['inhalation', 'Acute Tox. 2', 'H330'],
  ])('%s beside the result %s gives %s, as in its brackets', async (route, result, statement) => {
    for (const evidence of [
      [entry('Acute Tox.', result, { route })],
      [entry('Acute Tox.', `${result} (${route})`)],
    ]) {
      const { hazards } = await classifyLines([water], 'us-hcs', { evidence });
      expect(hazards).toMatchObject([{ code: result, route, statements: [statement] }]);
    }
  });
});

// 29 CFR 1910.1200 App. A, A.8.2.2: the two effects of Category 3; neither replaces Categories 1 and 2.
describe('a test that gives STOT SE 3', () => {
  const toxic = { name: 'a', percent: 20, hazards: ['STOT SE 1 (kidney)'], source: 'supplier' };

  it('is not used without its effect, and that is told', async () => {
    const evidence = [entry('STOT SE', 'STOT SE 3')];
    const { hazards, warnings } = await classifyLines([toxic, water], 'us-hcs', { evidence });
    expect(hazards.map(({ code }) => code)).toEqual(['STOT SE 1']);
    expect(warnings).toContainEqual(
      expect.objectContaining({ id: 'evidence-not-used', text: expect.stringContaining('names no effect') }),
    );
  });

  it('is used with its effect', async () => {
    const evidence = [entry('STOT SE', 'STOT SE 3 (narcotic effects)')];
    const { hazards } = await classifyLines([toxic, water], 'us-hcs', { evidence });
    expect(hazards.map(({ statements }) => statements)).toEqual([['H370'], ['H336']]);
  });
});
