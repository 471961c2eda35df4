import { describe, expect, it } from 'vitest';
import type { Hazard } from '../../src/notation/hazard.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { printHazard } from '../../src/notation/print-hazard.ts';

const hazard = (text: string): Hazard => {
  const read = parseHazard(text);
  if (!read.ok) throw new Error(`${text}: ${read.message}; ${read.hint}`);
  return read.value;
};

const refusal = (text: string): { message: string; hint: string } => {
  const read = parseHazard(text);
  if (read.ok) throw new Error(`${text} was read`);
  return read;
};

// H-codes: CLP Annex III Part 1 and UN GHS Annex 3 section 1; EUH380 to EUH451: Delegated Regulation (EU) 2023/707.
describe('the H-code that follows from class and category', () => {
  it.each([
    ['Skin Corr. 1', 'H314'],
    ['Skin Corr. 1B', 'H314'],
    ['Skin Irrit. 2', 'H315'],
    ['Skin Irrit. 3', 'H316'],
    ['Eye Dam. 1', 'H318'],
    ['Eye Irrit. 2', 'H319'],
    ['Eye Irrit. 2A', 'H319'],
    ['Eye Irrit. 2B', 'H320'],
    ['Acute Tox. 1 (oral)', 'H300'],
    ['Acute Tox. 2 (dermal)', 'H310'],
    ['Acute Tox. 3 (inhalation)', 'H331'],
    ['Acute Tox. 4 (dermal)', 'H312'],
    ['Acute Tox. 5 (inhalation)', 'H333'],
    ['STOT SE 3 (respiratory irritation)', 'H335'],
    ['STOT SE 3 (narcotic effects)', 'H336'],
    ['STOT SE 1', 'H370'],
    ['STOT RE 2 (kidney; oral)', 'H373'],
    ['Resp. Sens. 1A', 'H334'],
    ['Skin Sens. 1B', 'H317'],
    ['Muta. 2', 'H341'],
    ['Carc. 1A', 'H350'],
    ['Repr. 1B', 'H360'],
    ['Repr. 2', 'H361'],
    ['Lact.', 'H362'],
    ['Asp. Tox. 2', 'H305'],
    ['Flam. Gas 1', 'H220'],
    ['Flam. Gas 1B', 'H221'],
    ['Chem. Unst. Gas B', 'H231'],
    ['Pyr. Gas', 'H232'],
    ['Aerosol 1', 'H222'],
    ['Aerosol 3', 'H229'],
    ['Chem. under Press. 2', 'H283'],
    ['Ox. Gas 1', 'H270'],
    ['Press. Gas (Comp.)', 'H280'],
    ['Press. Gas (Ref. Liq.)', 'H281'],
    ['Flam. Liq. 1', 'H224'],
    ['Flam. Liq. 4', 'H227'],
    ['Flam. Sol. 2', 'H228'],
    ['Self-react. B', 'H241'],
    ['Self-react. CD', 'H242'],
    ['Org. Perox. EF', 'H242'],
    ['Pyr. Sol. 1', 'H250'],
    ['Self-heat. 2', 'H252'],
    ['Water-react. 1', 'H260'],
    ['Ox. Liq. 1', 'H271'],
    ['Ox. Sol. 3', 'H272'],
    ['Met. Corr. 1', 'H290'],
    ['Unst. Expl.', 'H200'],
    ['Expl. 1.4', 'H204'],
    ['Desens. Expl. 3', 'H207'],
    ['Aquatic Acute 3', 'H402'],
    ['Aquatic Chronic 4', 'H413'],
    ['Ozone 1', 'H420'],
    ['ED HH 2', 'EUH381'],
    ['ED ENV 1', 'EUH430'],
    ['PBT', 'EUH440'],
    ['vPvB', 'EUH441'],
    ['PMT', 'EUH450'],
    ['vPvM', 'EUH451'],
  ])('%s: %s', (text, statement) => {
    expect(hazard(text).statement).toBe(statement);
    expect(printHazard(hazard(text))).toBe(text);
  });

  it.each([
    'Press. Gas',
    'Expl. 1.6',
    'Org. Perox. G',
    'Comb. Dust',
    'Simple Asphyx.',
    'Acute Tox. 4',
    'STOT SE 3',
  ])('none from %s', text =>
    expect(hazard(text)).toMatchObject({ code: text, statement: null, route: null, effect: null }),
  );
});

describe('brackets', () => {
  it('reads route and form', () => {
    expect(hazard('Acute Tox. 3 (inhalation: vapour)')).toMatchObject({
      code: 'Acute Tox. 3',
      hazardClass: 'Acute Tox.',
      category: '3',
      route: 'inhalation',
      form: 'vapour',
      statement: 'H331',
    });
    expect(hazard('Acute Tox. 3 (inhalation: vapor)').form).toBe('vapour');
    expect(hazard('Acute Tox. 3 (inhalation: dust)').form).toBe('mist');
    expect(hazard('Acute Tox. 3 (inhalation: dusts or mists)').form).toBe('mist');
    expect(hazard('Acute Tox. 3 (inhalation, gas)').form).toBe('gas');
  });

  it('reads organs and route of STOT, in the notation and as Table 3 prints them', () => {
    expect(hazard('STOT RE 2 (kidney; oral)')).toMatchObject({ organs: ['kidney'], route: 'oral' });
    const printed = hazard('STOT RE 1; H372 (inhalation) (liver, thymus, spleen)');
    expect(printed).toMatchObject({
      organs: ['liver', 'thymus', 'spleen'],
      route: 'inhalation',
      statement: 'H372',
    });
    expect(printHazard(printed)).toBe('STOT RE 1 (liver, thymus, spleen; inhalation)');
  });

  it('reads the route of a carcinogen', () => {
    expect(hazard('Carc. 2; H351 (inhalation)')).toMatchObject({ route: 'inhalation', statement: 'H351' });
  });
});

describe('a written H-code', () => {
  it.each([
    'Repr. 1B; H360FD',
    'Repr. 2; H361fd',
    'Carc. 1B; H350i',
    'Self-heat. 1; H252',
    'Press. Gas; H281',
  ])('stays: %s', text => {
    expect(hazard(text).statement).toBe(text.split('; ')[1]);
    expect(printHazard(hazard(text))).toBe(text);
  });

  it.each([
    ['STOT SE 3; H335', 'STOT SE 3 (respiratory irritation)'],
    ['STOT SE 3; H336', 'STOT SE 3 (narcotic effects)'],
    ['Lact.; H362', 'Lact.'],
    ['Acute Tox. 3 *; H301', 'Acute Tox. 3 * (oral)'],
    ['Acute Tox. 3; H311', 'Acute Tox. 3 (dermal)'],
    ['Acute Tox. 2 *;H330', 'Acute Tox. 2 * (inhalation)'],
    ['STOT RE 2 *; H373 **', 'STOT RE 2 *'],
    ['Repr. 1B; H360D ***', 'Repr. 1B; H360D'],
    ['Org. Perox. C ****; H242', 'Org. Perox. C'],
  ])('says route or effect: %s is %s', (text, printed) => expect(printHazard(hazard(text))).toBe(printed));

  it('marks minimum classifications alone as such', () => {
    expect(hazard('Acute Tox. 4 *').minimum).toBe(true);
    expect(hazard('Acute Tox. 4 (oral) *').minimum).toBe(true);
    expect(hazard('STOT RE 1; H372 **').minimum).toBe(false);
    expect(hazard('Expl. 1.1 ****').minimum).toBe(false);
  });
});

describe('what cannot be read', () => {
  it.each([
    ['Skin Cor. 1B', 'Skin Corr. 1B'],
    ['skin corr. 1b', 'Skin Corr. 1B'],
    ['Skin Corr 1B', 'Skin Corr. 1B'],
    ['Eye Damage 1', 'Eye Dam. 1'],
    ['Aquatic Cronic 2', 'Aquatic Chronic 2'],
    ['Skin Corr. 3', '1, 1A, 1B, 1C'],
    ['Flam. Liq. 5', '1, 2, 3, 4'],
    ['Skin Sens.', '1, 1A, 1B'],
    ['H314', 'Skin Corr. 1B'],
    ['Skin Corr. 1B; H315', 'H314'],
    ['Acute Tox. 4; H301', 'H302'],
    ['Acute Tox. 4 (dermal); H302', 'oral'],
    ['Acute Tox. 4 (eye)', 'oral'],
    ['Acute Tox. 4 (oral) (dermal)', 'one hazard for each route'],
    ['STOT SE 3 (narcosis)', 'narcotic effects'],
    ['STOT SE 3 (respiratory irritation; narcotic effects)', 'one hazard for each effect'],
    ['STOT RE 2 (inhalation: vapour)', '(inhalation)'],
    ['Skin Corr. 1B (oral)', 'without (oral)'],
    ['Press. Gas (Compr.)', 'Comp.'],
    ['Repr. 1B; H360D; H360F', 'one hazard'],
    ['Repr. 1B;', 'Repr. 1B'],
    ['STOT RE 2 ()', 'leave the brackets out'],
    ['STOT RE 2 (kidney,)', 'kidney, liver'],
    ['', 'Annex VI'],
    ['water', 'Annex VI'],
  ])('%s: hint %s', (text, hint) => {
    const refused = refusal(text);
    expect(refused.hint).toContain(hint);
    expect(refused.message).not.toBe('');
  });
});
