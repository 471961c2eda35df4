import { expect, it } from 'vitest';
import { classifierOfRows, rowsInForce } from './harmonised-rows.ts';

const asOf = '2026-11-25';

// CLP Annex VI Table 3 is the outside source: a committee sets category and estimate of a row together, so that one
// may lie in another category (Annex I, Table 3.1.1) only where this list says why.
const known: Readonly<Record<string, string>> = {};

it('no estimate of a harmonised row lies in another category than the one beside it, for its own route', async () => {
  const classifyRow = await classifierOfRows(asOf);
  const found: Record<string, string> = {};
  let estimates = 0;
  for (const [key, row] of rowsInForce(asOf)) {
    if (Object.keys(row.ate).length === 0) continue;
    estimates++;
    for (const warning of classifyRow(row, 100).warnings)
      if (warning.id === 'ate-contradicts-category')
        found[key] = `${warning.key} ${warning.value.value}: ${warning.category}, listed ${warning.listed}`;
  }
  expect(estimates).toBeGreaterThan(100);
  expect(found).toEqual(known);
});
