import { describe, expect, it } from 'vitest';
import { digitalLink } from '../../src/barcode/digital-link.ts';
import { matrixGeometry } from '../../src/barcode/matrix-geometry.ts';
import type { MatrixName } from '../../src/barcode/matrix-spec.ts';
import { encodeMatrix } from '../../src/barcode/symbols.ts';
import { decodeAll } from '../support/decode.ts';
import { canvasOf } from '../support/one-bit.ts';

describe('GS1 Digital Link', () => {
  it('is the example of the standard', () => {
    // GS1 Digital Link Standard: URI Syntax 1.2 (2021), examples, and the parsers of others that are tested with it.
    const link = digitalLink('9520123456788', [
      { ai: '17', value: '180426' },
      { ai: '21', value: '12345' },
      { ai: '10', value: 'ABC1' },
    ]);
    expect(link).toBe('https://id.gs1.org/01/09520123456788/10/ABC1/21/12345?17=180426');
  });

  it('writes what a path cannot hold in percent', () => {
    // The example of GS1's own parser: ABC%2F123.
    expect(digitalLink('09520123456788', [{ ai: '10', value: 'ABC/123' }])).toBe(
      'https://id.gs1.org/01/09520123456788/10/ABC%2F123',
    );
  });

  it('takes the domain of the maker and refuses a second key', () => {
    expect(digitalLink('614141000418', [], 'https://example.com')).toBe(
      'https://example.com/01/00614141000418',
    );
    expect(() => digitalLink('614141000418', [{ ai: '00', value: '006141411234567890' }])).toThrow(
      RangeError,
    );
  });
});

describe('two-dimensional symbols', () => {
  const link = 'https://id.gs1.org/01/09520123456788/10/ABC1';

  it.each<[MatrixName, 'QRCode' | 'DataMatrix', number]>([
    // Quiet zones: ISO/IEC 18004 (4 modules), ISO/IEC 16022 (1 module).
    ['GS1 Digital Link QR Code', 'QRCode', 4],
    ['GS1 Digital Link Data Matrix', 'DataMatrix', 1],
  ])('%s is read back by a decoder', async (name, format, zone) => {
    const symbol = await encodeMatrix(name, link);
    const geometry = matrixGeometry(symbol, 0.495);
    expect(geometry.width).toBeCloseTo((symbol.rows[0]!.length + 2 * zone) * 0.495, 9);
    const px = (length: number) => Math.round(length / 0.495);
    const dark = new Set(
      geometry.bars.flatMap(({ x, y, width }) =>
        Array.from({ length: px(width) }, (_, at) => `${px(x) + at} ${px(y)}`),
      ),
    );
    const dots = {
      width: px(geometry.width),
      height: px(geometry.height),
      at: (x: number, y: number) => dark.has(`${x} ${y}`),
    };
    const found = await decodeAll(canvasOf(dots, 6), [format]);
    expect(found.map(({ text }) => text)).toEqual([link]);
  });

  it('refuse a link with a wrong check digit, and sizes outside the range', async () => {
    await expect(
      encodeMatrix('GS1 Digital Link QR Code', 'https://id.gs1.org/01/09520123456789'),
    ).rejects.toThrow();
    const symbol = await encodeMatrix('GS1 Digital Link QR Code', link);
    expect(() => matrixGeometry(symbol, 0.39)).toThrow(RangeError);
    expect(() => matrixGeometry(symbol, 0.75)).toThrow(RangeError);
  });
});
