import type { Pack } from '../../record/product-record.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { ReelFacts, Taken } from '../../roll/reel-facts.ts';
import type { StripFault } from '../../roll/strip-fault.ts';
import { both, bothMasses, counted, duration, plain } from './lengths.ts';

/** What each edge is called when it leads. */
export const LEADING = {
  top: 'top of the label first',
  bottom: 'bottom of the label first',
  left: 'left side of the label first',
  right: 'right side of the label first',
} as const;

export const WOUND = { out: 'print outside', in: 'print inside' } as const;

type LabelSize = NonNullable<ReelFacts['label']>;

const PROBLEMS: Readonly<Record<ReelFacts['problems'][number], string>> = {
  'no-label': 'the pack gives no size of its label; add `label: {width: …, height: …}`',
  'no-roll':
    'the pack gives no roll; add `roll: {core: …, max-diameter: …, gap: …, liner-and-face: …, unwind: …}`',
  'no-cylinder': 'the container is no cylinder of a known diameter: no label size can be worked out for it',
  'core-fills-roll': 'no label fits: the core is as large as the largest roll',
  'gap-unusual': 'the gap between labels is outside of the usual 2 to 4 mm; ask whether the labeler sees it',
  'thickness-unusual':
    'liner and face together are unusually thin or thick; measure ten layers and divide by ten',
  'unwind-ambiguous':
    'the number of the unwind direction does not tell which edge leads: charts of label printers contradict each other; give --leading-edge and show the printer the picture',
};

/** Without these there is no answer. */
const FATAL: readonly ReelFacts['problems'][number][] = ['no-label', 'no-roll', 'core-fills-roll'];

/** What keeps the answer from being whole or certain. */
export function reelFindings({ problems, onBottle, bottle, label }: ReelFacts, { at }: Pack): Diagnostic[] {
  const told = (code: string, message: string, fatal = false): Diagnostic => ({
    code: `reel-${code}`,
    severity: fatal ? 'error' : 'warning',
    message,
    at,
  });
  const found = problems.map(problem => told(problem, PROBLEMS[problem], FATAL.includes(problem)));
  if (!onBottle || !bottle || !label) return found;
  const text = misfit(onBottle, bottle, label);
  return [...found, ...onBottle.problems.map(problem => told(problem, text(problem)))];
}

const misfit =
  (
    { overlap }: NonNullable<ReelFacts['onBottle']>,
    bottle: NonNullable<ReelFacts['bottle']>,
    { height }: NonNullable<ReelFacts['label']>,
  ) =>
  (problem: NonNullable<ReelFacts['onBottle']>['problems'][number]): string =>
    ({
      'taller-than-panel': `the label is ${both(height)} high and the straight panel is lower`,
      'close-to-panel': `the label is ${both(height)} high; the advised height is ${both(bottle.height ?? 0)}`,
      'thin-overlap': `the label overlaps by ${both(overlap)}, and the circumference varies by ${both(bottle.variation)} with the bottle`,
      'wider-than-wrap': `the label is ${both(overlap)} longer than the bottle is round`,
    })[problem];

const TAKEN: Readonly<Record<Taken['what'], (value: number) => string>> = {
  'core-wall': value => `wall of the core ${both(value)}`,
  'liner-margin': value => `liner ${both(value)} wider than the label on each side`,
  density: value => `density of face, adhesive and liner together ${plain(value, 2)} g/cm3`,
  spoilage: value => `spoilage ${plain(value)} %`,
  threading: value => `${plain(value)} m of web lost to thread each roll`,
  speed: value => `${plain(value)} bottles a minute`,
  'panel-margin': value => `label ${both(value)} lower than the straight panel`,
};

/** The answer for a reader, a line each. */
export function reelText(facts: ReelFacts, name: string): string[] {
  const lines = [name];
  const { bottle, label, onBottle, roll } = facts;
  if (bottle) {
    const { wrap } = bottle;
    lines.push('', 'Bottle');
    lines.push(`  circumference ${both(bottle.circumference)}`);
    lines.push(
      `  label all round, ${wrap.ends.kind} of ${both(wrap.ends.by)}: ${both(wrap.width)} wide${bottle.height === null ? '' : `, up to ${both(bottle.height)} high`}`,
    );
    lines.push(`  seen at once from the front: about ${both(bottle.oneView)}`);
  }
  if (label) {
    const share = onBottle ? `, covers ${plain(onBottle.covers * 100, 0)} % of the way round` : '';
    lines.push('', 'Label', `  ${both(label.width)} wide, ${both(label.height)} high${share}`);
  }
  if (roll) lines.push(...rollText(roll));
  if (facts.taken.length > 0) {
    lines.push('', 'Taken, since nothing else was given');
    for (const { what, value, source } of facts.taken) lines.push(`  ${TAKEN[what](value)} (${source})`);
  }
  return lines;
}

function rollText(roll: NonNullable<ReelFacts['roll']>): string[] {
  const { unwinding, full, order } = roll;
  const lines = ['', 'Roll'];
  lines.push(`  label and gap along the web ${both(roll.pitch)}, liner ${both(roll.linerWidth)} wide`);
  const edges =
    unwinding.leadingEdge === null
      ? unwinding.readings.map(({ chart, leadingEdge }) => `${chart}: ${LEADING[leadingEdge]}`).join('; ')
      : LEADING[unwinding.leadingEdge];
  lines.push(`  ${WOUND[unwinding.wound]}; ${edges}`);
  lines.push(
    `  a full roll of ${both(roll.maxDiameter)} on a core of ${both(roll.core)}: ${counted(full.labels)} labels, ${plain(full.metres)} m, ${bothMasses(full.kilograms)} without the core`,
  );
  lines.push(`  a full roll lasts ${duration(roll.minutesPerRoll)} at ${plain(roll.speed)} bottles a minute`);
  if (roll.asked) {
    const { labels, diameter } = roll.asked;
    const fits = diameter <= roll.maxDiameter ? '' : ', more than the labeler takes';
    lines.push(`  ${counted(labels)} labels on one roll: ${both(diameter)} across${fits}`);
  }
  if (order) {
    lines.push('', 'Order');
    lines.push(
      `  ${counted(order.wanted)} labels on bottles, ${plain(order.spoilagePercent)} % spoilage, ${counted(order.threading)} to thread: ${counted(order.labels)} labels`,
    );
    const rest = order.rest > 0 ? `${order.fullRolls > 0 ? ' and ' : ''}one of ${counted(order.rest)}` : '';
    const fulls =
      order.fullRolls > 0
        ? `${counted(order.fullRolls)} full ${order.fullRolls === 1 ? 'roll' : 'rolls'}`
        : '';
    lines.push(`  ${fulls}${rest}; ${plain(order.metres)} m, ${bothMasses(order.kilograms)} without cores`);
    lines.push(
      `  lasts ${duration(roll.minutesForOrder!)}; a roll change every ${duration(roll.minutesPerRoll)}`,
    );
  }
  return lines;
}

/** Advice on gap and eye-mark, for the order of the rolls. */
export const reelAdvice: readonly string[] = [
  'Sensor: a paper label on paper liner is found by its gap; a clear label, a gap under 2 mm or a die that is not a rectangle needs an eye-mark, black on the back of the liner, at the leading edge of each label. Ask the maker of the labeler for its place and size (common practice, no source).',
  'Send the printer the picture with the words below it. The number of an unwind direction means different things in different charts.',
];

/** Why a strip could not be drawn from a label file. */
export const stripFault = (fault: StripFault, file: string, label: LabelSize): Diagnostic => ({
  code: `label-file-${fault.id}`,
  severity: 'error',
  message: faultText(fault, file, label),
  at: { file },
});

function faultText(fault: StripFault, file: string, { width, height }: LabelSize): string {
  switch (fault.id) {
    case 'unreadable':
      return `${file} cannot be read as a PDF`;
    case 'pages':
      return `${file} has ${fault.pages} pages; a label has one`;
    case 'size':
      return `${file} is cut to ${both(fault.width)} by ${both(fault.height)}, and the label of the pack to ${both(width)} by ${both(height)}`;
  }
}

/** Words of the picture of a roll. */
export function unwindCaptions(
  facts: NonNullable<ReelFacts['roll']>,
  edge: keyof typeof LEADING,
  name: string,
  pack: string,
) {
  const { unwinding } = facts;
  const doubt =
    unwinding.leadingEdge === null
      ? `As ${unwinding.readings[0]?.chart ?? 'one chart'} reads the number of the record; other charts differ: ask.`
      : '';
  return {
    title: `${name}, ${pack}: ${WOUND[unwinding.wound]}, ${LEADING[edge]}`,
    doubt,
    top: 'TOP',
    name,
    direction: 'the web runs this way; print towards you',
    pitch: `label and gap ${both(facts.pitch)}`,
    liner: `liner ${both(facts.linerWidth)} wide`,
    roll: `${counted(facts.full.labels)} labels, ${both(facts.maxDiameter)} across, core ${both(facts.core)}`,
  };
}
