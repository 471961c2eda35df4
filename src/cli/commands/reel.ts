import { copyComment } from '../../document/copy-meta.ts';
import { copyMarkAt } from '../../draft/inputs-of.ts';
import { unwindPicture } from '../../layout/roll/unwind-picture.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { reelFacts } from '../../roll/reel-facts.ts';
import type { OutputFile } from '../../store/delivery.ts';
import { reelAdvice, reelFindings, reelText, stripFault, unwindCaptions } from '../../words/en/reel.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import type { Command } from '../command.ts';
import { store } from '../deliver.ts';
import { outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { allow, asOf, json, record as oneRecord, out, replace } from '../options.ts';
import { edges, reelQuestion, sides } from '../reel-question.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'reel',
  does: 'works out label, roll and order for the labeler, with a picture of the roll',
  place: 55,
  argument: oneRecord,
  options: {
    pack: { kind: 'text', value: 'ID', does: 'pack of the record; may be left out where there is one' },
    labels: { kind: 'text', value: 'N', does: 'labels that are to end on bottles: with them the order' },
    spoilage: { kind: 'text', value: 'PERCENT', does: 'labels lost on the way' },
    speed: { kind: 'text', value: 'N', does: 'bottles a minute' },
    overlap: {
      kind: 'text',
      value: 'LENGTH',
      does: 'how far the ends of a label all round lie on each other',
    },
    gap: {
      kind: 'text',
      value: 'LENGTH',
      does: 'room between the ends of a label all round, in place of it',
    },
    'leading-edge': { kind: edges, does: 'edge of the upright label that leaves the roll first' },
    wound: { kind: sides, does: 'side of the web that the print is on' },
    grammage: { kind: 'text', value: 'N', does: 'face, adhesive and liner together, in g/m2' },
    label: {
      kind: 'text',
      value: 'FILE.pdf',
      does: 'print file of the label, to be shown on the web as it unwinds',
      completes: 'file',
    },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'reel product.yaml --labels 5000 --speed 40', does: 'rolls and metres for 5000 bottles' },
    {
      call: 'reel product.yaml --leading-edge right --label out/KP-946/label-bottle-946.pdf',
      does: 'the web as it unwinds, with the label on it',
    },
  ],
  run,
};

const LABELS_SHOWN = 3;

const refuse = (message: string): never => {
  throw new UsageError(message, command);
};

/** Bytes of a label file. @throws UsageError where there is none */
function labelFile(path: string, { files }: Io): Uint8Array {
  const stat = files.statFile(path);
  if (stat.kind === 'unreadable') throw new UsageError(`--label ${path}: ${stat.reason}`);
  if (stat.kind !== 'file') throw new UsageError(`--label ${path}: there is no such file`);
  return files.readFile(path);
}

/** Label, roll and order arithmetic for the labeler, with a picture of the roll. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const question = reelQuestion(parsed, refuse);
  const product = open(parsed.positional[0]!, io);
  if (!product) return exit.badInput;
  const { record } = product;
  const pack = choosePack(record, parsed.text('pack'));
  const facts = reelFacts(pack, question);
  const findings = reelFindings(facts, pack);
  const files: string[] = [];
  let status: number = exit.done;
  const { roll, label } = facts;
  if (roll && label) {
    const copy = copyMarkAt(product, 'distribution', date);
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
    const outputs: OutputFile[] = [
      {
        name: `reel-${pack.id}.svg`,
        kind: copy.kind,
        bytes: `${picture.trimEnd()}\n${copyComment(copy)}\n`,
      },
    ];
    const file = parsed.text('label');
    if (file !== null) {
      const { gap, linerWidth } = roll;
      const title = `${record.name}, ${pack.id}: labels on the web`;
      const strip = { label, gap, linerWidth, leadingEdge: edge, count: LABELS_SHOWN, title };
      const { webStrip } = await import('../../pdf/web-strip.ts');
      const made = await webStrip(labelFile(file, io), strip, copy);
      if (made.fault) {
        report([stripFault(made.fault, file, label)], io);
        return made.fault.id === 'size' ? exit.notMet : exit.badInput;
      }
      outputs.push({ name: `reel-${pack.id}.pdf`, kind: copy.kind, bytes: made.bytes });
    }
    const stored = await store(product, {
      folder: outputFolder(record.code, parsed.text('out')),
      asOf: date,
      files: outputs,
      replace: parsed.flag('replace'),
    });
    findings.push(...stored.findings);
    files.push(...stored.written);
    status = stored.status;
  }
  report(findings, io);
  if (parsed.flag('json')) {
    const { name, code } = record;
    const answer = { schema: 'labelwright/reel/1', product: { name, code }, pack: pack.id, ...facts };
    io.out(`${JSON.stringify({ ...answer, files, findings: renderJson(findings) }, null, 2)}\n`);
  } else {
    const text = [
      ...reelText(facts, `${record.name}, ${pack.id}`),
      '',
      ...(roll ? reelAdvice : []),
      ...files,
    ];
    io.out(`${text.join('\n')}\n`);
  }
  if (status !== exit.done) return status;
  return hasErrors(findings) ? exit.notMet : exit.done;
}
