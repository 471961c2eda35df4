import { readingEntries } from '../classify/readings.ts';
import { en } from '../words/en/index.ts';

/** The readings of the law as a Markdown table, a line each with its paragraph. */
export function readingsTable(): string {
  const rows = readingEntries.map(([id, { cite }]) => {
    const { question, options } = en.reading(id);
    const [first, ...others] = Object.entries(options);
    const taken = `**${first![0]}**: ${first![1]}`;
    const rest = others.map(([name, text]) => `${name}: ${text}`).join('; ');
    return `| ${id} | ${cite} | ${question} | ${taken} | ${rest || '-'} |`;
  });
  return [
    '# Readings of the law',
    '',
    'Generated from `src/classify/readings` and `src/words/en/readings`. Where the law leaves a choice, this is what is taken, and what a record',
    'can choose instead with `choices: [{reading: …, take: …, reason: …}]`.',
    '',
    '| id | paragraph | question | taken | can be chosen |',
    '|---|---|---|---|---|',
    ...rows,
    '',
  ].join('\n');
}
