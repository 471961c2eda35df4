import type { ReviewWords } from '../words.ts';

/** Lines of the list of what a reviewer must look at. */
export const review: ReviewWords = {
  undecided: classes => `not decided for want of data: ${classes.join(', ')}`,
  liftedByEvidence: classes =>
    `not classified by evidence in the record: ${classes
      .map(({ title, calculated }) => `${title} (the calculation: ${calculated.replaceAll('-', ' ')})`)
      .join(', ')}`,
  byEvidence: codes => `given by evidence in the record, not by calculation: ${codes.join(', ')}`,
  choice: (reading, take, reason) => `reading ${reading} taken as ${take}: ${reason}`,
  leftOff: (what, why) => `left off the label: ${what} (${why})`,
  unsearched: (items, mandatory) =>
    `${mandatory ? 'data sheet, not yet searched' : 'data sheet, sections that are not mandatory, not yet searched'}: ${items
      .map(({ section, headings }) => `${section} ${headings.join(', ')}`)
      .join('; ')}`,
  belowCutOff: names =>
    `data sheet, section 3: health hazards below their cut-offs, to be listed where they are a risk all the same (Table D.1, 3 (a)(2)): ${names.join(', ')}`,
  symptomsOpen:
    'data sheet, section 4: symptoms of acute toxicity stand in the words of the class alone; look up those of the ingredients (`sds: first-aid: symptoms`)',
  unconfirmed: names =>
    `data sheet, sections 3, 9 and 12: further names, solubility in water and biodegradability are from memory, to be confirmed: ${names.join(', ')}`,
};
