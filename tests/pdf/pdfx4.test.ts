import { PDFArray, PDFDict, PDFDocument, PDFName, PDFString } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { PagedDocument } from '../../src/layout/frame.ts';
import { pdfx4Faults } from '../../src/pdf/conformance/pdfx4.ts';
import { iccFault } from '../../src/pdf/icc.ts';
import { isRegistered } from '../../src/pdf/output-intent.ts';
import { type LabelProfile, profileFaults } from '../../src/pdf/profile.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { LABEL, labelDocument } from '../support/paged-documents.ts';
import { pressProfile } from '../support/press-profile.ts';
import { openPdf } from '../support/render.ts';

const fonts = await loadFonts();
const press = pressProfile();
const withProfile = (condition: string): LabelProfile => ({
  ...LABEL,
  iccProfile: { bytes: press, condition },
});
const written = await writePdf(labelDocument(fonts), fonts, withProfile('FOGRA39'));
const CLAIM = 'pdfxid:gts_pdfxversion';

/** The claim as an independent reader finds it. */
const claimOf = async (bytes: Uint8Array): Promise<unknown> =>
  ((await (await openPdf(bytes)).getMetadata()).metadata as { get(name: string): unknown } | null)?.get(
    CLAIM,
  ) ?? null;

describe('a label with the profile of its press', () => {
  it('claims PDF/X-4 and stands up to its own reader', async () => {
    expect(await claimOf(written)).toBe('PDF/X-4');
    expect(new TextDecoder('latin1').decode(written.subarray(0, 8))).toBe('%PDF-1.6');
    expect(await preflight(written, { kind: 'label', dieInk: 'CutContour', pdfx4: true })).toEqual([]);
  });

  it('carries the profile unchanged, for a registered condition with the name of the registry', async () => {
    const intentOf = async (bytes: Uint8Array) => {
      const { catalog } = await PDFDocument.load(bytes, { updateMetadata: false });
      return String(catalog.lookup(PDFName.of('OutputIntents'), PDFArray).lookup(0));
    };
    expect(await intentOf(written)).toContain('/RegistryName (http://www.color.org)');
    const free = await intentOf(await writePdf(labelDocument(fonts), fonts, withProfile('Own proof')));
    expect(free).toContain('/Info (Own proof)');
    expect(free).not.toContain('RegistryName');
  });

  it('makes no claim without a profile, and preflight of a label that should have it says so', async () => {
    const plain = await writePdf(labelDocument(fonts), fonts, LABEL);
    expect(await claimOf(plain)).toBeNull();
    const found = await preflight(plain, { kind: 'label', dieInk: 'CutContour', pdfx4: true });
    expect(found.map(({ code }) => code)).toEqual(['no-pdfx']);
  });

  const document = labelDocument(fonts);
  const broken: [string, PagedDocument, LabelProfile][] = [
    ['no profile', document, LABEL],
    ['an empty title', { ...document, title: ' ' }, withProfile('FOGRA39')],
    ['a date that is none', { ...document, date: 'soon' }, withProfile('FOGRA39')],
    ['no page', { ...document, frames: [] }, withProfile('FOGRA39')],
    ['no trim', { ...document, frames: [{ ...document.frames[0]!, width: 0 }] }, withProfile('FOGRA39')],
    [
      'an attached file',
      {
        ...document,
        attachments: [
          { name: 'a.txt', mediaType: 'text/plain', description: 'a', relationship: 'Data', bytes: press },
        ],
      },
      withProfile('FOGRA39'),
    ],
    [
      'two inks of one name',
      document,
      { ...withProfile('FOGRA39'), brand: { cmyk: [100, 0, 0, 0], spot: 'CutContour' } },
    ],
  ];
  it.each(broken)('has a fault with %s', (_, changed, profile) => {
    expect(pdfx4Faults(document, withProfile('FOGRA39'))).toEqual([]);
    expect(pdfx4Faults(changed, profile).length).toBeGreaterThan(0);
  });

  const N = PDFName.of;
  const damages: [string, (pdf: PDFDocument) => void][] = [
    ['output-intent', pdf => pdf.catalog.delete(N('OutputIntents'))],
    ['annotation', pdf => pdf.getPage(0).node.set(N('Annots'), pdf.context.obj([]))],
    [
      'active-content',
      pdf => pdf.context.register(pdf.context.obj({ S: 'JavaScript', JS: PDFString.of('1') })),
    ],
    ['transfer-curve', pdf => pdf.context.register(pdf.context.obj({ Type: 'ExtGState', TR: 'Identity' }))],
    [
      'ink-twice',
      pdf => {
        for (const _ of [1, 2])
          pdf.context.register(pdf.context.obj([N('Separation'), N('Green'), N('DeviceCMYK'), {}]));
      },
    ],
    [
      'transparency-group',
      pdf => {
        const states = pdf.getPage(0).node.Resources()!.lookup(N('ExtGState'), PDFDict);
        states.set(N('GSx'), pdf.context.obj({ ca: 0.5 }));
      },
    ],
  ];
  it.each(damages)('damaged is found: %s', async (code, damage) => {
    const pdf = await PDFDocument.load(written, { updateMetadata: false });
    damage(pdf);
    const bytes = await pdf.save({ useObjectStreams: false, addDefaultPage: false });
    bytes.set(new TextEncoder().encode('%PDF-1.6'));
    const found = await preflight(bytes, { kind: 'label', dieInk: 'CutContour', pdfx4: true });
    expect(found.map(finding => finding.code)).toContain(code);
  });
});

describe('a profile that is of no use', () => {
  const bad: [string, Uint8Array, RegExp][] = [
    ['an empty file', new Uint8Array(), /is not an ICC profile/],
    ['a text', new TextEncoder().encode('not a profile '.repeat(20)), /is not an ICC profile/],
    [
      'a monitor',
      pressProfile({ deviceClass: 'mntr', space: 'RGB ' }),
      /not the profile of an output device/,
    ],
    ['an RGB printer', pressProfile({ space: 'RGB ' }), /a profile for RGB, not for CMYK/],
    ['half a file', press.slice(0, press.length / 2), /cut off: \d+ bytes of \d+/],
    ['a file cut behind its head', press.slice(0, 130), /cut off/],
    ['no table of inks', pressProfile({ tags: ['desc', 'cprt', 'wtpt', 'A2B0'] }), /no B2A0/],
  ];
  it.each(bad)('%s is refused with one sentence', (_, bytes, message) => {
    expect(iccFault(bytes)).toMatch(message);
    const faults = profileFaults({ ...LABEL, iccProfile: { bytes, condition: 'FOGRA39' } });
    expect(faults).toHaveLength(1);
  });

  it('takes a whole one, and names of conditions in letters of the file alone', () => {
    expect(iccFault(press)).toBeNull();
    const faults = profileFaults({ ...LABEL, iccProfile: { bytes: press, condition: 'a\n) b' } });
    expect(faults.join()).toMatch(/not the name of a printing condition/);
  });

  // Names as the ICC registry prints them, from memory.
  it.each([
    ['FOGRA39', true],
    ['FOGRA51', true],
    ['CGATS TR 006', true],
    ['FOGRA7', false],
    ['FOGRA39x', false],
    ['Own proof', false],
  ])('%s stands in the registry: %s', (name, expected) => {
    expect(isRegistered(name)).toBe(expected);
  });
});
