import type { LabelModel } from '../../document/label.ts';
import { lengthText } from '../../quantity/length-text.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Stock } from '../stock.ts';
import { leastFenceDiameter, orientations } from './bar-code-sizes.ts';
import type { Fitted } from './fit.ts';
import type { Parts } from './parts.ts';
import { containerRoom } from './refusal.ts';

/** What a reviewer should know of a layout. */
export function findings(model: LabelModel, parts: Parts, stock: Stock, fitted: Fitted | null): Diagnostic[] {
  return [
    ...containerFindings(model, stock),
    ...barCodeFindings(parts, stock, fitted),
    ...sizeFindings(stock, fitted),
  ];
}

function containerFindings(model: LabelModel, { die, unit = 'mm' }: Stock): Diagnostic[] {
  const room = containerRoom(model);
  const found: Diagnostic[] = [];
  // A fold-out lies on the container with one panel; a wrap-around covers its own start.
  const round = die.width / (die.panels ?? 1) - (die.overlap ?? 0);
  if (room.width !== null && round > room.width) {
    found.push(
      warning(
        'label-wider-than-container',
        `the label is ${lengthText(die.width, unit)} wide, once round the container is ${lengthText(room.width, unit)}`,
      ),
    );
  }
  if (room.height !== null && die.height > room.height) {
    found.push(
      warning(
        'label-higher-than-panel',
        `the label is ${lengthText(die.height, unit)} high, the label panel ${lengthText(room.height, unit)}`,
      ),
    );
  }
  return found;
}

function barCodeFindings({ barCode }: Parts, { unit = 'mm' }: Stock, fitted: Fitted | null): Diagnostic[] {
  if (!barCode || barCode.diameter === null) return [];
  const ways = orientations(barCode, fitted?.display.bars ?? 0);
  if (ways.some(({ turn }) => turn === 'fence')) return [];
  const least = lengthText(Math.ceil(leastFenceDiameter(barCode)), unit);
  return [
    {
      code: 'bar-code-turned',
      severity: 'note',
      message: `the container is ${lengthText(barCode.diameter, unit)} in diameter, too small for upright bars (${least} at the smallest size): the bar code is turned a quarter`,
      cite: 'GS1 General Specifications section 6 (from memory)',
    },
  ];
}

function sizeFindings({ profile }: Stock, fitted: Fitted | null): Diagnostic[] {
  if (!fitted) return [];
  const size = fitted.measures.xHeight.toFixed(2);
  if (Number(size) >= profile.xHeight.preferred) return [];
  return [
    warning(
      'small-type',
      `running text has an x-height of ${size} mm, above the least of ${profile.xHeight.minimum} mm and below the preferred ${profile.xHeight.preferred} mm`,
    ),
  ];
}

const warning = (code: string, message: string): Diagnostic => ({
  code,
  severity: 'warning',
  message,
  path: 'label',
});
