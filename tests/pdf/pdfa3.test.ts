import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFNumber,
  type PDFRawStream,
  PDFStream,
  PDFString,
} from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { PagedDocument } from '../../src/layout/frame.ts';
import { pdfa3Faults } from '../../src/pdf/conformance/pdfa3.ts';
import { srgbProfile } from '../../src/pdf/srgb-profile.ts';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { SHEET, sheetDocument } from '../support/paged-documents.ts';
import { openPdf } from '../support/render.ts';

const fonts = await loadFonts();
const json = new TextEncoder().encode('{"sections": []}');
const document: PagedDocument = {
  ...sheetDocument(fonts),
  attachments: [
    {
      name: 'sds.json',
      mediaType: 'application/json',
      description: 'the sheet as data',
      relationship: 'Data',
      bytes: json,
    },
  ],
};
const marked = { ...SHEET, copy: { kind: 'distribution', fingerprint: '0'.repeat(64) } } as const;
const bytes = await writePdf(document, fonts, marked);

describe('a data sheet as PDF/A-3', () => {
  // Read by pdf.js.
  it('claims level A beside PDF/UA-1, and carries what it discloses as data', async () => {
    const pdf = await openPdf(bytes);
    const { metadata } = await pdf.getMetadata();
    expect(metadata.get('pdfaid:part')).toBe('3');
    expect(metadata.get('pdfaid:conformance')).toBe('A');
    expect(metadata.get('pdfuaid:part')).toBe('1');
    const attached = Object.values(
      (await pdf.getAttachments()) as Record<string, { filename: string; content: Uint8Array }>,
    );
    expect(attached.map(({ filename }) => filename)).toEqual(['sds.json']);
    expect(attached[0]!.content).toEqual(json);
    expect(await preflight(bytes, { kind: 'sheet' })).toEqual([]);
  });

  it('makes no claim where the model has a fault', async () => {
    const untitled = { ...document, title: ' ' };
    const twice = { ...document, attachments: [document.attachments[0]!, document.attachments[0]!] };
    const typeless = { ...document, attachments: [{ ...document.attachments[0]!, mediaType: '' }] };
    for (const faulty of [untitled, twice, typeless]) {
      expect(pdfa3Faults(faulty)).not.toEqual([]);
      const written = new TextDecoder('latin1').decode(await writePdf(faulty, fonts, SHEET));
      expect(written).not.toContain('pdfaid:part');
    }
    expect(pdfa3Faults(document)).toEqual([]);
  });

  const xmp = async (pdf: PDFDocument, change: (text: string) => string) => {
    const stream = pdf.catalog.lookup(PDFName.of('Metadata')) as PDFRawStream;
    const text = change(new TextDecoder().decode(stream.getContents()));
    pdf.catalog.set(
      PDFName.of('Metadata'),
      pdf.context.register(
        pdf.context.stream(new TextEncoder().encode(text), { Type: 'Metadata', Subtype: 'XML' }),
      ),
    );
  };
  const intent = (pdf: PDFDocument) =>
    pdf.catalog.lookup(PDFName.of('OutputIntents'), PDFArray).lookup(0, PDFDict);
  const breaks: Readonly<Record<string, (pdf: PDFDocument) => unknown>> = {
    'output-intent': pdf => pdf.catalog.delete(PDFName.of('OutputIntents')),
    'pdfa-version': pdf => xmp(pdf, text => text.replace('<pdfaid:part>3', '<pdfaid:part>9')),
    'xmp-undescribed': pdf =>
      xmp(pdf, text => text.replace('<pdfaProperty:name>copy<', '<pdfaProperty:name>c<')),
    annotation: pdf => pdf.getPage(0).node.set(PDFName.of('Annots'), pdf.context.obj([])),
    'active-content': pdf => pdf.context.register(pdf.context.obj({ S: 'JavaScript', JS: PDFString.of('') })),
    'optional-content': pdf => pdf.catalog.set(PDFName.of('OCProperties'), pdf.context.obj({})),
    transparency: pdf => pdf.context.register(pdf.context.obj({ Type: 'ExtGState', SMask: {} })),
  };
  it.each(Object.entries(breaks))('preflight finds in its bytes: %s', async (code, breakIt) => {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    await breakIt(pdf);
    const found = await preflight(await pdf.save({ useObjectStreams: false }), { kind: 'sheet' });
    expect(found.map(each => each.code)).toContain(code);
  });

  it('preflight finds the profile of another space, and bytes behind the end', async () => {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    intent(pdf).lookup(PDFName.of('DestOutputProfile'), PDFStream).dict.set(PDFName.of('N'), PDFNumber.of(4));
    const codes = (await preflight(await pdf.save({ useObjectStreams: false }), { kind: 'sheet' })).map(
      ({ code }) => code,
    );
    expect(codes).toContain('output-intent');
    const longer = new Uint8Array([...bytes, ...new TextEncoder().encode('more than the end')]);
    expect((await preflight(longer, { kind: 'sheet' })).map(({ code }) => code)).toContain('data-behind-end');
  });
});

describe('the profile of sRGB', () => {
  const profile = srgbProfile();
  const view = new DataView(profile.buffer);
  const tagAt = (signature: string): number => {
    for (let at = 132; at < 132 + view.getUint32(128) * 12; at += 12)
      if (String.fromCharCode(...profile.slice(at, at + 4)) === signature) return view.getUint32(at + 4);
    throw new Error(`no ${signature}`);
  };
  const numbers = (signature: string, count: number, skip = 8) =>
    Array.from({ length: count }, (_, at) => view.getInt32(tagAt(signature) + skip + at * 4) / 65536);

  // Values of the colorants under D50 as the International Color Consortium publishes them for sRGB (sRGB2014.icc).
  it.each([
    ['rXYZ', [0.43607, 0.22249, 0.01392]],
    ['gXYZ', [0.38515, 0.71687, 0.09708]],
    ['bXYZ', [0.14307, 0.06061, 0.7141]],
  ] as const)('has the published colorant %s', (signature, published) => {
    numbers(signature, 3).forEach((value, at) => {
      expect(Math.abs(value - published[at]!), `${signature} ${at}`).toBeLessThan(0.0002);
    });
  });

  // ICC.1: full red, green and blue together are the white of the profile.
  it('adds up to the white of profiles, and is whole', () => {
    const sum = [0, 1, 2].map(at =>
      ['rXYZ', 'gXYZ', 'bXYZ'].reduce((total, name) => total + numbers(name, 3)[at]!, 0),
    );
    for (const [at, white] of [0.9642, 1, 0.8249].entries()) expect(sum[at]).toBeCloseTo(white, 3);
    expect(view.getUint32(0)).toBe(profile.length);
  });

  // IEC 61966-2-1: 0.5 of the signal is 0.2140 of the light; both parts of the curve meet.
  it('has the published transfer function', () => {
    const [gamma = 0, a = 0, b = 0, c = 0, d = 0] = numbers('rTRC', 5, 12);
    expect((a * 0.5 + b) ** gamma).toBeCloseTo(0.21404, 4);
    expect((a * d + b) ** gamma).toBeCloseTo(c * d, 5);
  });
});
