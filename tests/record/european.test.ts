import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readEc, readRegistration, readUfi } from '../../src/record/_european.ts';

describe('a unique formula identifier', () => {
  // Identifiers printed as examples by Wikipedia (English, German and Russian articles) and by the European Chemicals
  // Agency; E600-… from memory of the Agency's guidance.
  it.each(['N1QV-R02N-J00M-WQD5', 'R3NN-3KVT-2XSG-W43J', 'E600-30P1-S00Y-5079'])('%s is right', text => {
    expect(readUfi(text)).toMatchObject({ ok: true, value: text });
    expect(readUfi(`UFI: ${text.toLowerCase().replaceAll('-', ' ')}`)).toMatchObject({ value: text });
  });

  it('is refused with any one character changed', () => {
    const text = 'N1QV-R02N-J00M-WQD5';
    for (let at = 0; at < text.length; at++) {
      if (text[at] === '-') continue;
      const other = text[at] === '7' ? '8' : '7';
      expect(readUfi(text.slice(0, at) + other + text.slice(at + 1)), `${at}`).toMatchObject({
        ok: false,
        code: 'check-digit',
      });
    }
    expect(readUfi('B1QV-R02N-J00M-WQD5')).toMatchObject({ ok: false });
    expect(readUfi('N1QV-R02N-J00M')).toMatchObject({ ok: false });
  });
});

describe('an EC number', () => {
  // CLP Annex VI Table 3.
  it('is right for every number of the harmonised table', () => {
    const table = readFileSync('hazard-data/substances/harmonised.tsv', 'utf8').split('\n').slice(1);
    const numbers = table.flatMap(line => (line.split('\t')[2] ?? '').match(/\d{3}-\d{3}-\d/gu) ?? []);
    expect(numbers.length).toBeGreaterThan(4000);
    for (const number of numbers) expect(readEc(number), number).toMatchObject({ ok: true });
  });

  it('is refused where its last digit is another', () => {
    expect(readEc('215-185-6')).toMatchObject({ ok: false, code: 'check-digit' });
    expect(readEc('2151855')).toMatchObject({ ok: false });
  });
});

describe('a registration number', () => {
  it('may lack its last four digits', () => {
    expect(readRegistration('01-2119457892-27')).toMatchObject({ ok: true });
    expect(readRegistration('01-2119457892-27-0000')).toMatchObject({ ok: true });
    expect(readRegistration('2119457892')).toMatchObject({ ok: false });
  });
});
