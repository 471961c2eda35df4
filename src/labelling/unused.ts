import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { StatementText } from '../reference/label-data/statements.ts';
import type { LabelElements, Unused } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';
import { fieldWith, unnamedField } from './precautions/given-words.ts';

/** What the record says of statements and this label has no use for: nothing that a record says is dropped in silence. */
export function unusedSettings(
  {
    hazardStatements,
    precautionaryStatements,
    supplemental,
    omitted,
    missing,
  }: Omit<LabelElements, 'unused'>,
  labelData: LabelData,
  { words = {}, choose = {}, keep = [], omit = [], add = [] }: LabelledProduct,
): Unused[] {
  const isSilent = keep.length + omit.length + add.length === 0;
  if (isSilent && Object.keys(words).length + Object.keys(choose).length === 0) return [];
  const { statements, rules } = labelData;
  const shown = new Set(
    [...hazardStatements, ...precautionaryStatements, ...supplemental].map(({ code }) => code),
  );
  const open = new Set(missing.map(({ what }) => what));
  const parts = new Set([...shown, ...open].flatMap(code => [code, ...code.split('+')]));
  /** On the label by itself or as pieces of a statement that joins several. */
  const stands = (code: string) => parts.has(code) || code.split('+').every(part => parts.has(part));
  const byRecord = new Set(omitted.flatMap(({ what, why }) => (why.kind === 'record' ? [what] : [])));
  const textOf = (code: string): StatementText | undefined =>
    statements.precautionary[code] ?? statements.hazard[code] ?? statements.supplemental?.[code];
  const found: Unused[] = [];
  const note = (block: Unused['block'], code: string, why: Unused['why'] = 'not-on-label') =>
    found.push({ block, code, why });
  for (const [code, fields] of Object.entries(words)) {
    const text = textOf(code);
    if (!text || !stands(code)) note('words', code);
    else if (
      Object.keys(fields).some(name =>
        name === '*' ? !unnamedField(text, labelData) : !(name in (text.fields ?? {})),
      )
    )
      note('words', code, 'no-such-field');
  }
  for (const [code, alternatives] of Object.entries(choose)) {
    const text = textOf(code);
    if (!text || !stands(code)) note('choose', code);
    else if (!fieldWith(text, alternatives)) note('choose', code, 'no-such-alternative');
  }
  for (const code of keep) if (!shown.has(code) && !open.has(code)) note('keep', code);
  for (const { code } of omit)
    if (!byRecord.has(code))
      note(
        'omit',
        code,
        code.startsWith('H') && shown.has(code) && !rules.hazardStatements.inappropriate
          ? 'no-ground'
          : 'not-on-label',
      );
  for (const code of add) if (!stands(code)) note('add', code);
  return found;
}
