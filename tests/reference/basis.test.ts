import { describe, expect, it } from 'vitest';
import { loadBasis } from '../../src/reference/basis.ts';

const refused = async (...call: Parameters<typeof loadBasis>) => {
  const outcome = await loadBasis(...call);
  if (outcome.ok) throw new Error(`${call.join(' ')} was answered`);
  const { message, hint } = outcome.diagnostics[0]!;
  return `${message}; ${hint}`;
};

const answered = async (...call: Parameters<typeof loadBasis>) => (await loadBasis(...call)).ok;

// 89 FR 44144: effective 19 July 2024. End dates of the text of 2012: 91 FR 1695 of 15 January 2026, as law firms and
// trade associations report it: 19 May 2026 for substances, 19 November 2027 for mixtures.
describe('29 CFR 1910.1200 by date', () => {
  it('is answered from the day on which the text held takes effect', async () => {
    expect(await answered('us-hcs', '2024-07-19')).toBe(true);
    expect(await refused('us-hcs', '2024-07-18')).toContain('in force since 2024-07-19');
  });

  it('is refused with the text of 2012 by name and how long it may be used', async () => {
    const said = await refused('us-hcs', '2020-01-01');
    expect(said).toContain('is held for 2020-01-01');
    expect(said).toContain('29 CFR 1910.1200 of 2024 (89 FR 44144)');
    expect(said).toContain('not held: 29 CFR 1910.1200 of 2012 (77 FR 17574)');
    expect(said).toContain('for substances until 2026-05-19 and for mixtures until 2027-11-19');
  });

  it('names no text for a day on which that of 2012 had no effect', async () => {
    // 77 FR 17574 was published on 26 March 2012.
    expect(await refused('us-hcs', '2012-03-25')).not.toContain('not held');
  });
});

// EUR-Lex numbers a consolidated text by its date: 02008R1272-20260501 is that of 1 May 2026.
describe('Regulation (EC) No 1272/2008 by date', () => {
  it('is answered from the date of the consolidated text that was read', async () => {
    expect(await answered('eu-clp', '2026-05-01')).toBe(true);
    const said = await refused('eu-clp', '2026-04-30');
    expect(said).toContain('in force since 2026-05-01');
    expect(said).toContain('02008R1272-20260501');
    expect(said).toContain('not held: Regulation (EC) No 1272/2008 in its texts before that of 1 May 2026');
  });

  it('names no earlier text for a day before the regulation was made, 16 December 2008', async () => {
    expect(await refused('eu-clp', '2008-12-15')).not.toContain('not held');
  });
});

// The UN text has no date of effect; Rev. 10 is of 2023, Rev. 11 of 2025.
describe('UN GHS by date', () => {
  it('is refused for the time of Rev. 10 and answered after Rev. 11', async () => {
    const said = await refused('un-ghs', '2024-06-01');
    expect(said).toContain('UN GHS Rev. 11');
    expect(said).toContain('not held: UN GHS Rev. 10');
    expect(await answered('un-ghs', '2026-01-01')).toBe(true);
  });
});
