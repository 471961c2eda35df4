import { copyComment } from '../document/copy-meta.ts';
import type { Duty } from '../duties/duty.ts';
import type { CopyMark } from '../provenance/copy-mark.ts';
import type { Words } from '../words/words.ts';
import { classificationJson } from './classification-json.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { draftTransport } from './draft-transport.ts';
import { dutyJson } from './duty-json.ts';
import type { PacketFile } from './packet.ts';
import { shipJson } from './ship-json.ts';
import { useSolutions } from './use-solutions.ts';
import { workSheetMarkdown } from './work-sheet.ts';

/**
 * What a packet holds for the reviewer alone: classification and work sheet with reasons and formula, transport of the
 * first pack, duties around the label.
 * @param date YYYY-MM-DD
 */
export function reviewFiles(
  product: ClassifiedProduct,
  date: string,
  duties: readonly Duty[],
  review: CopyMark,
  words: Words,
): readonly PacketFile[] {
  const { record, formula, classification, elements, reference } = product;
  const [pack] = record.packs;
  const { solutions } = useSolutions(product, reference);
  const sheet = workSheetMarkdown({ record, formula, classification, elements, solutions, words });
  const transport: readonly PacketFile[] = pack
    ? [
        {
          name: 'transport.json',
          what: `transport description of ${pack.contents.written}, as data`,
          kind: 'review',
          bytes: jsonCopy(shipJson(record, pack.id, date, draftTransport(product, pack)), review),
        },
      ]
    : [];
  return [
    {
      name: 'classification.json',
      what: 'classification with reasons, as data',
      kind: 'review',
      bytes: jsonCopy(classificationJson(record, classification, elements, words), review),
    },
    {
      name: 'work-sheet.md',
      what: 'work sheet: every class worked as on paper',
      kind: 'review',
      bytes: `${copyComment(review)}\n${sheet}`,
    },
    ...transport,
    {
      name: 'duties.json',
      what: 'duties around the label with what triggered them, as data',
      kind: 'review',
      bytes: jsonCopy(
        {
          schema: 'labelwright/duties/1',
          product: { name: record.name, code: record.code },
          duties: duties.map(dutyJson),
        },
        review,
      ),
    },
  ];
}

const jsonCopy = (document: object, { kind, fingerprint }: CopyMark): string =>
  `${JSON.stringify({ ...document, copy: kind, fingerprint }, null, 2)}\n`;
