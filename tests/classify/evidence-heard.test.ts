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

  it('a second entry for one class that agrees', async () => {
    const first = entry('Met. Corr.', 'Met. Corr. 1');
    expect(await unused(first, entry('Met. Corr.', 'Met. Corr. 1'))).toEqual([
      expect.stringContaining('earlier entry'),
    ]);
  });
});

describe('evidence on acid or alkaline reserve', () => {
  const acid = (result: string, choices: readonly Record<string, unknown>[] = []) =>
    classifyLines(
      [{ name: 'acid', percent: 2, hazards: ['Skin Irrit. 2'], source: 'test' }, water],
      'us-hcs',
      { properties: { pH: 1.5 }, evidence: [entry('Skin Corr.', result, { kind: 'reserve' })], choices },
    );

  // A.2.3.1.3: "this needs to be confirmed by other data".
  it('alone lifts no Category 1, and asks for confirmation', async () => {
    const { hazards, warnings } = await acid('not classified');
    expect(hazards.map(({ code }) => code)).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
    expect(warnings.find(({ id }) => id === 'reserve-to-be-confirmed')?.text).toContain('stands for skin');
  });

  const setAside = { reading: 'reserve-alone', take: 'set-aside', reason: 'in vitro test under way' };

  it('sets the pH aside where the reviewer chooses so, for the part that it speaks of', async () => {
    const { hazards, warnings } = await acid('not classified', [setAside]);
    expect(hazards.map(({ code }) => code)).toEqual(['Eye Dam. 1']);
    expect(warnings.map(({ id }) => id)).toContain('reserve-to-be-confirmed');
  });

  it('keeps the irritation that it finds itself', async () => {
    expect((await acid('Skin Irrit. 2', [setAside])).hazards.map(({ code }) => code)).toEqual([
      'Skin Irrit. 2',
      'Eye Dam. 1',
    ]);
  });

  it('sets nothing aside where it finds the mixture corrosive', async () => {
    const { hazards } = await acid('Skin Corr. 1');
    expect(hazards.map(({ code }) => code)).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
  });
});

// A.2.1.3, A.2.2.7.3, A.0.3: conflicting information is weighed, which is the reviewer's; until then the more severe.
describe('evidence that disagrees', () => {
  const found = async (more: Record<string, unknown>) => {
    const { hazards, warnings } = await classifyLines([water], 'us-hcs', more);
    return {
      codes: hazards.map(({ code }) => code),
      told: warnings.filter(({ id }) => id === 'evidence-conflict').map(({ text }) => text),
    };
  };

  it('with a measured flash point does not clear a flammable liquid in silence', async () => {
    const properties = { 'flash-point': '20 C (closed cup)', 'initial-boiling-point': '80 C' };
    const against = (reason?: string) =>
      found({ properties, evidence: [entry('Flam. Liq.', 'not classified', reason ? { reason } : {})] });
    const silent = await against();
    expect(silent.codes).toEqual(['Flam. Liq. 2']);
    expect(silent.told[0]).toContain('flash point 20 C gives Flam. Liq. 2');
    const reasoned = await against('the flash point is of the solvent before dilution');
    expect(reasoned.codes).toEqual([]);
    expect(reasoned.told).toHaveLength(1);
  });

  it('with an extreme pH', async () => {
    const { codes, told } = await found({
      properties: { pH: 13 },
      evidence: [entry('Skin Corr.', 'not classified')],
    });
    expect(codes).toEqual(['Skin Corr. 1', 'Eye Dam. 1']);
    expect(told).toHaveLength(1);
  });

  it('with other evidence: the more severe of two tests, whichever stands first', async () => {
    const mild = entry('Met. Corr.', 'not classified');
    const severe = entry('Met. Corr.', 'Met. Corr. 1');
    for (const evidence of [
      [mild, severe],
      [severe, mild],
    ]) {
      const { codes, told } = await found({ evidence });
      expect(codes).toEqual(['Met. Corr. 1']);
      expect(told).toHaveLength(1);
    }
  });
});

// 29 CFR 1910.1200 App. B, B.6.3: closed-cup methods.
describe('a flash point of an open cup', () => {
  const at = async (flash: string, choices: readonly Record<string, unknown>[] = []) => {
    const { hazards, warnings } = await classifyLines([water], 'us-hcs', {
      properties: { 'flash-point': flash },
      choices,
    });
    return [hazards[0]?.code, warnings.some(({ id }) => id === 'open-cup')];
  };

  it('near a limit is judged at the severe side, and told', async () => {
    expect(await at('65 C (open cup)')).toEqual(['Flam. Liq. 3', true]);
    expect(await at('65 C (closed cup)')).toEqual(['Flam. Liq. 4', false]);
    expect(await at('80 C (open cup)')).toEqual(['Flam. Liq. 4', true]);
    expect(await at('100 C (open cup)')).toEqual(['Flam. Liq. 4', true]);
  });

  it('is taken as it is where the reviewer chooses so', async () => {
    const choice = { reading: 'open-cup', take: 'as-closed', reason: 'method compared' };
    expect(await at('65 C (open cup)', [choice])).toEqual(['Flam. Liq. 4', true]);
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
