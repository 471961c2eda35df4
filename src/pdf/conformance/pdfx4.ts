import type { Frame, PagedDocument } from '../../layout/frame.ts';
import { DEFAULT_DIE, type LabelProfile, profileFaults } from '../profile.ts';

const boxFaults = ({ width, height, bleed, slug }: Frame): string[] =>
  width > 0 && height > 0 && bleed >= 0 && slug >= 0
    ? []
    : ['page boxes: the trim is empty or leaves the page'];

const tidy = (text: string): boolean => text.trim() !== '' && !/[\p{Cc}]/u.test(text);

/**
 * What keeps a label from claiming PDF/X-4: the lines marked "model" in the checklist beside this file, each by its
 * name there. Empty where the claim may be made.
 */
export const pdfx4Faults = (document: PagedDocument, profile: LabelProfile): string[] => {
  const faults: string[] = profileFaults(profile).map(fault => `output intent: ${fault}`);
  if (!profile.iccProfile) faults.push('output intent: there is no output profile');
  if (!tidy(document.title)) faults.push('metadata: the title is empty or holds control characters');
  if (Number.isNaN(Date.parse(document.date))) faults.push('metadata: the date is none');
  if (document.frames.length === 0) faults.push('page boxes: there is no page');
  faults.push(...document.frames.flatMap(boxFaults));
  if (document.attachments.length > 0) faults.push('attached files: a label for the press carries none');
  const { brand } = profile;
  if (brand?.spot !== undefined && brand.spot === (profile.die?.ink ?? DEFAULT_DIE.ink))
    faults.push('inks: brand color and cut line bear one name');
  return faults;
};
