import { describe, expect, it } from 'vitest';
import shelf from '../../hazard-data/shelf.json' with { type: 'json' };
import { checkedProduct } from '../../src/draft/checked-product.ts';
import { productOf } from '../../src/draft/open-product.ts';
import { harmonisedTable, openReference } from '../../src/draft/open-reference.ts';
import { isCas } from '../../src/notation/cas.ts';
import { memoryFiles } from '../../src/record/files.ts';
import { recordAround } from '../support/cases.ts';

const asOf = '2026-11-25';

async function doubts(line: Record<string, unknown>) {
  const product = productOf(
    recordAround({ formula: [line, { name: 'water', amount: 'balance' }] }),
    memoryFiles({}),
  );
  const reference = await openReference('us-hcs', asOf);
  if (!product.ok || !reference.ok) throw new Error('no product');
  return checkedProduct(product.value, reference.value, asOf);
}

// CLP Annex VI 1.1.1 (from memory): an entry has the CAS number of the anhydrous form as a rule.
describe('a builder bought as a hydrate', () => {
  it('is pointed to the entry without water, with the percent of it', async () => {
    const { doubts: found, resolved } = await doubts({
      name: 'sodium metasilicate pentahydrate',
      cas: '10213-79-3',
      percent: 5,
    });
    const [asked] = found.filter(({ code }) => code === 'hydrate-without-entry');
    expect(asked).toMatchObject({ severity: 'warning' });
    expect(asked!.message).toContain('disodium metasilicate (6834-92-0)');
    // Na2SiO3 122.06 of Na2SiO3.5H2O 212.14 g/mol: 5 % holds 2.88 %.
    expect(asked!.hint).toContain('percent: 2.88');
    // Never taken in silence.
    expect(resolved.some(({ data }) => data.noData)).toBe(true);
  });

  it('is not asked about where the record gives its hazards', async () => {
    const { doubts: found } = await doubts({
      name: 'sodium metasilicate pentahydrate',
      cas: '10213-79-3',
      percent: 5,
      hazards: ['Skin Corr. 1B'],
      source: 'supplier sheet',
    });
    expect(found.map(({ code }) => code)).not.toContain('hydrate-without-entry');
  });

  it('has its own number, and an entry to point to', () => {
    const table = harmonisedTable();
    for (const { cas, of } of shelf.hydrates) {
      expect(isCas(cas), cas).toBe(true);
      expect(table.byCas(cas, asOf), cas).toBeNull();
      expect(table.byCas(of.cas, asOf), of.cas).not.toBeNull();
    }
  });
});

describe('the name of an entry beside a constituent', () => {
  it('is that of the entry which is used', async () => {
    const { entryNames } = await doubts({ name: 'muriatic acid', cas: '7647-01-0', percent: 3 });
    expect(entryNames.get('7647-01-0')).toMatch(/^hydrochloric acid/u);
  });
});
