import { copyComment } from '../document/copy-meta.ts';
import { layoutCaseLabel } from '../layout/case/case-label.ts';
import { layoutLimitedQuantity, layoutOrientation } from '../layout/case/mark-labels.ts';
import { layoutPalletLabel } from '../layout/case/pallet-label.ts';
import { palletPicture } from '../layout/case/pallet-picture.ts';
import { layoutShippingMark } from '../layout/case/shipping-mark.ts';
import { thermalStock } from '../layout/case/thermal-stock.ts';
import type { PagedDocument } from '../layout/frame.ts';
import { dpiOf, type PrinterName } from '../layout/roll-printer.ts';
import type { CaseFacts } from '../logistics/case-facts.ts';
import { labelPlaces } from '../logistics/label-places.ts';
import { identificationHeight, orientationMark } from '../logistics/package-marks.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import type { CopyMark } from '../provenance/copy-mark.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { MissingGlyphError } from '../text/missing-glyph.ts';
import type { HazardLabels } from '../transport/hazard-label.ts';
import { VERSION } from '../version.ts';
import {
  type CaseFileKind,
  caseLines,
  logisticLines,
  markWords,
  shownValue,
  smallLines,
} from '../words/en/case.ts';
import { caseFindings } from '../words/en/case-findings.ts';
import { labelsStuck, stickBeside } from '../words/en/hazard-labels.ts';
import { palletCaptions } from '../words/en/pallet.ts';
import { barFindings } from './bar-findings.ts';
import { type CaseBatch, type CaseFile, caseFileName, missingCaseFiles } from './case-files.ts';
import type { PackageName } from './case-marks.ts';

export interface CaseOptions {
  readonly pack: Pack;
  readonly facts: CaseFacts;
  readonly batch: CaseBatch;
  readonly printer: PrinterName;
  /** The logistic label is wanted. */
  readonly pallet: boolean;
  /** Orientation arrows are wanted. */
  readonly arrows: boolean;
  /** Number and name that the case bears by the rules of transport; null where none. */
  readonly name: PackageName | null;
  /** How it is carried, in a line of the case label; null where the marks are left out. */
  readonly carried: string | null;
  /** Hazard labels that are stuck beside number and name; null where none are drawn for. */
  readonly hazardLabels: HazardLabels | null;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly copy: CopyMark;
}

/** Files of a case, and what is to be told of them. */
export interface DraftCase {
  readonly files: readonly CaseFile[];
  /** Labels that were asked for and not made. */
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Drafts the labels of a case for a roll printer: case label, marks, logistic label of its pallet and the drawing of
 * the load. A label that a finding forbids is left out.
 */
export async function draftCase(
  record: ProductRecord,
  options: CaseOptions,
  fonts: FontLibrary,
): Promise<DraftCase> {
  const { pack, facts } = options;
  try {
    const drafted = await draftAll(record, options, fonts);
    return { ...drafted, missing: missingCaseFiles(askedFor(options), options, drafted) };
  } catch (error) {
    if (!(error instanceof MissingGlyphError)) throw error;
    const finding: Diagnostic = {
      code: 'missing-glyph',
      severity: 'error',
      message: error.message,
      hint: 'replace it; the face of the label has Latin, Greek and Cyrillic letters',
      at: pack.at,
    };
    const drafted = { files: [], diagnostics: [...caseFindings(facts, pack), finding] };
    return { ...drafted, missing: missingCaseFiles(askedFor(options), options, drafted) };
  }
}

type Drafted = Omit<DraftCase, 'missing'>;

const askedFor = ({ facts, pallet, arrows, name }: CaseOptions): readonly CaseFileKind[] => [
  'case',
  ...(facts.limitedQuantity ? (['limited-quantity'] as const) : []),
  ...(arrows ? (['arrows'] as const) : []),
  ...(name ? (['shipping-name'] as const) : []),
  ...(pallet ? (['pallet'] as const) : []),
];

async function draftAll(
  record: ProductRecord,
  {
    pack,
    facts,
    batch,
    printer,
    pallet,
    arrows,
    name: shipping,
    carried,
    hazardLabels,
    date,
    copy,
  }: CaseOptions,
  fonts: FontLibrary,
): Promise<Drafted> {
  const dpi = dpiOf(printer);
  const instant = `${date}T00:00:00Z`;
  const diagnostics = caseFindings(facts, pack);
  const files: CaseFile[] = [];
  const write = async (kind: CaseFileKind, document: PagedDocument) => {
    const bytes = await writePdf(document, fonts, { kind: 'printer', version: VERSION, copy });
    const found = await preflight(bytes, { kind: 'printer' });
    if (hasErrors(found)) throw new Error(`preflight: ${found.map(({ message }) => message).join('; ')}`);
    diagnostics.push(...found);
    files.push({ kind, name: caseFileName(kind, pack.id, batch), bytes, document });
  };
  const refuse = (code: string, message: string, hint: string, cite?: string) =>
    diagnostics.push({ code, severity: 'error', message, hint, at: pack.at, ...(cite && { cite }) });
  const words = markWords(record, instant);
  if (facts.numbersRight) {
    const label = await layoutCaseLabel(
      {
        name: record.name,
        lines: [...caseLines(record, pack, facts, batch), ...(carried === null ? [] : [carried])],
        small: smallLines(record),
        itf14: facts.gtin,
        elements: facts.elements,
        title: `${record.name}: case label`,
        subject: `Case of ${facts.count}, ${pack.id}`,
        date: instant,
      },
      dpi,
      fonts,
    );
    if (label) {
      await write('case', label.document);
      diagnostics.push(...barFindings(label, pack));
    } else refuse('case-label-fit', 'the case label does not fit on 4 x 6 in stock', 'shorten the name');
  }

  // A package over the gross limit bears no mark that says it keeps it.
  const mark = facts.limitedQuantity?.gross === 'above' ? null : facts.limitedQuantity?.mark;
  if (mark) {
    const laid = layoutLimitedQuantity(mark, words.limitedQuantity, dpi, fonts);
    if (!laid) throw new Error('the full mark of a limited quantity fits on the large stock');
    await write('limited-quantity', laid.document);
    if (laid.format === 'large')
      diagnostics.push({
        code: 'limited-quantity-stock',
        severity: 'note',
        message: `the mark with sides of ${mark.side} mm needs stock of 6 x 6 in`,
        cite: mark.cite,
        at: pack.at,
      });
  }
  if (arrows) await write('arrows', layoutOrientation(orientationMark.height, words.orientation, dpi, fonts));

  if (shipping) {
    const least = identificationHeight(facts.mass.net);
    const { title, subject } = words.shipping(pack.id);
    const beside =
      labelsStuck(hazardLabels) && shipping.id !== null
        ? [stickBeside(hazardLabels, labelPlaces(facts.size, hazardLabels.labels.length))]
        : [];
    const small = [...beside, ...smallLines(record), words.shippingFoot];
    const laid = layoutShippingMark({ ...shipping, small, title, subject, date: instant }, least, dpi, fonts);
    if (laid) await write('shipping-name', laid);
    else
      refuse(
        'shipping-name-fit',
        'the proper shipping name does not fit on 4 x 6 in stock',
        'mark the case by hand',
        '49 CFR 172.301(a)',
      );
  }

  const { load, size } = facts;
  if (load && size && load.cases > 0)
    files.push({
      kind: 'pallet-load',
      name: caseFileName('pallet-load', pack.id),
      document: null,
      bytes: marked(
        palletPicture({
          pallet: load.pallet,
          layer: load.layer,
          layers: load.layers,
          caseHeight: size.height,
          captions: palletCaptions(load, `${record.name}, ${pack.id}`),
        }),
        copy,
      ),
    });
  if (pallet && facts.numbersRight) await logisticLabel();
  return { files, diagnostics };

  async function logisticLabel(): Promise<void> {
    if (facts.sscc === null)
      return void refuse(
        'sscc-missing',
        'a logistic label needs the SSCC of its pallet',
        'give --sscc, or --company-prefix with --serial',
        'GS1 General Specifications 6.6',
      );
    const label = await layoutPalletLabel(
      {
        free: logisticLines(record),
        sscc: facts.sscc,
        elements: facts.palletElements,
        shown: shownValue,
        title: `${record.name}: logistic label`,
        subject: `Pallet ${facts.sscc}`,
        date: instant,
      },
      dpi,
      fonts,
    );
    if (!label)
      return void refuse(
        'pallet-label-fit',
        'the logistic label does not fit on 4 x 6 in stock',
        'shorten the name or the address of the maker',
      );
    await write('pallet', label.document);
    diagnostics.push(...barFindings(label, pack));
    const { largest, source } = thermalStock.text.logistic;
    if (label.dataHeight < largest)
      diagnostics.push({
        code: 'pallet-label-text',
        severity: 'note',
        message: `data on the logistic label are ${label.dataHeight} mm high; ${largest} mm is advised`,
        cite: source,
        at: pack.at,
      });
  }
}

const marked = (picture: string, copy: CopyMark): string => `${picture.trimEnd()}\n${copyComment(copy)}\n`;
