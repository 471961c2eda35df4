import { readFile } from 'node:fs/promises';
import { unwindPicture } from '../../layout/roll/unwind-picture.ts';
import { readMeasure } from '../../quantity/measure.ts';
import { usualEnds } from '../../roll/bottle.ts';
import { reelFacts } from '../../roll/reel-facts.ts';
import type { LeadingEdge, Wound } from '../../roll/unwind.ts';
import { reelAdvice, reelProblems, reelText, stripFault, unwindCaptions } from '../../words/en/reel.ts';
import { type CommandUsage, parseArguments, UsageError } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import { outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { type OutputFile, writeFiles } from '../write-files.ts';

const edges: readonly LeadingEdge[] = ['top', 'bottom', 'left', 'right'];
const sides: readonly Wound[] = ['out', 'in'];

const usage: CommandUsage = {
  usage: `reel RECORD [--pack ID] [--labels N] [--spoilage PERCENT] [--speed BOTTLES-A-MINUTE] [--overlap LENGTH | --gap LENGTH] [--leading-edge ${edges.join('|')}] [--wound ${sides.join('|')}] [--grammage G-A-M2] [--label FILE.pdf] [--out DIR] [--json]`,
  options: {
    pack: 'text',
    labels: 'text',
    spoilage: 'text',
    speed: 'text',
    overlap: 'text',
    gap: 'text',
    'leading-edge': edges,
    wound: sides,
    grammage: 'text',
    label: 'text',
    out: 'text',
    json: 'flag',
  },
  positional: [1, 1],
};

const LABELS_SHOWN = 3;

/** Bytes of a label file. @throws UsageError where there is none */
async function labelFile(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (error) {
    throw new UsageError(`--label ${path}: ${(error as NodeJS.ErrnoException).code ?? error}`);
  }
}

/** Label, roll and order arithmetic for the labeler, with a picture of the roll. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const refuse = (message: string): never => {
    throw new UsageError(`${message}\nusage: labelwright ${usage.usage}`);
  };
  const number = (name: string, least: number, whole = false): number | null => {
    const text = parsed.text(name);
    if (text === null) return null;
    const value = Number(text.replace(/\s*%$/, ''));
    if (!Number.isFinite(value) || value < least || (whole && !Number.isInteger(value)))
      refuse(`--${name} ${text} is not a ${whole ? 'whole ' : ''}number from ${least}`);
    return value;
  };
  const length = (name: string): number | null => {
    const text = parsed.text(name);
    if (text === null) return null;
    const read = readMeasure(text, 'length');
    if (!read.ok || read.value.base.value <= 0)
      return refuse(`--${name} ${text} is not a length, such as 5 mm`);
    return read.value.base.value;
  };
  const [overlap, gap] = [length('overlap'), length('gap')];
  if (overlap !== null && gap !== null) refuse('--overlap and --gap exclude each other');
  const question = {
    labels: number('labels', 1, true),
    spoilagePercent: number('spoilage', 0),
    speed: number('speed', 0.01),
    grammage: number('grammage', 1),
    ends:
      gap !== null
        ? { kind: 'gap' as const, by: gap }
        : overlap !== null
          ? { kind: 'overlap' as const, by: overlap }
          : usualEnds('overlap'),
    leadingEdge: parsed.text('leading-edge') as LeadingEdge | null,
    wound: parsed.text('wound') as Wound | null,
  };
  const product = open(parsed.positional[0]!, io);
  if (!product) return exit.badInput;
  const { record } = product;
  const pack = choosePack(record, parsed.text('pack'));
  const facts = reelFacts(pack, question);
  const files: string[] = [];
  const { roll, label } = facts;
  if (roll && label) {
    const edge = roll.unwinding.leadingEdge ?? roll.unwinding.readings[0]?.leadingEdge ?? 'right';
    const picture = unwindPicture({
      label,
      gap: roll.gap,
      linerWidth: roll.linerWidth,
      coreDiameter: roll.coreDiameter,
      diameter: roll.maxDiameter,
      leadingEdge: edge,
      wound: roll.unwinding.wound,
      captions: unwindCaptions(roll, edge, record.name, pack.id),
    });
    const outputs: OutputFile[] = [{ name: `reel-${pack.id}.svg`, bytes: picture }];
    const file = parsed.text('label');
    if (file !== null) {
      const { gap, linerWidth } = roll;
      const title = `${record.name}, ${pack.id}: labels on the web`;
      const strip = { label, gap, linerWidth, leadingEdge: edge, count: LABELS_SHOWN, title };
      const { webStrip } = await import('../../pdf/web-strip.ts');
      const made = await webStrip(await labelFile(file), strip);
      if (made.fault) {
        io.err(`${stripFault(made.fault, file, label)}\n`);
        return made.fault.id === 'size' ? exit.notMet : exit.badInput;
      }
      outputs.push({ name: `reel-${pack.id}.pdf`, bytes: made.bytes });
    }
    files.push(...writeFiles(outputFolder(record.code, parsed.text('out')), outputs));
  }
  if (parsed.flag('json')) {
    const product = { name: record.name, code: record.code };
    io.out(
      `${JSON.stringify({ schema: 'labelwright/reel/1', product, pack: pack.id, ...facts, files }, null, 2)}\n`,
    );
  } else {
    const text = [
      ...reelText(facts, `${record.name}, ${pack.id}`),
      '',
      ...(roll ? reelAdvice : []),
      ...files,
    ];
    io.out(`${text.join('\n')}\n`);
  }
  for (const problem of reelProblems(facts)) io.err(`warning: ${problem}\n`);
  return facts.roll === null || facts.roll.full.labels === 0 ? exit.notMet : exit.done;
}
