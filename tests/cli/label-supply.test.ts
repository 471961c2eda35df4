import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { demoWith, inProcess, put, workshop } from './_command.ts';

const maker = `
  name: Tallow Lane Batch Works
  address: [48 Tallow Lane]
  telephone: +1 216 555 0142
  emergency: {telephone: +1 216 555 0199, hours: 24 hours}`;
const supplier = `
  eu-supplier: {name: Example Import Ltd, address: [1 Sample Street, Dublin], telephone: +353 1 555 0100}`;
const DIE = '{width: 130 mm, height: 120 mm, corner-radius: 3 mm}';

interface Wanted {
  readonly contents?: string;
  readonly die?: string;
  readonly container?: string;
  readonly more?: string;
  readonly from?: string;
  readonly purpose?: string;
  readonly args?: readonly string[];
}

interface Text {
  readonly role: string;
  readonly text: string;
  readonly xHeight: number;
  readonly leading: number;
  readonly minimum: { readonly xHeight?: number; readonly cite: string };
}

async function made(wanted: Wanted = {}) {
  const { contents = '946 mL', die = DIE, container, more = '', from = supplier } = wanted;
  const { purpose = 'eu-supply', args = [] } = wanted;
  const folder = workshop();
  const record = demoWith(
    ['maker: maker.yaml', `maker:${maker}${from}${more}`],
    ['contents: 946 mL', `contents: ${contents}`],
    [DIE, die],
    ...(container ? [['child-resistant: true', `child-resistant: true, ${container}`] as const] : []),
  );
  const call = [put(folder, 'p.yaml', record), '--for', purpose, '--out', join(folder, 'made'), '--json'];
  const { status, out, err } = await inProcess(label, [...call, ...args]);
  const json = out === '' ? null : JSON.parse(out);
  return {
    status,
    err,
    json,
    texts: (json?.texts ?? []) as readonly Text[],
    codes: (json?.findings ?? []).map(({ code }: { code: string }) => code) as readonly string[],
  };
}

const UFI = '\nufi: N1QV-R02N-J00M-WQD5';
const LATER = ['--as-of', '2028-01-01'];

describe('the label for supply in the Union', () => {
  // CLP Article 17(1): supplier, quantity, identifier with the substances of 18(3)(b), and the elements.
  it('bears what Article 17 asks for', async () => {
    const { status, texts, json, codes } = await made({ more: UFI });
    expect(status).toBe(0);
    const of = (role: string) => texts.filter(text => text.role === role).map(({ text }) => text);
    expect(of('supplier').join(' ')).toMatch(/Example Import Ltd.*1 Sample Street.*\+353 1 555 0100/);
    expect(of('supplier').join(' ')).not.toContain('216 555');
    // Council Directive 80/181/EEC, from memory: metric units.
    expect(of('net-contents')).toEqual(['946 mL']);
    expect(of('substances')).toEqual([
      'Contains: sodium hypochlorite; amine oxide surfactant, 30 %; sodium hydroxide.',
    ]);
    expect(of('signal-word')).toEqual(['Danger']);
    // CLP Annex II, 1.2.1: chlorine from acids.
    expect(of('supplemental')).toContain('Contact with acids liberates toxic gas.');
    // CLP Annex VIII, Part A, 5.3, from memory: the letters UFI, a colon, and the identifier.
    expect(of('ufi')).toEqual(['UFI: N1QV-R02N-J00M-WQD5']);
    expect(codes).toContain('label-language');
    expect(codes).not.toContain('ufi-missing');
    for (const pictogram of json.pictograms) {
      expect(pictogram.side).toBeGreaterThanOrEqual(16 - 1e-3);
      expect(pictogram.minimum).toEqual({ side: 10, cite: 'CLP Annex I, 1.2.1.4, Table 1.3' });
      // Between corners a square is wider by the root of two.
      expect((pictogram.box[2] - pictogram.box[0]) / pictogram.side).toBeCloseTo(Math.SQRT2, 2);
    }
  });

  it('asks for the identifier, and is refused without a supplier', async () => {
    expect((await made()).codes).toContain('ufi-missing');
    const { status, json, err } = await made({ from: '' });
    expect(status).toBe(1);
    expect(json.file).toBeNull();
    expect(err).toContain('supplier established in the Union');
    expect(err).toContain('CLP Articles 4(11) and 17(1)(a)');
  });

  // CLP Annex II, 3.1.1.1 and 3.2.1; the pack says that its closure is child-resistant.
  it('asks for a tactile warning until the pack answers', async () => {
    const sold = '\nsold-to: {users: [consumers], markets: [eu]}';
    expect((await made({ more: sold })).codes).toContain('tactile-warning');
    expect((await made({ more: sold, container: 'tactile-warning: true' })).codes).not.toContain(
      'tactile-warning',
    );
    const workplace = '\nsold-to: {users: [workplace], markets: [eu]}';
    expect((await made({ more: workplace })).codes).not.toContain('tactile-warning');
    expect((await made({ more: sold })).codes).not.toContain('child-resistant-packaging');
  });
});

// CLP Annex I, 1.2.1.4, Table 1.3 on finished labels, each row at its end and beyond, with the heights of
// Regulation (EU) 2024/2865 on the day from which they apply.
describe('sizes of the finished label', () => {
  it.each([
    ['500 mL', '{width: 150 mm, height: 160 mm}', 16, 10, 1.2],
    ['501 mL', '{width: 150 mm, height: 160 mm}', 16, 10, 1.4],
    ['3 L', '{width: 150 mm, height: 160 mm}', 16, 10, 1.4],
    ['3.01 L', '{width: 180 mm, height: 190 mm}', 23, 23, 1.8],
    ['50 L', '{width: 180 mm, height: 190 mm}', 23, 23, 1.8],
    ['50.1 L', '{width: 220 mm, height: 230 mm}', 32, 32, 2],
    ['500 L', '{width: 220 mm, height: 230 mm}', 32, 32, 2],
    ['501 L', '{width: 260 mm, height: 250 mm}', 46, 46, 2],
  ])('%s', async (contents, die, wanted, least, xHeight) => {
    const { status, texts, json } = await made({ contents, die, args: LATER });
    expect(status).toBe(0);
    for (const { side, minimum } of json.pictograms) {
      expect(side).toBeGreaterThanOrEqual(wanted - 1e-3);
      expect(minimum.side).toBe(least);
    }
    const asked = texts.filter(({ minimum }) => minimum.cite.includes('2024/2865'));
    expect(new Set(asked.map(({ role }) => role))).toEqual(
      new Set([
        'product-identifier',
        'signal-word',
        'hazard-statement',
        'substances',
        'precautions',
        'supplemental',
        'supplier',
        'net-contents',
      ]),
    );
    for (const text of asked) {
      expect(text.minimum.xHeight).toBe(xHeight);
      expect(text.xHeight).toBeGreaterThanOrEqual(xHeight);
      expect(text.leading).toBeGreaterThanOrEqual(1.2);
    }
  });

  it('tells the day before what the label will lack', async () => {
    const { json } = await made({ contents: '5 L', args: ['--as-of', '2027-12-31'] });
    const told = json.findings.find(({ code }: { code: string }) => code === 'letters-later');
    expect(told).toMatchObject({ severity: 'warning' });
    expect(told.message).toContain('from 2028-01-01 on letters need an x-height of 1.8 mm');
    expect(json.findings.map(({ code }: { code: string }) => code)).not.toContain('label-small');
  });

  it('goes by the capacity, and warns where only contents near the end of a row are known', async () => {
    const die = '{width: 180 mm, height: 190 mm}';
    expect((await made({ contents: '2.9 L', die })).codes).toContain('capacity-near');
    const known = await made({ contents: '2.9 L', die, container: 'capacity: 3.1 L' });
    expect(known.codes).not.toContain('capacity-near');
    for (const { minimum } of known.json.pictograms) expect(minimum.side).toBe(23);
  });

  it('a small label takes pictograms under 16 mm, never under 10, and says so', async () => {
    const { status, json, codes } = await made({ die: '{width: 80 mm, height: 90 mm}' });
    expect(status).toBe(0);
    const sides = json.pictograms.map(({ side }: { side: number }) => side);
    expect(Math.min(...sides)).toBeGreaterThanOrEqual(10);
    expect(Math.min(...sides)).toBeLessThan(16);
    expect(codes).toContain('pictogram-small');
  });

  it.each([
    // Two sides that the table does not allow, and text that does not fit.
    ['5 L', 70, 60],
    ['5 L', 80, 90],
    ['946 mL', 60, 60],
  ])('a label of %s on %s x %s mm is refused with dies that hold it', async (contents, width, height) => {
    const refused = await made({ contents, die: `{width: ${width} mm, height: ${height} mm}`, args: LATER });
    expect(refused.status).toBe(1);
    const { outlines, cite } = refused.json.findings.find(
      ({ code }: { code: string }) => code === 'label-too-small',
    );
    expect(cite).toContain('Table 1.3');
    expect(outlines.length).toBeGreaterThan(0);
    for (const each of outlines) {
      const die = `{width: ${each.width / each.panels} mm, height: ${each.height} mm, panels: ${each.panels}}`;
      expect((await made({ contents, die, args: LATER })).status).toBe(0);
    }
  });
});

// 29 CFR 1910.1200(f)(6)(ii): product identifier and words, pictures or symbols with general information on hazards.
describe('the label of a tank', () => {
  it('is a sign with name, signal word, pictograms and hazard statements', async () => {
    const { status, json, texts } = await made({ purpose: 'tank' });
    expect(status).toBe(0);
    expect(json).toMatchObject({ file: 'label-tank.pdf', die: { width: 254, height: 190.5 }, barCode: null });
    const roles = new Set(texts.map(({ role }) => role));
    for (const role of ['product-identifier', 'signal-word', 'hazard-statement', 'precautions'])
      expect(roles).toContain(role);
    expect(roles).not.toContain('supplier');
    expect(json.pictograms.length).toBeGreaterThan(0);
    expect(
      Math.min(...texts.filter(({ role }) => role !== 'draft').map(text => text.xHeight)),
    ).toBeGreaterThan(3);
  });

  it('leaves precautions out for want of room, and says so', async () => {
    const { status, codes, texts } = await made({ purpose: 'tank', args: ['--size', '70x60mm'] });
    expect(status).toBe(0);
    expect(codes).toContain('without-precautions');
    expect(texts.some(({ role }) => role === 'precautions')).toBe(false);
    expect(texts.some(({ role }) => role === 'hazard-statement')).toBe(true);
  });

  it('may have black frames, which a shipped container may not', async () => {
    const args = ['--target', 'printer-203'];
    expect((await made({ purpose: 'tank', args })).status).toBe(0);
    expect((await made({ purpose: 'us-workplace', args })).status).toBe(1);
  });

  it('is refused on a size that does not hold it', async () => {
    const { status, json } = await made({ purpose: 'tank', args: ['--size', '20x15mm'] });
    expect(status).toBe(1);
    expect(json.findings.find(({ code }: { code: string }) => code === 'label-too-small').cite).toBe(
      '29 CFR 1910.1200(f)(6)(ii)',
    );
  });
});

describe('a small package', () => {
  const small = (take: string) =>
    `${DIE}\n    eu-small-package: {take: ${take}, reason: its markets speak three languages}`;
  const codesOf = ({ texts }: Awaited<ReturnType<typeof made>>, role: string) =>
    texts.filter(text => text.role === role).map(({ text }) => text);

  // CLP Annex I, 1.5.2.1.1 items 16 and 17 (aquatic), 1.5.2.1.3 (corrosive to metals); corrosion of skin is in no list.
  it('of 125 mL or less goes without the statements of the listed classes alone, and says which', async () => {
    const whole = await made({ contents: '100 mL', more: UFI });
    const reduced = await made({ contents: '100 mL', die: small('reduced'), more: UFI });
    expect(reduced.status).toBe(0);
    expect(codesOf(whole, 'hazard-statement').join(' ')).toMatch(
      /corrosive to metals.*severe skin burns.*toxic to aquatic life/,
    );
    expect(codesOf(reduced, 'hazard-statement')).toEqual(['Causes severe skin burns and eye damage.']);
    expect(codesOf(reduced, 'signal-word')).toEqual(['Danger']);
    const signs = ({ json }: typeof whole) => json.pictograms.map(({ code }: { code: string }) => code);
    expect(signs(reduced)).toEqual(signs(whole));
    const words = (label: typeof whole) => codesOf(label, 'precautions').join(' ');
    expect(words(whole)).toContain('Avoid release to the environment');
    expect(words(reduced)).not.toContain('Avoid release to the environment');
    expect(words(reduced)).toMatch(/if in eyes/i);
    expect(reduced.codes).toContain('small-package');
    expect(reduced.err).toContain('its markets speak three languages');
  });

  // CLP Article 17(2): in several languages the same details appear in all of them.
  it('leaves off in the second language what it leaves off in the first', async () => {
    const args = ['--language', 'en+es'];
    const words = (label: Awaited<ReturnType<typeof made>>) => codesOf(label, 'translation').join(' ');
    const whole = words(await made({ contents: '100 mL', more: UFI, args }));
    expect(whole).toMatch(/corrosivo para los metales.*organismos acu/);
    const reduced = words(await made({ contents: '100 mL', die: small('reduced'), more: UFI, args }));
    expect(reduced).toMatch(/quemaduras graves/);
    expect(reduced).not.toMatch(/corrosivo para los metales|organismos acu|Evitar su liberaci/);
  });

  it('of more is refused', async () => {
    const { status, codes } = await made({ contents: '250 mL', die: small('reduced'), more: UFI });
    expect([status, codes.includes('not-small')]).toEqual([1, true]);
  });

  // CLP Annex I, 1.5.1.2: pictograms, product identifier, name and telephone of the supplier.
  it('inside of an outer packaging bears the least, at any volume', async () => {
    const inner = await made({ contents: '250 mL', die: small('inner'), more: UFI });
    expect(inner.status).toBe(0);
    expect(codesOf(inner, 'hazard-statement')).toEqual([]);
    expect(codesOf(inner, 'precautions')).toEqual([]);
    expect(codesOf(inner, 'substances')[0]).toContain('sodium hypochlorite');
    expect(codesOf(inner, 'supplier').join()).toMatch(/Example Import Ltd.*\+353 1 555 0100/);
    expect(inner.json.pictograms.length).toBeGreaterThan(0);
    expect(inner.codes).toContain('small-package');
  });

  it('asks for a reason', async () => {
    const { status, err } = await made({ die: `${DIE}\n    eu-small-package: {take: inner}` });
    expect(status).toBe(2);
    expect(err).toContain('reason');
  });
});
