import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { writePdf } from '../../src/pdf/write.ts';
import { preflight } from '../../src/preflight/preflight.ts';
import type { PreflightProfile } from '../../src/preflight/profile.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { LABEL, labelDocument, SHEET, sheetDocument } from '../support/paged-documents.ts';

const fonts = await loadFonts();
const label = await writePdf(labelDocument(fonts), fonts, LABEL);
const sheet = await writePdf(sheetDocument(fonts), fonts, SHEET);
const LABEL_PROFILE: PreflightProfile = { kind: 'label', dieInk: 'CutContour' };

type Damage = (document: PDFDocument) => void;
const N = (name: string) => PDFName.of(name);

/** Damages a good file with an independent library and gives the codes of what preflight then finds. */
const codesAfter = async (
  kind: 'label' | 'sheet',
  damage: Damage,
  profile: PreflightProfile = kind === 'label' ? LABEL_PROFILE : { kind },
): Promise<string[]> => {
  const document = await PDFDocument.load(kind === 'label' ? label : sheet, { updateMetadata: false });
  damage(document);
  const bytes = await document.save({
    useObjectStreams: false,
    addDefaultPage: false,
    updateFieldAppearances: false,
  });
  if (kind === 'label') bytes.set(new TextEncoder().encode('%PDF-1.6'));
  const findings = await preflight(bytes, profile);
  return [...new Set(findings.map(({ code }) => code))];
};

const page = (document: PDFDocument): PDFDict => document.getPage(0).node;
const dict = (object: PDFObject | undefined): PDFDict => {
  if (object instanceof PDFDict) return object;
  if (object instanceof PDFRawStream) return object.dict;
  throw new Error('expected a dictionary');
};
const all = (document: PDFDocument, key: string, value: string): PDFDict[] =>
  document.context.enumerateIndirectObjects().flatMap(([, object]) => {
    const found = object instanceof PDFDict ? object : undefined;
    return found?.get(N(key)) === N(value) ? [found] : [];
  });
const info = (document: PDFDocument) => dict(document.context.lookup(document.context.trailerInfo.Info));
const font = (document: PDFDocument) => all(document, 'Subtype', 'Type0')[0]!;
const element = (document: PDFDocument, type: string) => all(document, 'S', type)[0]!;

const renameInk =
  (name: string): Damage =>
  document => {
    const space = document.context
      .enumerateIndirectObjects()
      .map(([, object]) => object)
      .find(object => object instanceof PDFArray && object.get(0) === N('Separation')) as PDFArray;
    space.set(1, N(name));
  };

const content =
  (change: (source: string) => string): Damage =>
  document => {
    const stream = page(document).lookup(N('Contents')) as PDFRawStream;
    const source = new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode());
    const changed = change(source);
    expect(changed).not.toBe(source);
    page(document).set(N('Contents'), document.context.register(document.context.flateStream(changed)));
  };
const replaced = (from: string | RegExp, to: string): Damage => content(source => source.replace(from, to));

const stream =
  (find: (document: PDFDocument) => PDFDict, key: string, change: (source: string) => string): Damage =>
  document => {
    const old = find(document).lookup(N(key)) as PDFRawStream;
    const source = new TextDecoder().decode(decodePDFRawStream(old).decode());
    const bytes = new TextEncoder().encode(change(source));
    find(document).set(N(key), document.context.register(document.context.stream(bytes)));
  };

const addAsLastContent = (operators: string): Damage => content(source => source + operators);
const ARTIFACT = '/Artifact <</Type /Layout>> BDC';

const DAMAGES: readonly (readonly [string, 'label' | 'sheet', Damage])[] = [
  ['file-identifier', 'label', ({ context }) => delete context.trailerInfo.ID],
  ['no-title', 'label', document => info(document).delete(N('Title'))],
  ['trapped', 'label', document => info(document).delete(N('Trapped'))],
  ['metadata-differ', 'label', document => info(document).set(N('Title'), PDFString.of('Another'))],
  [
    'metadata-differ',
    'label',
    document => info(document).set(N('ModDate'), PDFString.of('D:20200101000000Z')),
  ],
  ['no-xmp', 'sheet', ({ catalog }) => catalog.delete(N('Metadata'))],
  [
    'xmp-compressed',
    'label',
    ({ catalog, context }) => {
      const { contents } = catalog.lookup(N('Metadata')) as PDFRawStream;
      catalog.set(N('Metadata'), context.register(context.flateStream(contents)));
    },
  ],
  [
    'output-intent',
    'label',
    stream(
      ({ catalog }) => catalog,
      'Metadata',
      source =>
        source.replace('</rdf:Description>', '<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion>$&'),
    ),
  ],
  ['no-language', 'sheet', ({ catalog }) => catalog.delete(N('Lang'))],
  ['title-not-shown', 'sheet', ({ catalog }) => catalog.delete(N('ViewerPreferences'))],
  ['not-marked', 'sheet', ({ catalog }) => catalog.delete(N('MarkInfo'))],
  ['active-content', 'sheet', ({ catalog, context }) => catalog.set(N('OpenAction'), context.obj([]))],
  ['attachment-incomplete', 'sheet', ({ catalog }) => catalog.delete(N('AF'))],
  ['attachment-incomplete', 'sheet', document => all(document, 'Type', 'Filespec')[0]!.delete(N('Desc'))],
  ['page-boxes', 'label', document => page(document).delete(N('TrimBox'))],
  ['page-boxes', 'label', document => document.getPage(0).setTrimBox(0, 0, 40, 40)],
  ['page-boxes', 'label', document => document.getPage(0).setBleedBox(-5, 0, 500, 500)],
  ['page-boxes', 'label', document => document.getPage(0).setArtBox(30, 30, 40, 40)],
  ['page-boxes', 'label', document => document.getPage(0).setTrimBox(30, 30, 0, 0)],
  [
    'font-not-embedded',
    'label',
    document => all(document, 'Type', 'FontDescriptor')[0]!.delete(N('FontFile2')),
  ],
  ['font-not-embedded', 'label', replaced('/FR 8 Tf', '/Helv 8 Tf')],
  ['font-not-subset', 'label', document => font(document).set(N('BaseFont'), N('RobotoCondensed-Regular'))],
  [
    'font-glyph-map',
    'label',
    document => all(document, 'Subtype', 'CIDFontType2')[0]!.delete(N('CIDToGIDMap')),
  ],
  ['font-no-unicode', 'label', document => font(document).delete(N('ToUnicode'))],
  [
    'font-no-unicode',
    'label',
    stream(font, 'ToUnicode', source => source.replace(/<0001> <....>/u, '<0001> <0000>')),
  ],
  ['font-no-unicode', 'label', stream(font, 'ToUnicode', source => source.replace('<0001>', '<0F01>'))],
  [
    'font-unicode-block',
    'label',
    stream(font, 'ToUnicode', source => source.replace(/\d+ (?=beginbfchar)/u, '101 ')),
  ],
  ['font-missing-glyph', 'label', replaced('<0001', '<0000')],
  ['colour-operator', 'label', replaced('0 0 0 0.1 k', '0.9 g')],
  ['colour-operator', 'label', replaced('0 1 1 0 K', '1 0 0 RG')],
  ['ink-not-allowed', 'label', replaced('0 1 1 0 K', '1 0 1 0 K')],
  ['ink-not-allowed', 'label', replaced('0 0 0 0.1 k', '0.1 0.1 0.1 0.1 k')],
  ['text-not-black', 'label', content(source => source.replaceAll('0 0 0 1 k', '0.5 0.5 0.5 1 k'))],
  ['white-overprints', 'label', replaced('0 0 0 0 k', '/GSover gs 0 0 0 0 k')],
  ['white-overprints', 'label', content(source => source.replaceAll('0 0 0 1 k', '0 0 0 0 k'))],
  ['die-missing', 'label', replaced('/CSdie CS 1 SCN', '0 0 0 1 K')],
  ['die-layer', 'label', replaced(/\/OC \/OCdie BDC([\s\S]*?)EMC/u, '$1')],
  ['die-layer', 'label', replaced(/(?=EMC\nEMC\n$)/u, '0 0 0 1 K 1 1 m 2 2 l S ')],
  ['die-step', 'label', document => all(document, 'Type', 'OCG')[0]!.delete(N('GTS_Metadata'))],
  ['die-stroke', 'label', replaced(/S\nEMC\nEMC\n$/u, 'B\nEMC\nEMC\n')],
  ['die-overprint', 'label', replaced('/CSdie CS', '/GSknock gs /CSdie CS')],
  ['die-not-last', 'label', addAsLastContent(`${ARTIFACT} 0 0 0 1 K 1 1 m 2 2 l S EMC\n`)],
  [
    'layer-configuration',
    'label',
    ({ catalog, context }) => {
      const configuration = dict(dict(catalog.lookup(N('OCProperties'))).lookup(N('D')));
      configuration.set(N('AS'), context.obj([]));
    },
  ],
  [
    'layer-configuration',
    'label',
    ({ catalog, context }) => {
      const configuration = dict(dict(catalog.lookup(N('OCProperties'))).lookup(N('D')));
      configuration.set(N('Order'), context.obj([]));
    },
  ],
  [
    'layer-configuration',
    'label',
    ({ catalog }) => dict(dict(catalog.lookup(N('OCProperties'))).lookup(N('D'))).delete(N('Name')),
  ],
  ['content-untagged', 'sheet', addAsLastContent('0 G 1 1 m 2 2 l S\n')],
  ['content-nesting', 'sheet', replaced('BT', `${ARTIFACT} BT`)],
  ['content-nesting', 'sheet', replaced(/(MCID 0>> BDC)/u, `$1 ${ARTIFACT} EMC`)],
  ['content-nesting', 'sheet', replaced(/\/H1 <<\/MCID 0>> BDC/u, `${ARTIFACT} $& EMC`)],
  ['content-identifier', 'sheet', replaced('/MCID 1>>', '/MCID 0>>')],
  ['parent-tree', 'sheet', replaced('/MCID 1>>', '/MCID 77>>')],
  ['parent-tree', 'sheet', document => page(document).set(N('StructParents'), document.context.obj(9))],
  ['parent-tree', 'sheet', document => element(document, 'H2').delete(N('K'))],
  ['no-structure', 'sheet', ({ catalog }) => catalog.delete(N('StructTreeRoot'))],
  ['structure-parent', 'sheet', document => element(document, 'H1').delete(N('P'))],
  ['structure-nesting', 'sheet', document => element(document, 'TH').set(N('S'), N('P'))],
  ['structure-nesting', 'sheet', document => element(document, 'L').set(N('S'), N('Sect'))],
  ['header-scope', 'sheet', document => element(document, 'TH').delete(N('A'))],
  ['figure-alt', 'label', document => element(document, 'Figure').set(N('Alt'), PDFHexString.fromText(' '))],
  [
    'table-rows',
    'sheet',
    document => element(document, 'TD').set(N('A'), document.context.obj({ O: 'Table', ColSpan: 2 })),
  ],
  ['heading-order', 'sheet', document => element(document, 'H2').set(N('S'), N('H3'))],
  ['heading-empty', 'sheet', document => element(document, 'H1').delete(N('K'))],
  ['no-outline', 'sheet', ({ catalog }) => catalog.delete(N('Outlines'))],
  [
    'no-pages',
    'sheet',
    ({ catalog, context }) => dict(catalog.lookup(N('Pages'))).set(N('Kids'), PDFArray.withContext(context)),
  ],
  ['unreadable', 'label', replaced('BT', '[ BT')],
];

describe('preflight', () => {
  it('has nothing against the files that the writer makes', async () => {
    expect(await preflight(label, LABEL_PROFILE)).toEqual([]);
    expect(await preflight(sheet, { kind: 'sheet' })).toEqual([]);
  });

  it('has nothing against a file that was merely saved again', async () => {
    expect(await codesAfter('label', () => undefined)).toEqual([]);
    expect(await codesAfter('sheet', () => undefined)).toEqual([]);
  });

  it.each(DAMAGES)('finds %s in a damaged %s', async (code, kind, damage) => {
    expect(await codesAfter(kind, damage)).toContain(code);
  });

  it('finds a header of the wrong version', async () => {
    const bytes = label.slice();
    bytes.set(new TextEncoder().encode('%PDF-1.7'));
    expect((await preflight(bytes, LABEL_PROFILE)).map(({ code }) => code)).toEqual(['header-version']);
  });

  it('finds that a cut line bears the name of a process ink, or should not be there', async () => {
    expect((await preflight(label, { kind: 'label', dieInk: 'Black' })).map(({ code }) => code)).toContain(
      'die-missing',
    );
    expect((await preflight(label, { kind: 'label' })).map(({ code }) => code)).toEqual(['ink-not-allowed']);
    const renamed = await codesAfter('label', renameInk('All'), { kind: 'label', dieInk: 'All' });
    expect(renamed).toEqual(['die-ink-name']);
  });

  it('says so where bytes are no PDF', async () => {
    const findings = await preflight(new TextEncoder().encode('not a PDF'), { kind: 'sheet' });
    expect(findings.map(({ code }) => code)).toEqual(['unreadable']);
  });
});
