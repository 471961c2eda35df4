import { type LengthUnit, lengthText } from '../../quantity/length-text.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { SheetFact } from '../sheet-fact.ts';

/** What is to be told of labels on a sheet. */
export function labelSheetFinding(fact: SheetFact, unit: LengthUnit): Diagnostic {
  const text = (length: number) => lengthText(length, unit);
  const across = 'side' in fact && fact.side === 'width';
  switch (fact.id) {
    case 'over-the-page':
      return {
        code: 'sheet-size',
        severity: 'error',
        message: `the labels need ${text(fact.labels)} of ${fact.side}, and the page has ${text(fact.page)}`,
        hint: `lessen ${across ? '`columns`' : '`rows`'}, or correct margin and pitch`,
      };
    case 'over-each-other':
      return {
        code: 'sheet-pitch',
        severity: 'error',
        message: `the pitch of ${text(fact.pitch)} is less than the ${fact.side} of the label, ${text(fact.label)}`,
        hint: `measure from the ${across ? 'left' : 'upper'} edge of one label to that of the next`,
      };
    case 'near-the-edge':
      return {
        code: 'sheet-edge',
        severity: 'warning',
        message: `print comes as near as ${text(fact.edge)} to the edge of the page; office printers leave ${text(fact.least)} white`,
        hint: 'print one sheet and look whether anything is missing',
      };
    case 'no-artwork':
      return {
        code: 'sheet-artwork',
        severity: 'note',
        message: 'artwork and logo are left out of sheets: they are made for the inks of a press',
      };
    case 'no-window':
      return {
        code: 'sheet-lots',
        severity: 'error',
        message: 'the label has no window for lot and date, and lots are to be printed',
        hint: 'leave `lots` out of the sheet',
      };
  }
}
