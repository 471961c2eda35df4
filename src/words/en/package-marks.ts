import type { MarinePollutantMark } from '../../logistics/package-marks.ts';
import type { Pack } from '../../record/product-record.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { plain } from './lengths.ts';

/** The mark of a marine pollutant, as a line for a reader; none where the product is none. */
export function marinePollutantLines(mark: MarinePollutantMark | null): string[] {
  if (!mark) return [];
  const size = `sides of ${plain(mark.side)} mm or more, border ${plain(mark.border)} mm or more [${mark.size}]`;
  const names = `its names in parentheses after the shipping name [${mark.names}]`;
  const not = 'mark of a marine pollutant: none by vessel';
  switch (mark.status) {
    case 'due':
      return [
        `mark of a marine pollutant by vessel [${mark.cite}]: ${size}, beside the hazard labels; ${names}`,
      ];
    case 'open':
      return [
        `mark of a marine pollutant by vessel: open, the contents cannot be held against the limit [${mark.cite}]; ${size}`,
      ];
    case 'small':
      return [`${not} on inner packagings up to 5 L or 5 kg [${mark.cite}]; ${names}`];
    case 'limited-quantity':
      return [`${not} on a limited quantity [${mark.cite}]`];
  }
}

/**
 * What is to be told of marks that no label draws, and of what a mark lacks.
 * @param consignor the paragraph that asks for name and address, where the mark lacks them; else null
 */
export function packageMarkFindings(
  marine: MarinePollutantMark | null,
  consignor: string | null,
  { at }: Pack,
): Diagnostic[] {
  const found: Diagnostic[] = [];
  if (marine && (marine.status === 'due' || marine.status === 'open'))
    found.push({
      code: 'marine-pollutant-mark',
      severity: 'warning',
      message: `by vessel the case bears the MARINE POLLUTANT mark${marine.status === 'open' ? ' where an inner packaging holds more than 5 L or 5 kg' : ''}; it is not drawn here`,
      hint: 'buy the mark in print for cases that go by vessel',
      cite: marine.cite,
      at,
    });
  if (consignor !== null)
    found.push({
      code: 'consignor-missing',
      severity: 'warning',
      message: 'number and name are drawn without name and address of the consignor or the consignee',
      hint: 'add `maker:` to the record, or write them on the case',
      cite: consignor,
      at,
    });
  return found;
}

/** A shipping name on the outside of a case that tells a trade secret; none where there is none. */
export const secretFindings = (names: readonly string[], { at }: Pack): Diagnostic[] =>
  names.map(name => ({
    code: 'shipping-name-secret',
    severity: 'warning',
    message: `number and shipping name on the case tell ${name}, whose identity is claimed as a trade secret`,
    hint: 'the rules of transport ask for the name: give the claim up, or have a competent person find another shipping name',
    cite: '49 CFR 172.301(b), 172.203(k)',
    at,
  }));
