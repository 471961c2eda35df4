import type { LaidOut } from '../layout/case/case-label.ts';
import { thermalStock } from '../layout/case/thermal-stock.ts';
import type { Pack } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** Tells of data in words alone, and of bars nearer to the edge than labels usually wander. */
export function barFindings({ edge, withoutBars }: LaidOut, { at }: Pack): Diagnostic[] {
  const found: Diagnostic[] = withoutBars.map(({ ai, value }) => ({
    code: 'without-bars',
    severity: 'warning',
    message: `(${ai}) ${value} is on the label in words alone: its bars do not fit`,
    at,
  }));
  const usual = thermalStock.edge;
  if (edge < usual.value)
    found.push({
      code: 'bars-at-edge',
      severity: 'note',
      message: `the quiet zones of the bars end ${edge} mm from the edge of the label; watch that labels run straight`,
      cite: usual.source,
      at,
    });
  return found;
}
