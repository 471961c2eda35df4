import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const line = (percent: number, ...hazards: readonly string[]) => ({
  name: 'a',
  percent,
  hazards,
  source: 'test',
});

const told = async (
  id: string,
  lines: readonly Record<string, unknown>[],
  more: Record<string, unknown> = {},
  basis: BasisId = 'us-hcs',
) =>
  (await classifyLines([...lines, water], basis, more)).warnings
    .filter(warning => warning.id === id)
    .map(({ text }) => text);
const near = (lines: readonly Record<string, unknown>[], properties: Record<string, unknown> = {}) =>
  told('near-limit', lines, { properties });

describe('a batch that may slip into a more severe category is told', () => {
  // 29 CFR 1910.1200 App. A, Table A.2.3: corrosives sum to 5 % for Category 1; Table A.1.1: 300 mg/kg for Category 3;
  // A.2.3.1.3: pH 11.5; App. B, Table B.6.1: 23 C for Category 2.
  it('from irritating to corrosive', async () => {
    expect(await near([line(4.9, 'Skin Corr. 1B')])).toContainEqual(
      expect.stringMatching(/Skin.*4\.9 % lies close to the limit 5 %/),
    );
    expect(await near([line(3, 'Skin Corr. 1B', 'Eye Dam. 1')])).not.toContainEqual(
      expect.stringMatching(/Skin/),
    );
  });

  it('from harmful to toxic', async () => {
    const [text] = await near([{ ...line(50, 'Acute Tox. 3 (oral)'), ate: { oral: '155 mg/kg' } }]);
    expect(text).toContain('310 mg/kg lies close to the limit 300 mg/kg');
  });

  it('by its pH', async () => {
    expect(await near([], { pH: 11.3 })).toHaveLength(2);
    expect(await near([], { pH: 10.5 })).toEqual([]);
  });

  it('by its flash point', async () => {
    expect(await near([], { 'flash-point': '24 C (closed cup)' })).toEqual([
      expect.stringContaining('limit 23 C'),
    ]);
    expect(await near([], { 'flash-point': '40 C (closed cup)' })).toEqual([]);
  });
});

// Tables A.1.1 and A.1.2 have limits of their own for vapours and for dusts and mists.
describe('a sprayed product is not judged as vapour in silence', () => {
  const solvent = line(30, 'Acute Tox. 3 (inhalation)');

  it('where mist would be worse', async () => {
    // 30 % of Category 3: as vapour 100/(30/3) = 10 mg/L, Category 3; as mist 100/(30/0.5) = 1.7 mg/L, Category 4.
    expect(await told('inhalation-form-worse', [solvent])).toEqual([]);
    // 20 % of Category 4: as vapour 55 mg/L, above the last; as mist 7.5 mg/L, above too; 30 %: 36.7 and 5.0 mg/L.
    const [text] = await told('inhalation-form-worse', [line(30, 'Acute Tox. 4 (inhalation)')]);
    expect(text).toContain('as mist');
    expect(text).toContain('Acute Tox. 4');
  });

  it('and not where the record names the form', async () => {
    expect(await told('inhalation-form-worse', [line(30, 'Acute Tox. 4 (inhalation: mist)')])).toEqual([]);
  });
});

// CLP Annex VI, 008-003-00-9: hydrogen peroxide Eye Dam. 1 from 8 %, Eye Irrit. 2 from 5 %.
describe('a limit of EU law that is milder is told under us-hcs', () => {
  it('for 3 % hydrogen peroxide', async () => {
    const texts = await told('us-specific-limits', [
      { name: 'hydrogen peroxide', cas: '7722-84-1', percent: 3 },
    ]);
    expect(texts).toContainEqual(expect.stringMatching(/Eye.*not classified instead of Eye Dam\. 1/));
  });
});
