import type { Classification, OtherClass, Replaced } from '../classify/classification.ts';
import type { Because } from '../classify/facts/because.ts';
import { namedIn, unitOf } from '../classify/facts/figure.ts';
import type { Formula } from '../formula/constituent.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import { printHazard } from '../notation/print-hazard.ts';
import { show } from '../quantity/print.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { tellAll } from '../words/telling.ts';
import type { RangeEnd, Telling, Words } from '../words/words.ts';
import { answerOf } from './answer.ts';
import { askedRows } from './asked-rows.ts';
import { supplierQuestions } from './supplier-questions.ts';
import type { UseSolution } from './use-solutions.ts';

/** What a work sheet is made of. */
export interface WorkSheet {
  readonly record: ProductRecord;
  /** Tells through which raw materials a constituent came; without it, questions to suppliers are by ingredient. */
  readonly formula?: Pick<Formula, 'constituents'>;
  readonly classification: Classification;
  readonly elements: LabelElements;
  /** What the user holds after dilution. */
  readonly solutions?: readonly UseSolution[];
  readonly words: Words;
}

/** A work sheet as blocks of rows, before it becomes text or Markdown. */
interface Block {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

interface Worked {
  readonly because: Because;
  readonly calculated?: Replaced;
  readonly milder?: string;
}

/**
 * The rule worked; where evidence decided, with what the calculation would have given, and where ranges did, with the
 * ends that were taken and what the milder ones give.
 */
export function worked(
  { because, calculated, milder }: Worked,
  { words, classification }: Pick<WorkSheet, 'words' | 'classification'>,
): string {
  const telling = tellAll(classification);
  const told = (reason: Because): string => {
    const { rule, working } = words.because(reason, telling);
    return `${rule}: ${working}`;
  };
  const text = told(because);
  if (calculated) {
    const { outcome } = calculated;
    return words.workSheet.replaced(text, words.outcomes[outcome] ?? outcome, told(calculated.because));
  }
  return milder === undefined
    ? text
    : words.workSheet.ranged(text, endsTaken(because, classification), words.outcomes[milder] ?? milder);
}

/** Constituents of a reason whose percent is a range, with the percent that was taken. */
function endsTaken(because: Because, { constituents }: Classification): readonly RangeEnd[] {
  const named = new Map((namedIn(because) ?? []).map(each => [each.constituent, each.amount]));
  return [...named].flatMap(([place, amount]): RangeEnd[] => {
    const { name, low, high } = constituents[place]!;
    if (low.value === high.value) return [];
    return [{ name, taken: show(amount.value), low: show(low.value), high: show(high.value) }];
  });
}

const inBrackets = (parts: readonly (string | null | undefined)[]): string => {
  const told = parts.filter(Boolean);
  return told.length > 0 ? ` (${told.join('; ')})` : '';
};

/** Classes that the product cannot have, together where the reason is the same. */
function foldNotApplicable(
  classes: readonly OtherClass[],
  words: Words,
  telling: Telling,
): readonly (readonly string[])[] {
  const folded = new Map<string, OtherClass[]>();
  for (const entry of classes) {
    if (entry.outcome !== 'not-applicable') continue;
    const { working } = words.because(entry.because, telling);
    folded.set(working, [...(folded.get(working) ?? []), entry]);
  }
  return [...folded].map(([working, group]) => {
    const cites = new Map(
      group.flatMap(({ because }) => because.cites.map(cite => [words.cites([cite]), cite] as const)),
    );
    return [working, group.map(({ class: name }) => name).join(', '), words.cites([...cites.values()])];
  });
}

function blocksOf(sheet: WorkSheet): Block[] {
  const { classification, words, formula } = sheet;
  const rows = askedRows(supplierQuestions(classification, formula ?? null), classification, words);
  return rows.length > 0 ? [{ ...words.answer.ask, rows }, ...workedBlocks(sheet)] : workedBlocks(sheet);
}

const answerLines = ({ classification, elements, words }: WorkSheet): readonly string[] =>
  words.answer.lines(answerOf(classification, elements), tellAll(classification).names);

function workedBlocks(sheet: WorkSheet): Block[] {
  const { classification, elements, words } = sheet;
  const { constituents, hazards, otherClasses, ateMix, unknownAcuteToxicity, readings, warnings } =
    classification;
  const { workSheet: labels } = words;
  const telling = tellAll(classification);
  const ate = Object.entries(ateMix).filter((entry): entry is [string, number] => entry[1] !== null);
  const examined = otherClasses.filter(({ outcome }) => outcome !== 'not-applicable');
  const unknown = Object.entries(unknownAcuteToxicity).filter(([, percent]) => percent > 0);
  const rows: Readonly<Record<keyof typeof labels.blocks, Block['rows']>> = {
    constituents: constituents.map(constituent => {
      const { name, cas, low, high, data } = constituent;
      const told = [
        data.hazards.map(printHazard).join(', '),
        words.values(constituent).join(', '),
        data.unknown.size > 0 ? labels.unknown([...data.unknown]) : '',
      ];
      return [
        low.value === high.value ? show(high.value) : labels.range(show(low.value), show(high.value)),
        name,
        cas ?? '-',
        told.filter(Boolean).join('; ') || labels.none,
        words.source(data.source),
      ];
    }),
    hazards: hazards.map(hazard => [
      `${hazard.code}${inBrackets([hazard.effect, ...hazard.organs, hazard.form ?? hazard.route])}`,
      hazard.statements.join(', '),
      worked(hazard, sheet),
      words.cites(hazard.because.cites),
    ]),
    elements: [
      [labels.signalWord, elements.signalWord ?? labels.none],
      [labels.pictograms, elements.pictograms.join(', ') || labels.none],
      ...elements.hazardStatements.map(({ code, text }) => [code, text]),
      ...elements.precautionaryStatements.map(({ code, text }) => [code, text]),
      ...elements.supplemental.map(({ code, text }) => [code, text]),
    ],
    solutions: (sheet.solutions ?? []).map(({ packs, dilution, solution }) => [
      `${dilution.written} (${dilution.with})`,
      [dilution.use, ...packs].filter(Boolean).join(', '),
      solution.elements.signalWord ?? labels.none,
      solution.classification.hazards.map(({ code }) => code).join(', ') || words.outcomes['not-classified']!,
      openClasses(solution.classification),
    ]),
    warnings: warnings.map(warning => [
      warning.id,
      words.warning(warning, telling),
      words.cites(warning.cites),
    ]),
    otherClasses: examined.map(other => [
      `${other.class}${inBrackets([other.route])}`,
      words.outcomes[other.outcome]!,
      worked(other, sheet),
      words.cites(other.because.cites),
    ]),
    notApplicable: foldNotApplicable(otherClasses, words, telling),
    ateMix: ate.map(([key, value]) => [key, `${show(value)} ${unitOf[key as keyof typeof unitOf]}`]),
    unknownToxicity: unknown.map(([route, percent]) => [route, show(percent)]),
    omitted: elements.omitted.map(({ what, why, cite }) => [what, words.statements.why(why), cite]),
    readings: readings.map(reading => [reading.id, words.taken(reading), reading.cite]),
  };
  return Object.entries(labels.blocks)
    .map(([block, { title, head }]) => ({ title, head, rows: rows[block as keyof typeof rows] }))
    .filter(block => block.rows.length > 0);
}

/** Classes that are not decided, once each. */
const openClasses = ({ otherClasses }: Classification): string => {
  const open = otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  return [...new Set(open.map(({ class: name }) => name))].join(', ');
};

const heading = ({ record, classification: { basis }, words }: WorkSheet): [string, string] => [
  `${record.name} (${record.code})`,
  words.workSheet.draft(basis.title, basis.asOf),
];

/** The classification as a person would work it on paper, for a terminal. */
export function workSheetText(sheet: WorkSheet): string {
  const [title, note] = heading(sheet);
  const blocks = blocksOf(sheet).map(({ title: name, rows }) => {
    const width = Math.min(34, Math.max(...rows.map(([first]) => first!.length)));
    const lines = rows.map(([first, ...rest]) => {
      const [second, ...more] = rest.filter(Boolean);
      const lead = `  ${first!.padEnd(width)}  ${second ?? ''}`;
      return [lead, ...more.map(text => `  ${' '.repeat(width)}  ${text}`)].join('\n');
    });
    return `${name}\n${lines.join('\n')}`;
  });
  return `${[title, note, '', ...answerLines(sheet), '', blocks.join('\n\n')].join('\n')}\n`;
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** The same as a Markdown work sheet for the packet. */
export function workSheetMarkdown(sheet: WorkSheet): string {
  const [title, note] = heading(sheet);
  const { title: name } = sheet.words.workSheet;
  const blocks = blocksOf(sheet).map(({ title: block, head, rows }) =>
    [
      `## ${block}`,
      '',
      `| ${head.join(' | ')} |`,
      `|${head.map(() => '---').join('|')}|`,
      ...rows.map(row => `| ${row.map(cell).join(' | ')} |`),
    ].join('\n'),
  );
  return `# ${name}: ${title}\n\n${note}\n\n${answerLines(sheet).join('\n\n')}\n\n${blocks.join('\n\n')}\n`;
}
