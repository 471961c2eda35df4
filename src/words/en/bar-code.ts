import type { SizeFact } from '../../barcode/size-facts.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { both, plain } from './lengths.ts';

/** What is to be told of the size of a bar code. */
export const sizeFindings = (facts: readonly SizeFact[], name: string): Diagnostic[] =>
  facts.map(fact => finding(fact, name));

function finding(fact: SizeFact, name: string): Diagnostic {
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
        message: `the bars of ${name} are cut to ${both(fact.height)}; at this size they should be ${both(fact.required)}${fact.beyondAdvice ? `, and more than ${plain(fact.advised * 100)} % is taken off` : ''}: a cashier must turn the pack to the scanner`,
        cite: fact.cite,
      };
    case 'turned':
      return {
        code: 'bar-code-turned',
        severity: 'note',
        message: `the bars of ${name} run round the bottle; upright they would need a diameter of ${both(fact.leastDiameter)}`,
        cite: 'GS1 General Specifications, section 6',
      };
    case 'too-curved':
      return {
        code: 'bar-code-curved',
        severity: 'error',
        message: `the bars of ${name} are too wide for a bottle of ${both(fact.diameter)}; they need ${both(fact.leastDiameter)} or must be turned`,
        cite: 'GS1 General Specifications, section 6',
      };
  }
}
