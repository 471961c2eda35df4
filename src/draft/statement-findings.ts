import type { LabelElements } from '../labelling/label-elements.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic, Severity } from '../report/diagnostic.ts';
import type { Words } from '../words/words.ts';

const EXTINGUISHING = 'P378';

/**
 * Statements that the law calls for and that cannot be printed, words that contradict the data sheet, and what the record
 * says of statements that this label has not: one note for all of it.
 * @param severity `error` where the document may not leave without them
 */
export function statementFindings(
  record: ProductRecord,
  { missing, unused }: Pick<LabelElements, 'missing' | 'unused'>,
  words: Words,
  severity: Severity,
): Diagnostic[] {
  const at = { file: record.file };
  const lacking = missing.map(
    ({ what, why, cite }): Diagnostic => ({
      code: 'statement-without-words',
      severity,
      message: `${what} cannot be printed: ${words.statements.why(why)}`,
      cite,
      at,
      ...(why.kind === 'needs-words' && {
        path: why.key,
        hint: `add to the record: ${exampleOf(why.key, why.fields)}`,
      }),
    }),
  );
  const idle: Diagnostic[] =
    unused.length === 0
      ? []
      : [
          {
            code: 'statement-setting-unused',
            severity: 'note',
            message: unused.map(each => words.statements.unused(each)).join('; '),
            hint: 'another label of the product may use it; else take it out or correct the code',
            at,
            path: 'statements',
          },
        ];
  return [...lacking, ...contradictions(record, severity), ...idle];
}

/** What to write, with a place for the words and none made up. */
function exampleOf(key: string, fields: readonly string[]): string {
  const code = key.slice(key.lastIndexOf('.') + 1);
  const values = fields.length > 1 ? `{${fields.map(field => `${field}: …`).join(', ')}}` : '…';
  return `\`statements: {words: {${code}: ${values}}}\``;
}

/** Extinguishing agents of the label that the sheet names among the unsuitable ones, or does not name as suitable. */
function contradictions({ statements, sheet, file }: ProductRecord, severity: Severity): Diagnostic[] {
  const given = Object.entries(statements?.words ?? {})
    .filter(([code]) => code.split('+').includes(EXTINGUISHING))
    .flatMap(([code, fields]) => Object.values(fields).flatMap(texts => texts.map(text => ({ code, text }))));
  const says = (text: string | undefined, agent: string) =>
    text?.toLowerCase().includes(agent.toLowerCase()) ?? false;
  const suitable = sheet['fire.suitable-media'];
  return given.flatMap(({ code, text }): Diagnostic[] => {
    const path = `statements.words.${code}`;
    if (says(sheet['fire.unsuitable-media'], text))
      return [
        {
          code: 'media-contradict',
          severity,
          message: `${code} of the label tells to use \`${text}\`, which \`sds.fire.unsuitable-media\` names as unsuitable`,
          hint: 'one of the two is wrong: change `statements.words` or `sds.fire`',
          at: { file },
          path,
        },
      ];
    if (suitable !== undefined && !says(suitable, text))
      return [
        {
          code: 'media-differ',
          severity: 'warning',
          message: `${code} of the label tells to use \`${text}\`; \`sds.fire.suitable-media\` does not name it (\`${suitable}\`)`,
          hint: 'label and data sheet are read side by side: name the same agents in both',
          at: { file },
          path,
        },
      ];
    return [];
  });
}
