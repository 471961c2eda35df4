import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** What a sheet of the European Union needs of a record that is sold there and calculation cannot know. */
export function marketFindings(record: ProductRecord): readonly Diagnostic[] {
  if (!record.soldTo?.markets.includes('eu')) return [];
  const supplier = record.maker?.euSupplier;
  const asked: readonly (readonly [boolean, string, string])[] = [
    [!record.ufi, '`ufi`, the unique formula identifier', '1.1'],
    [!supplier, "`maker: eu-supplier`, the supplier's name, address and telephone", '1.3'],
    [!supplier?.email, '`eu-supplier: email` of the competent person', '1.3'],
    [(supplier?.emergency.length ?? 0) === 0, '`eu-supplier: emergency`, the advisory body', '1.4'],
    [!has(record, 'assessment.pbt'), '`sds: assessment: pbt`', '2.3, 12.5'],
    [!has(record, 'assessment.endocrine-health'), '`sds: assessment: endocrine-health`', '2.3, 11.2'],
    [!has(record, 'assessment.endocrine-environment'), '`sds: assessment: endocrine-environment`', '12.6'],
    [!has(record, 'waste-codes'), '`sds: waste-codes`', '13.1'],
    [!has(record, 'adr.un-number'), '`sds: adr`', '14'],
    [!has(record, 'assessment.chemical-safety'), '`sds: assessment: chemical-safety`', '15.2'],
  ];
  const missing = asked.filter(([open]) => open).map(([, what, place]) => `${what} (${place})`);
  if (missing.length === 0) return [];
  return [
    {
      code: 'eu-sheet-open',
      severity: 'note',
      message: `sold in the EU, and its data sheet lacks ${missing.join('; ')}`,
      hint: 'give them, or `{searched: by whom and where}` where nothing was found',
      at: { file: record.file },
      cite: 'Regulation (EC) No 1907/2006, Annex II',
    },
  ];
}

const has = ({ sheet, sheetSearched }: ProductRecord, key: keyof ProductRecord['sheet']): boolean =>
  Boolean(sheet[key] ?? sheetSearched[key]);
