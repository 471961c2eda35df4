import { type PDFContext, type PDFRef, PDFString } from 'pdf-lib';
import conditions from './conformance/conditions.json' with { type: 'json' };
import srgb from './conformance/srgb.json' with { type: 'json' };
import { flateStream } from './flate.ts';
import type { OutputProfile } from './profile.ts';
import { srgbProfile } from './srgb-profile.ts';

/** Whether a printing condition stands in the registry of the ICC under this name. */
export const isRegistered = (condition: string): boolean =>
  conditions.exact.includes(condition) ||
  conditions.numbered.some(({ prefix, from, to }) => {
    const number = condition.startsWith(prefix) ? condition.slice(prefix.length) : '';
    return /^\d+$/.test(number) && Number(number) >= from && Number(number) <= to;
  });

/**
 * The printing condition that the file is made for (ISO 15930-7), with its ICC profile embedded. `RegistryName` stands
 * only beside a name of the registry.
 */
export const writeOutputIntent = (context: PDFContext, { bytes, condition }: OutputProfile): PDFRef =>
  context.register(
    context.obj({
      Type: 'OutputIntent',
      S: 'GTS_PDFX',
      OutputConditionIdentifier: PDFString.of(condition),
      Info: PDFString.of(condition),
      ...(isRegistered(condition) && { RegistryName: PDFString.of(conditions.registry) }),
      DestOutputProfile: context.register(flateStream(context, bytes, { N: 4 })),
    }),
  );

/** The colors of a document for screen and office: sRGB, with its profile embedded (ISO 19005-3 6.2.3). */
export const writeScreenIntent = (context: PDFContext): PDFRef =>
  context.register(
    context.obj({
      Type: 'OutputIntent',
      S: 'GTS_PDFA1',
      OutputConditionIdentifier: PDFString.of(srgb.condition),
      Info: PDFString.of(srgb.condition),
      RegistryName: PDFString.of(srgb.registry),
      DestOutputProfile: context.register(flateStream(context, srgbProfile(), { N: 3 })),
    }),
  );
