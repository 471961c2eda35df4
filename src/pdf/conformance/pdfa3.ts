import type { PagedDocument } from '../../layout/frame.ts';
import { pdfua1Faults } from './pdfua1.ts';

const RELATIONSHIPS = ['Source', 'Data', 'Alternative', 'Supplement', 'Unspecified'];

/** Least and greatest side of a page in points (ISO 19005-3 6.1.13). */
const SIDES = { least: 3, most: 14_400 };
const POINTS_PER_MILLIMETRE = 72 / 25.4;

/**
 * What keeps a sheet from claiming PDF/A-3, level A, each with its clause of ISO 19005-3; the lines marked "model" in
 * the checklist beside this file. Level A asks for a tagged file, so that what keeps it from PDF/UA-1 counts too.
 */
export const pdfa3Faults = (document: PagedDocument): string[] => {
  const { frames, attachments, date, title } = document;
  const faults = pdfua1Faults(document).map(fault => `6.7: ISO 14289-1 ${fault}`);
  if (Number.isNaN(Date.parse(date))) faults.push('6.6.2: the date is none');
  if (/\p{Cc}/u.test(title)) faults.push('6.6.2: the title holds control characters');
  for (const { width, height } of frames)
    for (const side of [width, height].map(each => each * POINTS_PER_MILLIMETRE))
      if (side < SIDES.least || side > SIDES.most) faults.push(`6.1.13: a page has a side of ${side} pt`);
  const names = attachments.map(({ name }) => name);
  if (new Set(names).size < names.length) faults.push('6.8: two attached files have one name');
  for (const { name, mediaType, relationship } of attachments) {
    if (!/^[\w.+-]+\/[\w.+-]+$/u.test(mediaType)) faults.push(`6.8: ${name} has no media type`);
    if (!RELATIONSHIPS.includes(relationship))
      faults.push(`6.8: ${name} has no relationship of the standard`);
  }
  return faults;
};
