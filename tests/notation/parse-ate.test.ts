import { describe, expect, it } from 'vitest';
import { parseAte, parseAteItem, printAte } from '../../src/notation/parse-ate.ts';

describe('ATE values of a record', () => {
  it('reads every route and form with its unit', () => {
    const ate = parseAte({
      oral: '4400 mg/kg',
      dermal: '1100 mg/kg bw',
      gas: '500 ppm',
      vapour: '2.5 mg/L',
      mist: '0.5 mg/l',
    });
    if (!ate.ok) throw new Error(ate.message);
    const values = Object.fromEntries(Object.entries(ate.value).map(([key, value]) => [key, value?.value]));
    expect(values).toEqual({ oral: 4400, dermal: 1100, gas: 500, vapour: 2.5, mist: 0.5 });
    expect(ate.value.vapour?.exact.toFraction()).toBe('5/2');
    expect(printAte('gas', ate.value.gas!)).toBe('500 ppm');
  });

  it.each([
    [{ oral: '4400' }, '4400 mg/kg'],
    [{ oral: 4400 }, '4400 mg/kg'],
    [{ oral: '4400 mg/L' }, 'mg/kg'],
    [{ gas: '0.5 mg/L' }, 'ppm'],
    [{ oral: '> 2000 mg/kg' }, 'mg/kg'],
    [{ oral: '0 mg/kg' }, 'mg/kg'],
    [{ vapor: '2 mg/L' }, 'vapour'],
    [{ oral: null }, 'mg/kg'],
  ])('refuses %j: hint %s', (written, hint) => {
    expect(parseAte(written)).toMatchObject({ ok: false, hint: expect.stringContaining(hint) });
  });
});

// Wordings of the limits column of CLP Annex VI Table 3.
describe('ATE values of Annex VI', () => {
  it.each([
    ['oral: ATE = 890 mg/kg bw', 'oral', 890, null],
    ['dermal: ATE = 50 mg/kg bw', 'dermal', 50, null],
    ['inhalation: ATE = 0.75 mg/L dusts or mists', 'mist', 0.75, null],
    ['inhalation: ATE = 0.1 mg/l (dusts or mists)', 'mist', 0.1, null],
    ['inhalation: ATE = 2.65 mg/L vapours', 'vapour', 2.65, null],
    ['inhalation: ATE = 10 ppmV gases', 'gas', 10, null],
    ['inhalation: ATE = 10 ppmV', 'gas', 10, null],
    ['oral: ATE = 853 mg/kg bw (anhydrate)', 'oral', 853, 'anhydrate'],
  ])('%s', (text, key, value, of) => {
    expect(parseAteItem(text)).toMatchObject({ ok: true, value: { key, value: { value }, of } });
  });

  it.each([
    'inhalation: ATE = 0.1 mg/L',
    'oral: ATE = 5',
    'oral: ATE = 5 mg/kg bw vapours',
    'ATE = 5 mg/kg bw',
  ])('refuses %s', text => expect(parseAteItem(text).ok).toBe(false));
});
