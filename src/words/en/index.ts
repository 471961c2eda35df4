import type { Reading } from '../../classify/classification.ts';
import type { Words } from '../words.ts';
import { answer } from './answer.ts';
import { sizeFindings } from './bar-code.ts';
import { batch } from './batch.ts';
import { because } from './because.ts';
import { cites } from './cites.ts';
import { claim } from './claims.ts';
import { source, values } from './constituents.ts';
import { consumer } from './consumer.ts';
import { dilution } from './dilution.ts';
import { draftNotices } from './draft-notice.ts';
import { dutyLines } from './duties.ts';
import { jobLine } from './job-line.ts';
import { label } from './label.ts';
import { labelSheetFinding } from './label-sheet.ts';
import { purpose, purposeName, purposes, workplaceWords } from './purposes.ts';
import { readings } from './readings.ts';
import { review } from './review.ts';
import { reviewPage } from './review-page.ts';
import { sheet } from './sheet.ts';
import { spoken } from './spoken.ts';
import { statements } from './statements.ts';
import { supply } from './supply.ts';
import { bridgingFault, warning } from './warnings.ts';
import { outcomes, workSheet } from './work-sheet.ts';

/** English. */
export const en: Words = {
  language: 'en',
  decimalMark: '.',
  cites,
  because,
  warning,
  reading: id => readings[id],
  taken: ({ id, taken }: Reading) => `${taken}: ${readings[id].options[taken]}`,
  source,
  values,
  answer,
  workSheet,
  sheet,
  label,
  outcomes,
  review,
  reviewPage,
  batch,
  statements,
  spoken,
  draftNotices,
  dilution,
  claim,
  jobLine,
  labelSheet: labelSheetFinding,
  barCodeSize: sizeFindings,
  duties: dutyLines,
  consumer,
  supply,
  purposeName,
  purpose,
  purposes,
  workplaceWords,
  bridgingFault,
};
