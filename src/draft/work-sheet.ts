import type { Because, Classification, OtherClass } from '../classify/classification.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import { show } from '../quantity/sum.ts';
import type { ProductRecord } from '../record/product-record.ts';

/** A work sheet as blocks of rows, before it becomes text or Markdown. */
interface Block {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const outcomes = {
  'not-classified': 'not classified',
  'insufficient-data': 'insufficient data',
  'not-applicable': 'not applicable',
} as const;

interface Worked {
  readonly because: Because;
  readonly calculated?: { readonly outcome: string; readonly because: Because };
}

/** The rule worked; where evidence decided, with what the calculation would have given. */
function worked({ because: { rule, working }, calculated }: Worked): string {
  const text = `${rule}: ${working}`;
  if (!calculated) return text;
  const { outcome, because } = calculated;
  const given = (outcomes as Readonly<Record<string, string>>)[outcome] ?? outcome;
  return `${text}; the calculation would give ${given} (${because.rule}: ${because.working})`;
}

const inBrackets = (words: readonly (string | null | undefined)[]): string => {
  const told = words.filter(Boolean);
  return told.length > 0 ? ` (${told.join('; ')})` : '';
};

/** Classes that the product cannot have, together where the reason is the same, with the part of the law once. */
function foldNotApplicable(classes: readonly OtherClass[]): readonly (readonly string[])[] {
  const folded = new Map<string, OtherClass[]>();
  for (const entry of classes) {
    if (entry.outcome !== 'not-applicable') continue;
    const { working } = entry.because;
    folded.set(working, [...(folded.get(working) ?? []), entry]);
  }
  return [...folded].map(([working, group]) => {
    const cites = group.map(({ because }) => because.cite);
    const shared = cites[0]!.slice(0, cites[0]!.lastIndexOf(', ') + 2);
    const short = cites.map((cite, at) =>
      at > 0 && cite.startsWith(shared) ? cite.slice(shared.length) : cite,
    );
    return [working, group.map(({ class: name }) => name).join(', '), [...new Set(short)].join('; ')];
  });
}

function blocksOf(classification: Classification, elements: LabelElements): Block[] {
  const { constituents, hazards, otherClasses, ateMix, unknownAcuteToxicity, readings, warnings } =
    classification;
  const ate = Object.entries(ateMix).filter((entry): entry is [string, number] => entry[1] !== null);
  const units: Readonly<Record<string, string>> = {
    oral: 'mg/kg',
    dermal: 'mg/kg',
    gas: 'ppmV',
    vapour: 'mg/L',
    mist: 'mg/L',
  };
  const examined = otherClasses.filter(({ outcome }) => outcome !== 'not-applicable');
  const unknown = Object.entries(unknownAcuteToxicity).filter(([, percent]) => percent > 0);
  return [
    {
      title: 'Constituents',
      head: ['%', 'name', 'CAS', 'hazards', 'source'],
      rows: constituents.map(
        ({ name, cas, percent, percentRange, hazards: own, source, unknown: gaps, values }) => [
          percentRange ? `${show(percentRange[0])} to ${show(percentRange[1])}` : show(percent),
          name,
          cas ?? '-',
          [own.join(', '), values.join(', '), gaps.length > 0 ? `unknown: ${gaps.join(', ')}` : '']
            .filter(Boolean)
            .join('; ') || 'none',
          source,
        ],
      ),
    },
    {
      title: 'Hazards',
      head: ['class', 'statement', 'worked', 'paragraph'],
      rows: hazards.map(hazard => [
        `${hazard.code}${inBrackets([hazard.effect, ...hazard.organs, hazard.form ?? hazard.route])}`,
        hazard.statements.join(', '),
        worked(hazard),
        hazard.because.cite,
      ]),
    },
    {
      title: 'Label elements',
      head: ['element', 'text'],
      rows: [
        ['signal word', elements.signalWord ?? 'none'],
        ['pictograms', elements.pictograms.join(', ') || 'none'],
        ...elements.hazardStatements.map(({ code, text }) => [code, text]),
        ...elements.precautionaryStatements.map(({ code, text }) => [code, text]),
        ...elements.supplemental.map(({ code, text }) => [code, text]),
      ],
    },
    {
      title: 'Warnings for the reviewer',
      head: ['warning', 'text', 'paragraph'],
      rows: warnings.map(({ id, text, cite }) => [id, text, cite ?? '']),
    },
    {
      title: 'Other classes',
      head: ['class', 'outcome', 'worked', 'paragraph'],
      rows: examined.map(other => [
        `${other.class}${inBrackets([other.route])}`,
        outcomes[other.outcome],
        worked(other),
        other.because.cite,
      ]),
    },
    {
      title: 'Not applicable',
      head: ['why', 'classes', 'paragraphs'],
      rows: foldNotApplicable(otherClasses),
    },
    {
      title: 'Acute toxicity of the mixture, calculated',
      head: ['route or form', 'ATEmix'],
      rows: ate.map(([key, value]) => [key, `${show(value)} ${units[key]!}`]),
    },
    {
      title: 'Unknown acute toxicity',
      head: ['route', '% of the mixture'],
      rows: unknown.map(([route, percent]) => [route, show(percent)]),
    },
    {
      title: 'Left off the label',
      head: ['element', 'why', 'paragraph'],
      rows: elements.omitted.map(({ what, why, cite }) => [what, why, cite]),
    },
    {
      title: 'Readings of the law on which this rests',
      head: ['reading', 'taken', 'paragraph'],
      rows: readings.map(({ id, taken, cite }) => [id, taken, cite]),
    },
  ].filter(({ rows }) => rows.length > 0);
}

const heading = ({ name, code }: ProductRecord, { basis }: Classification): [string, string] => [
  `${name} (${code})`,
  `${basis.title}, as of ${basis.asOf}. Draft for qualified review; local codes and licensed practice decide.`,
];

/** The classification as a person would work it on paper, for a terminal. */
export function workSheetText(
  record: ProductRecord,
  classification: Classification,
  elements: LabelElements,
): string {
  const [title, note] = heading(record, classification);
  const blocks = blocksOf(classification, elements).map(({ title: name, rows }) => {
    const width = Math.min(34, Math.max(...rows.map(([first]) => first!.length)));
    const lines = rows.map(([first, ...rest]) => {
      const [second, ...more] = rest.filter(Boolean);
      const lead = `  ${first!.padEnd(width)}  ${second ?? ''}`;
      return [lead, ...more.map(text => `  ${' '.repeat(width)}  ${text}`)].join('\n');
    });
    return `${name}\n${lines.join('\n')}`;
  });
  return `${[title, note, '', blocks.join('\n\n')].join('\n')}\n`;
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** The same as a Markdown work sheet for the packet. */
export function workSheetMarkdown(
  record: ProductRecord,
  classification: Classification,
  elements: LabelElements,
): string {
  const [title, note] = heading(record, classification);
  const blocks = blocksOf(classification, elements).map(({ title: name, head, rows }) =>
    [
      `## ${name}`,
      '',
      `| ${head.join(' | ')} |`,
      `|${head.map(() => '---').join('|')}|`,
      ...rows.map(row => `| ${row.map(cell).join(' | ')} |`),
    ].join('\n'),
  );
  return `# Work sheet: ${title}\n\n${note}\n\n${blocks.join('\n\n')}\n`;
}
