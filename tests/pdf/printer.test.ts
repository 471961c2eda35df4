import { describe, expect, it } from 'vitest';
import type { Frame, FrameItem, Ink } from '../../src/layout/frame.ts';
import type { PdfProfile } from '../../src/pdf/profile.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';

const fonts = await loadFonts();

const bar = (fill: Ink): FrameItem => ({
  kind: 'path',
  tag: 'layout',
  fill,
  segments: [['M', 5, 5], ['L', 15, 5], ['L', 15, 25], ['L', 5, 25], ['Z']],
});

const write = (kind: PdfProfile['kind'], items: readonly FrameItem[], frame: Partial<Frame> = {}) =>
  writePdf(
    {
      frames: [{ width: 101.5, height: 152.25, bleed: 0, slug: 0, items, ...frame }],
      root: { type: 'Document', children: [] },
      title: 'case label',
      language: 'en-US',
      subject: 'case label',
      date: '2026-11-26T00:00:00Z',
      attachments: [],
    },
    fonts,
    { kind, version: '0' },
  );

const codes = async (bytes: Uint8Array) =>
  (await preflight(bytes, { kind: 'printer' })).map(({ code }) => code);

describe('a label for a roll printer', () => {
  it('is black on a page of its own size, without further boxes', async () => {
    const bytes = await write('printer', [bar('black'), bar('white')]);
    expect(await codes(bytes)).toEqual([]);
    const text = Buffer.from(bytes).toString('latin1');
    expect(text.startsWith('%PDF-1.4')).toBe(true);
    // 812 dots of an eighth of a millimetre across, 1218 along.
    expect(text).toMatch(/\/MediaBox \[ 0 0 287\.7165 431\.5748 \]/);
    expect(text).not.toMatch(/TrimBox|BleedBox|OCProperties|ExtGState/);
  });

  it.each<Ink>(['red', 'grey', 'tint', 'die'])('has no %s', async ink => {
    await expect(write('printer', [bar(ink)])).rejects.toThrow();
  });

  it('has no bleed', async () => {
    await expect(write('printer', [bar('black')], { bleed: 3 })).rejects.toThrow(/bleed/);
  });
});

describe('preflight of a roll printer', () => {
  it('finds the inks and boxes of a press label, and a tint of gray', async () => {
    const press = await codes(await write('label', [bar('black')]));
    expect(press).toContain('colour-operator');
    expect(press).toContain('ink-not-allowed');
    expect(press).toContain('page-boxes');
    expect(await codes(await write('sheet', [bar('tint')]))).toContain('ink-not-allowed');
    expect(await codes(await write('sheet', [bar('red')]))).toContain('colour-operator');
  });
});
