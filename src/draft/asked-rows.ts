import type { Classification } from '../classify/classification.ts';
import type { SupplierQuestion } from '../words/answer-words.ts';
import type { Words } from '../words/words.ts';

interface Line {
  readonly first: SupplierQuestion;
  readonly texts: string[];
}

const nameOf = (
  { constituent }: SupplierQuestion,
  { constituents }: Pick<Classification, 'constituents'>,
): string | null => (constituent === null ? null : constituents[constituent]!.name);

const textOf = (
  question: SupplierQuestion,
  classification: Pick<Classification, 'constituents'>,
  { answer }: Words,
): string => {
  // Where the subject is the ingredient itself, its name stands there already.
  const name = question.through.length > 0 ? nameOf(question, classification) : null;
  return answer.question(question.wants, question.constituent === null, name);
};

/** Questions as rows: whom they concern, and what is missing, a row for each section of the sheet. */
export function askedRows(
  questions: readonly SupplierQuestion[],
  classification: Pick<Classification, 'constituents'>,
  words: Words,
): readonly (readonly [string, string])[] {
  const lines = new Map<string, Line>();
  for (const question of questions) {
    const { through, constituent, section } = question;
    const key = JSON.stringify([through.length > 0 ? through : constituent, section]);
    const line = lines.get(key) ?? { first: question, texts: [] };
    line.texts.push(textOf(question, classification, words));
    lines.set(key, line);
  }
  return [...lines.values()].map(({ first, texts }) => [
    words.answer.subject(first.through, nameOf(first, classification)),
    words.answer.section(first.section, first.constituent === null, texts),
  ]);
}

/** Questions as data, with their words. */
export const askedJson = (
  questions: readonly SupplierQuestion[],
  classification: Pick<Classification, 'constituents'>,
  words: Words,
) =>
  questions.map(question => ({
    rawMaterials: question.through,
    ingredient: nameOf(question, classification),
    section: question.section,
    wants: question.wants,
    text: textOf(question, classification, words),
  }));
