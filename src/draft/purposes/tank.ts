import sign from '../../../templates/stocks/tank-sign.json' with { type: 'json' };
import type { TypeRules } from '../../document/type-rules.ts';
import { usual } from '../../reference/basis.ts';
import type { Purpose } from './purpose.ts';

const CITE = '29 CFR 1910.1200(f)(6)(ii)';

const rules = (least: number): TypeRules => ({
  least: {},
  front: null,
  cite: CITE,
  bordered: false,
  frames: { red: false, cite: CITE },
  sign: {
    least,
    largest: sign.xHeight.largest,
    part: sign.xHeight.largestPart,
    pictogramSide: sign.pictogram.largestSide,
  },
});

/**
 * The label of a tank or another container that stays in the workplace (29 CFR 1910.1200(f)(6)(ii)): product
 * identifier, and signal word, pictograms and hazard statements as the general information on the hazards. Precautions
 * of prevention follow where they have room beside letters that are read from afar; the paragraph asks for none.
 */
export const tank: Purpose = {
  id: 'tank',
  basis: usual,
  languages: 'alone',
  die: { width: sign.width, height: sign.height, cornerRadius: 0, unit: 'in' },
  prepare({ elements }, pack, { supply }) {
    const short = elements.precautionaryStatements
      .filter(({ group }) => group === 'prevention')
      .map(({ text }) => text);
    const scope = {
      code: 'workplace-container',
      severity: 'note' as const,
      message: supply.tank.scope(),
      cite: '29 CFR 1910.1200(f)(1), (f)(6)',
      at: pack.at,
    };
    return {
      // A precaution without words may stay away; a hazard statement may not.
      elements: { ...elements, missing: elements.missing.filter(({ what }) => what.startsWith('H')) },
      sections: { short },
      type: rules(sign.xHeight.readable),
      shorter: {
        sections: { short: [] },
        type: rules(0),
        finding: {
          code: 'without-precautions',
          severity: 'note',
          message: supply.tank.withoutPrecautions(),
          cite: CITE,
          at: pack.at,
        },
      },
      findings: [scope],
    };
  },
};
