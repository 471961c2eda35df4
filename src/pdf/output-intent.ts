import { type PDFContext, type PDFRef, PDFString } from 'pdf-lib';
import type { OutputProfile } from './profile.ts';

/** The printing condition that the file is made for (ISO 15930-7), with its ICC profile embedded. */
export const writeOutputIntent = (context: PDFContext, { bytes, condition }: OutputProfile): PDFRef =>
  context.register(
    context.obj({
      Type: 'OutputIntent',
      S: 'GTS_PDFX',
      OutputConditionIdentifier: PDFString.of(condition),
      Info: PDFString.of(condition),
      RegistryName: PDFString.of('http://www.color.org'),
      DestOutputProfile: context.register(context.flateStream(bytes, { N: 4 })),
    }),
  );
