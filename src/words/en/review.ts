import type { ReviewWords } from '../words.ts';

/** Lines of the list of what a reviewer must look at. */
export const review: ReviewWords = {
  undecided: classes => `not decided for want of data: ${classes.join(', ')}`,
  byEvidence: codes => `given by evidence in the record, not by calculation: ${codes.join(', ')}`,
  choice: (reading, take, reason) => `reading ${reading} taken as ${take}: ${reason}`,
  leftOff: (what, why) => `left off the label: ${what} (${why})`,
};
