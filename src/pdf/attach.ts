import { type PDFContext, PDFHexString, type PDFRef, type PDFString } from 'pdf-lib';
import type { Attachment } from '../layout/frame.ts';
import { flateStream } from './flate.ts';

/**
 * Embeds the files that go with a document (ISO 32000-1 7.11.4): stream with media type and dates, file
 * specification with relationship. Gives the specifications by name, sorted as a name tree wants them.
 */
export const attach = (
  context: PDFContext,
  attachments: readonly Attachment[],
  date: PDFString,
): readonly (readonly [PDFHexString, PDFRef])[] => {
  const byName = [...attachments].sort((a, b) => (a.name < b.name ? -1 : 1));
  return byName.map(({ name, mediaType, description, relationship, bytes }) => {
    const stream = context.register(
      flateStream(context, bytes, {
        Type: 'EmbeddedFile',
        Subtype: mediaType,
        Params: { Size: bytes.length, CreationDate: date, ModDate: date },
      }),
    );
    const shown = PDFHexString.fromText(name);
    const specification = context.register(
      context.obj({
        Type: 'Filespec',
        F: shown,
        UF: shown,
        Desc: PDFHexString.fromText(description),
        AFRelationship: relationship,
        EF: { F: stream, UF: stream },
      }),
    );
    return [shown, specification] as const;
  });
};
