import { basename } from 'node:path';
import { REVIEW_PAGE } from '../../draft/packet.ts';
import { type Language, languages } from '../../notation/languages.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { printWritten } from '../deliver.ts';
import type { Io } from '../io.ts';
import { onePacket } from '../one-packet.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';

/** The command as data. */
export const command: Command = {
  name: 'packet',
  does: "makes everything for one product, with the reviewer's page",
  place: 100,
  about: [
    'Review points are said on standard error, worst first, and stand in review.html with their reasons.',
    'Case labels bear no lot, no date and no SSCC, which the day of production gives: `case` makes them for a batch.',
    'A label that cannot be made is said and does not stop the rest; without the data sheet there is no packet.',
  ],
  argument: record,
  options: {
    language: {
      kind: languages,
      does: 'also makes labels and sheets in this language; those of `sold-to.languages` where it is left out',
    },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    {
      call: 'packet product.yaml',
      does: 'labels of packs and cases, data sheet, classification and work sheet in out/<code>/',
    },
    { call: 'packet product.yaml --language es', does: 'the same, and labels and sheets in Spanish' },
  ],
  run,
};

/** Makes everything for one product, with an index page. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const { status, written, findings, review } = await onePacket(
    parsed.positional[0]!,
    {
      date: parsed.text('as-of') ?? io.today,
      out: parsed.text('out'),
      replace: parsed.flag('replace'),
      language: parsed.text('language') as Language | null,
    },
    io,
  );
  if (written.length === 0) return status;
  const json = parsed.flag('json');
  if (!json) sayPoints(review, written, io);
  printWritten(written, findings, json, io, { review });
  return status;
}

/** Says what a reviewer must look at on standard error, so that the names of the files can be read by a program. */
function sayPoints(review: readonly string[], written: readonly string[], io: Io): void {
  const page = written.find(path => basename(path) === REVIEW_PAGE) ?? REVIEW_PAGE;
  io.err(
    `${[en.reviewPage.terminalHead(review.length, page), ...review.map(point => `  - ${point}`)].join('\n')}\n`,
  );
}
