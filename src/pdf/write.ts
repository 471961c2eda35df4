import {
  type PDFArray,
  PDFContext,
  type PDFDict,
  PDFHexString,
  PDFName,
  type PDFRef,
  PDFString,
  PDFWriter,
} from 'pdf-lib';
import type { Frame, LayerName, PagedDocument } from '../layout/frame.ts';
import { toPoints } from '../quantity/length.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { snapped } from './_number.ts';
import { artNames, isTransparent, registerArt } from './art.ts';
import { attach } from './attach.ts';
import { pdfa3Faults } from './conformance/pdfa3.ts';
import { pdfua1Faults } from './conformance/pdfua1.ts';
import { pdfx4Faults } from './conformance/pdfx4.ts';
import { pageContent } from './content.ts';
import { flateStream } from './flate.ts';
import { EmbeddedFonts } from './font.ts';
import {
  BRAND_SPACE,
  CODER_INK,
  CODER_SPACE,
  DIE_SPACE,
  overprintStates,
  registerBrandInk,
  registerSpotInk,
} from './ink.ts';
import { type LayerUse, labelLayers } from './layer.ts';
import { contentId, type Metadata, pdfDate, writeInfo, writeXmp } from './metadata.ts';
import { writeOutline } from './outline.ts';
import { writeOutputIntent, writeScreenIntent } from './output-intent.ts';
import { type LabelProfile, type PdfProfile, profileFaults } from './profile.ts';
import { serializeCompressed } from './serialize.ts';
import { writeStructure } from './tag.ts';

/** Boxes of a page, lower left and upper right corner: media outside, then bleed, then trim. */
const setBoxes = (page: PDFDict, frame: Frame, kind: PdfProfile['kind']): void => {
  const { width, height, bleed, slug } = frame;
  const [fullWidth, fullHeight] = [width, height].map(side => toPoints(side + 2 * (bleed + slug))) as [
    number,
    number,
  ];
  const inset = (millimetres: number): PDFArray => {
    const edge = toPoints(millimetres);
    return page.context.obj([edge, edge, fullWidth - edge, fullHeight - edge].map(snapped));
  };
  page.set(PDFName.of('MediaBox'), inset(0));
  if (kind !== 'label') return;
  page.set(PDFName.of('BleedBox'), inset(slug));
  page.set(PDFName.of('TrimBox'), inset(slug + bleed));
};

/** Resources that only the press needs: overprint, the spot ink of the cut line, and the layers. */
const addPressResources = (
  context: PDFContext,
  catalog: PDFDict,
  resources: PDFDict,
  profile: LabelProfile,
  uses: LayerUse & { readonly brand: boolean },
): void => {
  resources.set(PDFName.of('ExtGState'), context.obj(overprintStates(context)));
  if (profile.iccProfile)
    catalog.set(PDFName.of('OutputIntents'), context.obj([writeOutputIntent(context, profile.iccProfile)]));
  const brand = uses.brand && registerBrandInk(context, profile.brand);
  const spaces = {
    ...(uses.die && { [DIE_SPACE]: registerSpotInk(context, profile.die?.ink) }),
    ...(uses.coder && { [CODER_SPACE]: registerSpotInk(context, CODER_INK, [1, 0, 0, 0]) }),
    ...(brand && { [BRAND_SPACE]: brand }),
  };
  if (Object.keys(spaces).length > 0) resources.set(PDFName.of('ColorSpace'), context.obj(spaces));
  if (!uses.die && !uses.coder && !uses.draft && !uses.eyeMark) return;
  const { groups, properties } = labelLayers(context, uses, profile.die);
  resources.set(PDFName.of('Properties'), context.obj({ ...groups }));
  catalog.set(PDFName.of('OCProperties'), properties);
};

const serialize = async (context: PDFContext, kind: PdfProfile['kind']): Promise<Uint8Array> => {
  if (kind === 'sheet') return serializeCompressed(context);
  const bytes = await PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
  if (kind === 'printer') {
    // Drivers of label printers read old files best; nothing newer is used.
    bytes.set(new TextEncoder().encode('%PDF-1.4'));
    return bytes;
  }
  // PDF/X-4 builds on PDF 1.6; the library always writes 1.7, of the same length.
  bytes.set(new TextEncoder().encode('%PDF-1.6'));
  return bytes;
};

/**
 * Writes a document as PDF: a label for the press (DeviceCMYK, cut line on its own layer, boxes), a label for a roll
 * printer (DeviceGray) or a tagged data sheet. All fonts are embedded as subsets; the same input gives the same bytes. PDF/X-4 is claimed only for a label
 * without `pdfx4Faults`, PDF/UA-1 and PDF/A-3 only for a sheet without `pdfua1Faults` and `pdfa3Faults`.
 * @throws Error for a profile with `profileFaults`, for content that a label or sheet may not have, and for tags
 * outside the structure tree; RangeError for a date that is none
 */
export const writePdf = async (
  document: PagedDocument,
  fonts: FontLibrary,
  profile: PdfProfile,
): Promise<Uint8Array> => {
  const faults = profileFaults(profile);
  if (faults.length > 0) throw new Error(faults.join('; '));
  const { frames, root, title, subject, language } = document;
  if (profile.kind === 'printer' && frames.some(({ bleed, slug }) => bleed + slug > 0))
    throw new Error('a label of a roll printer has no bleed and no marks');
  const embedded = new EmbeddedFonts(fonts);
  const arts = artNames(frames.flatMap(({ items }) => items));
  const contents = frames.map((frame, page) => pageContent(frame, page, profile, embedded, arts));
  const marks = contents.flatMap(content => content.marks);
  const { iccProfile, ...settings } = { iccProfile: undefined, ...profile };
  const metadata: Metadata = {
    title,
    subject,
    language,
    producer: `labelwright ${profile.version}`,
    copy: profile.copy,
    date: new Date(document.date),
    id: contentId(
      document,
      contents.map(({ operators }) => operators),
      JSON.stringify([settings, iccProfile?.condition]),
    ),
    claims: {
      pdfx4: profile.kind === 'label' && pdfx4Faults(document, profile).length === 0,
      pdfua1: profile.kind === 'sheet' && pdfua1Faults(document).length === 0,
      pdfa3: profile.kind === 'sheet' && pdfa3Faults(document).length === 0,
    },
  };

  const context = PDFContext.create();
  const catalogRef = context.nextRef();
  const treeRef = context.nextRef();
  const pageRefs = frames.map(() => context.nextRef());
  const catalog = context.obj({ Type: 'Catalog', Pages: treeRef });
  const resources = context.obj({ Font: Object.fromEntries(embedded.embed(context)) });
  const on = (name: LayerName) => frames.some(({ items }) => items.some(({ layer }) => layer === name));
  const brand = frames.some(({ items }) => items.some(item => item.kind === 'path' && item.fill === 'brand'));
  const uses = { die: on('die'), draft: on('draft'), eyeMark: on('eye-mark'), coder: on('coder'), brand };
  if (profile.kind === 'label') addPressResources(context, catalog, resources, profile, uses);
  if (arts.size > 0) {
    const objects: Record<string, PDFRef> = {};
    for (const [art, name] of arts) objects[name] = await registerArt(context, art);
    resources.set(PDFName.of('XObject'), context.obj(objects));
  }
  const blended = profile.kind === 'label' && [...arts.keys()].some(isTransparent);
  if (metadata.claims.pdfa3)
    catalog.set(PDFName.of('OutputIntents'), context.obj([writeScreenIntent(context)]));
  const resourcesRef = context.register(resources);
  for (const [index, frame] of frames.entries()) {
    const page = context.obj({
      Type: 'Page',
      Parent: treeRef,
      Resources: resourcesRef,
      Contents: context.register(flateStream(context, contents[index]!.operators)),
      StructParents: index,
      Tabs: 'S',
      ...(blended && { Group: { Type: 'Group', S: 'Transparency', CS: 'DeviceCMYK' } }),
    });
    setBoxes(page, frame, profile.kind);
    context.assign(pageRefs[index]!, page);
  }
  context.assign(treeRef, context.obj({ Type: 'Pages', Kids: pageRefs, Count: pageRefs.length }));

  const structure = writeStructure(context, root, marks, pageRefs);
  const entries: Record<string, PDFDict | PDFArray | PDFRef | PDFString | PDFName> = {
    Lang: PDFString.of(language),
    MarkInfo: context.obj({ Marked: true }),
    StructTreeRoot: structure.root,
    ViewerPreferences: context.obj({ DisplayDocTitle: true }),
    Metadata: writeXmp(context, metadata),
  };
  const outline =
    profile.kind === 'sheet' ? writeOutline(context, root, marks, pageRefs, structure) : undefined;
  if (outline) Object.assign(entries, { Outlines: outline, PageMode: PDFName.of('UseOutlines') });
  const files = attach(context, document.attachments, pdfDate(metadata.date));
  if (files.length > 0) {
    entries.AF = context.obj(files.map(([, specification]) => specification));
    entries.Names = context.obj({ EmbeddedFiles: { Names: files.flat() } });
  }
  for (const [key, value] of Object.entries(entries)) catalog.set(PDFName.of(key), value);
  context.assign(catalogRef, catalog);
  const id = PDFHexString.of(metadata.id.toUpperCase());
  context.trailerInfo = {
    Root: catalogRef,
    Info: writeInfo(context, metadata),
    ID: context.obj([id, id]),
  };
  return serialize(context, profile.kind);
};
