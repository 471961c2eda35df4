import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/case.ts';
import { demoWith, inProcess, put, workshop } from '../cli/_command.ts';
import { decodeAll } from '../support/decode.ts';
import { canvasOf, type Dots, oneBit } from '../support/one-bit.ts';
import { extractText } from '../support/render.ts';

const folder = workshop();
const record = join(folder, 'patio-cleaner.yaml');
const call = (...args: string[]) => inProcess(run, [record, '--out', folder, ...args]);
const bytes = (name: string) => new Uint8Array(readFileSync(join(folder, name)));
const batch = ['--lot', 'L2026A', '--use-by', '2027-12-31', '--bottle-tare', '62 g'];
const pallet = ['--pallet', '--sscc', '006141411234567890', '--size', '450x360x280mm'];
const dpiOf = { '203': 203.2, '300': 300, '600': 600 };

/** Runs through a row that are narrower than a symbol's widest element, the bars of a symbol among them. */
const barRuns = (dots: Dots, y: number) => {
  const runs: number[] = [];
  let length = 0;
  for (let x = 0; x < dots.width; x += 1) {
    if (dots.at(x, y)) length += 1;
    else if (length > 0) {
      runs.push(length);
      length = 0;
    }
  }
  return runs;
};

describe('case', () => {
  it.each(['203', '300', '600'] as const)(
    'is read back by a decoder from the dots of %s dpi',
    async printer => {
      const { status, err } = await call(...batch, '--printer', printer, '--no-marks');
      expect({ status, err }).toEqual({ status: 0, err: '' });
      const dots = await oneBit(bytes('case-bottle-946-L2026A.pdf'), dpiOf[printer]);
      const found = await decodeAll(canvasOf(dots, printer === '600' ? 1 : 2), ['ITF', 'Code128']);
      const elements = found.filter(({ identifier }) => identifier === ']C1').map(({ text }) => text);
      expect(elements.join('')).toContain('(01)10614141000415');
      expect(elements.join('')).toContain('(17)271231');
      expect(elements.join('')).toContain('(10)L2026A');
      expect(found.filter(({ format }) => format === 'ITF').map(({ text }) => text)).toEqual([
        '10614141000415',
      ]);
    },
  );

  it('says in words what the bars say, in reading order', async () => {
    await call(...batch);
    const [text] = await extractText(bytes('case-bottle-946-L2026A.pdf'));
    // 20 x 946 mL x 1.09 g/mL + 20 x 62 g + 0.9 kg = 22.7628 kg; 1 lb = 0.45359237 kg (arithmetic).
    for (const piece of ['Count 20 × 946 mL', 'L2026A', '2027-12-31', 'Gross 22.76 kg (50.2 lb)', 'DRAFT'])
      expect(text).toContain(piece);
    expect(text!.indexOf('Kerbstone')).toBeLessThan(text!.indexOf('L2026A'));
    expect(text!.indexOf('L2026A')).toBeLessThan(text!.indexOf('(01)'));
  });

  it('lays every bar of GS1-128 on whole multiples of the narrow one', async () => {
    await call(...batch);
    const dots = await oneBit(bytes('case-bottle-946-L2026A.pdf'), 203.2);
    // X of 0.5 mm is four dots of an eighth of a millimetre; a row through the lowest symbol.
    const runs = barRuns(dots, Math.round(dots.height - 20 * 8));
    expect(runs.length).toBeGreaterThan(20);
    expect(runs.filter(length => length % 4 !== 0)).toEqual([]);
  });

  it('prints no gross mass that is not known', async () => {
    const path = put(folder, 'no-tare.yaml', demoWith([', tare: 62 g', '']));
    const out = join(folder, 'no-tare');
    const { status, err } = await inProcess(run, [path, '--out', out, '--lot', 'L1']);
    expect(status).toBe(0);
    expect(err).toMatch(/empty pack.*no gross mass/);
    const [text] = await extractText(new Uint8Array(readFileSync(join(out, 'case-bottle-946-L1.pdf'))));
    expect(text).not.toContain('Gross');
    expect(text).toContain('Net 20.62 kg');
  });

  it.each([
    ['gtin: "10614141000415"', 'gtin: "10614141000422"', /10614141000415/, 1],
    // The record itself is refused.
    ['gtin: "10614141000415"', 'gtin: "00614141000418"', /also that of the pack/, 2],
  ])('refuses %s turned to %s', async (from, to, message, refused) => {
    const name = `wrong-${to.replace(/\D/g, '')}`;
    const path = put(folder, `${name}.yaml`, demoWith([from, to]));
    const out = join(folder, name);
    const { status, err } = await inProcess(run, [path, '--out', out, ...batch]);
    expect(status).toBe(refused);
    expect(err).toMatch(message);
    expect(existsSync(join(out, 'case-bottle-946-L2026A.pdf'))).toBe(false);
  });

  it.each([
    [['--lot', 'LOT 7'], /“ ”/],
    [['--lot', 'A'.repeat(21)], /1 to 20/],
    [['--made', '2027-01-01', '--use-by', '2026-01-01'], /expires before/],
    [['--pallet'], /SSCC/],
    [['--pallet', '--sscc', '006141411234567891'], /check digit/],
    [['--pallet', '--company-prefix', '614141', '--serial', '1'], /0614141/],
  ])('refuses %j with status 1', async (args, message) => {
    const { status, err } = await call(...args);
    expect(status).toBe(1);
    expect(err).toMatch(message);
  });

  it('draws no bars for a lot that belongs to no number', async () => {
    const path = put(folder, 'no-number.yaml', demoWith([', gtin: "10614141000415"', '']));
    const out = join(folder, 'no-number');
    const { status, err } = await inProcess(run, [path, '--out', out, ...batch]);
    expect(status).toBe(0);
    expect(err).toContain('the case has no GTIN');
    const dots = await oneBit(new Uint8Array(readFileSync(join(out, 'case-bottle-946-L2026A.pdf'))), 203.2);
    expect(await decodeAll(canvasOf(dots, 1), [])).toEqual([]);
    const [text] = await extractText(new Uint8Array(readFileSync(join(out, 'case-bottle-946-L2026A.pdf'))));
    expect(text).toContain('L2026A');
  });

  it('takes a long name in lines, and says which letter its face lacks', async () => {
    const long = `Kerbstone ${'Extra Strong Stone and Concrete '.repeat(4)}Cleaner`;
    const path = put(folder, 'long.yaml', demoWith(['name: Kerbstone Patio Cleaner', `name: ${long}`]));
    const { status } = await inProcess(run, [
      path,
      '--out',
      join(folder, 'long'),
      ...batch,
      ...pallet,
      '--arrows',
      '--limited-quantity',
    ]);
    expect(status).toBe(0);
    const foreign = put(folder, 'foreign.yaml', demoWith(['name: Kerbstone Patio Cleaner', 'name: 石']));
    const lacking = await inProcess(run, [foreign, '--out', join(folder, 'foreign'), ...batch]);
    expect(lacking.status).toBe(1);
    expect(lacking.err).toContain('石');
  });

  it.each([
    [['--size', '450x360']],
    [['--bottle-tare', '62']],
    [['--sscc', '12345']],
    [['--company-prefix', '0614141']],
    [['--layers', '0']],
    [['--printer', '204']],
  ])('takes %j for a wrong call', async args => {
    expect((await call(...args)).status).toBe(2);
  });
});

describe('case --pallet', () => {
  it('writes a logistic label with the SSCC lowest', async () => {
    const { status } = await call(...batch, ...pallet);
    expect(status).toBe(0);
    const dots = await oneBit(bytes('pallet-bottle-946.pdf'), 203.2);
    const found = await decodeAll(canvasOf(dots), ['Code128']);
    // 24 cases: six a layer, four layers of 280 mm under 1500 mm (arithmetic).
    expect(found.map(({ text }) => text).sort()).toEqual([
      '(00)006141411234567890',
      '(02)10614141000415(37)24',
      '(17)271231(10)L2026A',
    ]);
    const low: Dots = {
      ...dots,
      height: dots.height - 900,
      at: (x, y) => dots.at(x, y + 900),
    };
    expect((await decodeAll(canvasOf(low), ['Code128'])).map(({ text }) => text)).toEqual([
      '(00)006141411234567890',
    ]);
    const [text] = await extractText(bytes('pallet-bottle-946.pdf'));
    for (const title of ['SSCC', 'CONTENT', 'COUNT', 'USE BY OR EXPIRY', 'BATCH/LOT'])
      expect(text).toContain(title);
    const image = await loadImage(readFileSync(join(folder, 'pallet-bottle-946.svg')));
    expect(image.width).toBeGreaterThan(50);
  });

  it.each(['300'] as const)('fits at %s dpi, and says that bars come near the edge', async printer => {
    const { status, err } = await call(...batch, ...pallet, '--printer', printer);
    expect(status).toBe(0);
    expect(err).toContain('from the edge');
    const dots = await oneBit(bytes('pallet-bottle-946.pdf'), dpiOf[printer]);
    const found = await decodeAll(canvasOf(dots, 2), ['Code128']);
    expect(found.map(({ text }) => text)).toContain('(00)006141411234567890');
    expect(found).toHaveLength(3);
  });

  it('prints a long lot in words alone, and says so', async () => {
    const { status, err } = await call('--lot', 'LOT-2026-000117', '--use-by', '2027-12-31', ...pallet);
    expect(status).toBe(0);
    expect(err).toMatch(/\(10\) LOT-2026-000117 .* words alone/);
    const [text] = await extractText(bytes('pallet-bottle-946.pdf'));
    expect(text).toContain('LOT-2026-000117');
  });

  it('takes away a label of another batch that it cannot make again, and marks every file', async () => {
    const out = join(folder, 'batches');
    const made = (...args: string[]) => inProcess(run, [record, '--out', out, ...args]);
    expect((await made(...batch, ...pallet)).status).toBe(0);
    const { fingerprint, files } = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8'));
    expect(files).toHaveLength(5);
    for (const { name } of files) expect(readFileSync(join(out, name), 'latin1')).toContain(fingerprint);
    const { status, err } = await made('--lot', 'L2026B', '--pallet');
    expect(status).toBe(1);
    expect(err).toContain('pallet-bottle-946.pdf was no longer current');
    expect(existsSync(join(out, 'pallet-bottle-946.pdf'))).toBe(false);
  });

  it('makes the SSCC from prefix and serial', async () => {
    const { out } = await call('--pallet', '--company-prefix', '0614141', '--serial', '123456789', '--json');
    // Figure 6.6.5-1 of GS1 General Specifications 20.0.
    expect(JSON.parse(out)).toMatchObject({ schema: 'labelwright/case/1', sscc: '006141411234567890' });
  });
});

describe('marks', () => {
  it('of a limited quantity have sides of 100 mm and a border of 2 mm', async () => {
    const { status, err } = await call(...batch, '--limited-quantity', '--arrows');
    expect(status).toBe(0);
    expect(err).toContain('172.315');
    const dots = await oneBit(bytes('limited-quantity-bottle-946.pdf'), 203.2);
    // A row through the middle points: border, white, border.
    const rows = Array.from({ length: dots.height }, (_, y) => {
      const black = Array.from({ length: dots.width }, (_, x) => x).filter(x => dots.at(x, y));
      return { y, from: black[0] ?? dots.width, to: black.at(-1) ?? 0 };
    });
    const widest = rows.reduce((best, row) => (row.to - row.from > best.to - best.from ? row : best));
    // From point to point, in eighths of a millimetre: 100 mm times the root of 2 (49 CFR 172.315(a)(2)).
    expect((widest.to - widest.from + 1) / 8).toBeGreaterThanOrEqual(141.42);
    expect((widest.to - widest.from + 1) / 8).toBeLessThanOrEqual(142);
    // A quarter of the way down the flank the border is cut at 45 degrees: 2 mm times the root of 2 across.
    const y = widest.y - 100;
    let border = 0;
    for (let x = rows[y]!.from; dots.at(x, y); x += 1) border += 1;
    expect(border / 8 / Math.SQRT2).toBeGreaterThanOrEqual(2);
    // White in the middle, black at top and bottom.
    const middle = Math.round(dots.width / 2);
    expect(dots.at(middle, widest.y)).toBe(false);
    expect(dots.at(middle, widest.y - 500)).toBe(true);
    expect(dots.at(middle, widest.y + 500)).toBe(true);
    expect(existsSync(join(folder, 'arrows-bottle-946.pdf'))).toBe(true);
  });

  it('of orientation are missed on a case of liquids', async () => {
    // 49 CFR 172.312(a)(2): two opposite vertical sides; (c)(5) frees sealed inner packagings up to 500 mL.
    const { status, err } = await call(...batch, '--limited-quantity');
    expect(status).toBe(0);
    expect(err).toContain('two opposite sides');
    expect(err).toContain('172.312(c)(5)');
    expect((await call(...batch, '--limited-quantity', '--arrows')).err).not.toContain('--arrows');
  });

  it('are reduced on a low case alone, and refused above 30 kg', async () => {
    const low = await call(...batch, '--limited-quantity', '--size', '450x360x120mm');
    expect(low.err).toContain('reduced to sides of 84 mm');
    // 49 CFR 173.154(b): not over 30 kg gross.
    const heavy = await call('--lot', 'L1', '--limited-quantity', '--bottle-tare', '500 g');
    expect(heavy.status).toBe(1);
    expect(heavy.err).toContain('30 kg');
    expect(existsSync(join(folder, 'limited-quantity-bottle-946.pdf'))).toBe(false);
  });
});

describe('marks by the answer of transport', () => {
  const made = async (name: string, changes: readonly (readonly [string, string])[], ...more: string[]) => {
    const path = put(folder, `${name}.yaml`, demoWith(...changes));
    const out = join(folder, name);
    const result = await inProcess(run, [path, '--out', out, ...batch, ...more]);
    const has = (mark: string) => existsSync(join(out, `${mark}-bottle-946.pdf`));
    return {
      ...result,
      has,
      text: (mark: string) => extractText(new Uint8Array(readFileSync(join(out, `${mark}-bottle-946.pdf`)))),
    };
  };

  // 49 CFR 173.154(b)(1): Class 8, packing group II, inner packagings up to 1 L.
  it('are those of a limited quantity up to its inner limit', async () => {
    const { status, err, has } = await made('limited', []);
    expect([status, has('limited-quantity'), has('arrows'), has('shipping-name')]).toEqual([
      0,
      true,
      true,
      false,
    ]);
    expect(err).toContain('UN1791, Hypochlorite solutions, 8, II');
  });

  it('are number and name above it', async () => {
    const { status, err, has, text } = await made('full', [['contents: 946 mL', 'contents: 1.2 L']]);
    expect([status, has('limited-quantity'), has('arrows'), has('shipping-name')]).toEqual([
      0,
      false,
      true,
      true,
    ]);
    expect(err).toContain('172.400');
    const [page] = await text('shipping-name');
    expect(page).toContain('UN1791');
    expect(page).toContain('Hypochlorite solutions');
    expect(page).toContain('DRAFT');
  });

  // 49 CFR 172.301(a)(1): characters of the number at least 6 mm high up to 30 kg net.
  it('have a number of 6 mm and more', async () => {
    await made('height', [['contents: 946 mL', 'contents: 1.2 L']]);
    const dots = await oneBit(
      new Uint8Array(readFileSync(join(folder, 'height', 'shipping-name-bottle-946.pdf'))),
      203.2,
    );
    const black = Array.from({ length: dots.height }, (_, y) =>
      Array.from({ length: dots.width }, (_, x) => dots.at(x, y)).some(Boolean),
    );
    const first = black.indexOf(true);
    const height = black.indexOf(false, first) - first;
    expect(height / 8).toBeGreaterThanOrEqual(6);
  });

  it('are left out where the call says so, or where transport is not decided', async () => {
    const without = await made('without', [], '--no-marks');
    expect([without.has('limited-quantity'), without.has('arrows')]).toEqual([false, false]);
  });

  // Without a flash point Class 3 is open (49 CFR 173.120(a)).
  it('are not drawn where transport is not decided', async () => {
    const demo = readFileSync(join(folder, 'degreaser.yaml'), 'utf8').replace(/ {2}flash-point: .*\n/, '');
    const path = put(folder, 'no-flash.yaml', demo);
    const out = join(folder, 'no-flash');
    const { status, err } = await inProcess(run, [path, '--out', out, ...batch]);
    expect([status, err.includes('is not decided')]).toEqual([0, true]);
    for (const mark of ['limited-quantity', 'arrows', 'shipping-name'])
      expect(existsSync(join(out, `${mark}-bottle-500.pdf`))).toBe(false);
  });

  it('are questioned where the call asks for more than transport allows', async () => {
    const { err } = await made(
      'asked',
      [['contents: 946 mL', 'contents: 1.2 L']],
      '--limited-quantity',
      '--arrows',
    );
    expect(err).toContain('the pack is no limited quantity');
  });
});
