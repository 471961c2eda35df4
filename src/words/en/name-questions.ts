import type { NameQuestion } from '../../reference/names/name-question.ts';
import type { NamedSubstance } from '../../reference/names/substance-names.ts';

const listed = (substances: readonly NamedSubstance[]): string =>
  substances.map(({ cas, name }) => `${name} (${cas})`).join(', ');

/** A question about the name of a constituent, with what would answer it. */
export function nameQuestionText(name: string, question: NameQuestion): string {
  switch (question.kind) {
    case 'name-of-another':
      return `${name}: CAS ${question.cas} is ${question.own.slice(0, 3).join(', ')}, and this name is that of ${listed(question.others)}; which of the two is in the drum? Compare both with the supplier's sheet`;
    case 'number-missing':
      return `${name}: there is no CAS number, so no harmonised entry is looked up; is it ${listed(question.proposals)}? Write the number of the supplier's sheet as \`cas\``;
  }
}

/** What a table calls a constituent, where the record calls it otherwise. */
export const tableName = (name: string, index: string): string => `in the table: ${name} (${index})`;
