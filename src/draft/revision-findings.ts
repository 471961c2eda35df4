import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** The parts of a data sheet as JSON that say which revision it is. */
interface SheetData {
  readonly product: { readonly code: string };
  readonly revision: string | null;
  readonly date: string;
  readonly basis: { readonly asOf: string };
  readonly sections: readonly {
    readonly number: number;
    readonly items: readonly { readonly key: string }[];
  }[];
}

/**
 * What a data sheet about to be made says against the one that stands in the output folder: other content under the
 * revision or the date of that one, or a revision that the record does not list. A record without a revision gives its
 * sheets none, and nothing is asked.
 * @param former the JSON of the sheet that stands there; null where none does
 * @param now the JSON of the sheet to be made
 */
export function revisionFindings(
  record: ProductRecord,
  former: string | null,
  now: string,
): readonly Diagnostic[] {
  const before = former === null ? null : sheetData(former);
  const after = sheetData(now);
  if (!before?.revision || !after?.revision || before.product.code !== after.product.code) return [];
  if (content(before) === content(after)) return [];
  const { revision, date } = before;
  const found = (code: string, message: string, hint: string, path: string): Diagnostic => ({
    code,
    severity: 'warning',
    message,
    hint,
    at: { file: record.file },
    path,
  });
  const entry = `{revision: ${revision}, date: ${date}, changes: …}`;
  if (after.revision === revision)
    return [
      found(
        'revision-not-raised',
        `the data sheet that stands there is revision ${revision} of ${date}, and its content is another`,
        `where that one has left the shop, raise \`revision\` and \`revised\`, and add \`${entry}\` to \`revisions\``,
        'revision',
      ),
    ];
  return [
    ...(after.date <= date
      ? [
          found(
            'revision-date-not-moved',
            `revision ${after.revision} has the date ${after.date}, and the one before it has ${date}`,
            'set `revised` to the day of the change',
            'revised',
          ),
        ]
      : []),
    ...(record.revisions.some(each => each.revision === revision)
      ? []
      : [
          found(
            'revision-not-listed',
            `revision ${revision} of ${date} stands there, and the record does not list it`,
            `add it, so that section 16 says what is superseded: \`revisions: [${entry}]\``,
            'revisions',
          ),
        ]),
  ];
}

function sheetData(json: string): SheetData | null {
  try {
    const data = JSON.parse(json) as Partial<SheetData>;
    return Array.isArray(data.sections) && data.basis && data.product ? (data as SheetData) : null;
  } catch {
    return null;
  }
}

/** What a sheet tells, without revision, dates of the run and fingerprint. */
function content({ sections, basis, date }: SheetData): string {
  const told = sections.map(({ number, items }) => [
    number,
    items.filter(({ key }) => !['date', 'changes'].includes(key)),
  ]);
  return JSON.stringify(told).replaceAll(basis.asOf, '').replaceAll(date, '');
}
