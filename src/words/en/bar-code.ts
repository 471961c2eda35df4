import type { SizeFact } from '../../barcode/size-facts.ts';
import { type LengthUnit, lengthText } from '../../quantity/length-text.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { plain } from './lengths.ts';

/** What is to be told of the size of a bar code. */
export const sizeFindings = (
  facts: readonly SizeFact[],
  name: string,
  unit: LengthUnit = 'mm',
): Diagnostic[] => facts.map(fact => finding(fact, name, length => lengthText(length, unit)));

function finding(fact: SizeFact, name: string, text: (length: number) => string): Diagnostic {
  switch (fact.id) {
    case 'x-below-least':
    case 'x-above-most':
      return {
        code: 'bar-code-size',
        severity: 'error',
        message: `${name} at ${plain(fact.magnification)} % has an X-dimension of ${plain(fact.x, 3)} mm; the ${fact.id === 'x-below-least' ? 'least' : 'most'} is ${plain(fact.limit, 3)} mm`,
        cite: 'GS1 General Specifications 5.12.3',
      };
    case 'on-demand-size':
      return {
        code: 'bar-code-size',
        severity: 'note',
        message: `${name} has an X-dimension of ${plain(fact.x, 3)} mm, less than the ${plain(fact.least, 3)} mm of a press; that is for printing on demand alone`,
        cite: 'GS1 General Specifications 5.12.3',
      };
    case 'truncated':
      return {
        code: 'bar-code-truncated',
        severity: 'warning',
        message: `the bars of ${name} are cut to ${text(fact.height)}; at this size they should be ${text(fact.required)}${fact.beyondAdvice ? `, and more than ${plain(fact.advised * 100)} % is taken off` : ''}: a scanner at a checkout may miss them unless the pack is turned to it`,
        cite: fact.cite,
      };
    case 'turned':
      return {
        code: 'bar-code-turned',
        severity: 'note',
        message: `the bars of ${name} run round the bottle; upright they would need a diameter of ${text(fact.leastDiameter)}`,
        cite: 'GS1 General Specifications, section 6',
      };
    case 'too-curved':
      return {
        code: 'bar-code-curved',
        severity: 'error',
        message: `the bars of ${name} are too wide for a bottle of ${text(fact.diameter)}; they need ${text(fact.leastDiameter)} or must be turned`,
        cite: 'GS1 General Specifications, section 6',
      };
  }
}
