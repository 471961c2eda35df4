import type { Classification } from '../../classify/classification.ts';
import { readings } from '../../classify/readings.ts';
import { printHazard } from '../../notation/print-hazard.ts';
import { show } from '../../quantity/print.ts';
import type { Words } from '../../words/words.ts';
import { worked } from '../work-sheet.ts';

/** A class with its reason one click deep. */
export interface ClassRow {
  readonly name: string;
  readonly outcome: string;
  /** The rule worked as on paper, with what evidence or ranges replace. */
  readonly working: string;
  readonly cite: string;
}

/** A reading that was taken, with the options that it had. */
export interface ReadingRow {
  readonly id: string;
  readonly question: string;
  readonly taken: string;
  readonly others: readonly string[];
  readonly how: string | null;
  readonly cite: string;
}

const inBrackets = (parts: readonly (string | null | undefined)[]): string => {
  const told = parts.filter(Boolean);
  return told.length > 0 ? ` (${told.join('; ')})` : '';
};

/** Every class of a basis: those that the mixture has, those that are open, the others. */
export function classRows(classification: Classification, words: Words) {
  const outcome = (name: string): string => words.outcomes[name] ?? name;
  const row = (name: string, result: string, reason: Parameters<typeof worked>[0]): ClassRow => ({
    name,
    outcome: outcome(result),
    working: worked(reason, { words, classification }),
    cite: words.cites(reason.because.cites),
  });
  const others = classification.otherClasses.map(other =>
    row(`${other.class}${inBrackets([other.route])}`, other.outcome, other),
  );
  const open = outcome('insufficient-data');
  const never = outcome('not-applicable');
  return {
    hazards: classification.hazards.map(hazard =>
      row(
        `${hazard.code}${inBrackets([hazard.effect, ...hazard.organs, hazard.form ?? hazard.route])}`,
        hazard.statements.join(', '),
        hazard,
      ),
    ),
    open: others.filter(each => each.outcome === open),
    examined: others.filter(each => each.outcome !== open && each.outcome !== never),
    never: others.filter(each => each.outcome === never),
  };
}

/** Every reading on which the result depends, in the order of the classification. */
export const readingRows = (classification: Classification, words: Words): readonly ReadingRow[] =>
  classification.readings.map(reading => {
    const { id, taken, cite } = reading;
    const { question, options } = words.reading(id);
    const others = readings[id].options.filter(option => option !== taken);
    return {
      id,
      question,
      taken: words.taken(reading),
      others: others.map(option => `${option}: ${options[option]}`),
      how: words.reviewPage.otherReading(id, others),
      cite,
    };
  });

/** Constituents with what they were judged by. */
export const constituentRows = (classification: Classification, words: Words) =>
  classification.constituents.map(constituent => {
    const { name, cas, low, high, data } = constituent;
    return {
      name,
      cas: cas ?? '–',
      percent:
        low.value === high.value
          ? show(high.value)
          : words.workSheet.range(show(low.value), show(high.value)),
      data: [
        data.hazards.map(printHazard).join(', '),
        words.values(constituent).join(', '),
        data.unknown.size > 0 ? words.workSheet.unknown([...data.unknown]) : '',
      ].filter(Boolean),
      source: words.source(data.source),
    };
  });
