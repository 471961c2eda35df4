import { readFileSync } from 'node:fs';
import type { PressOptions } from '../draft/label-options.ts';
import { parsePressProfile } from '../layout/stock.ts';
import { dieInkFault } from '../pdf/profile.ts';
import { readMeasure } from '../quantity/measure.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { type ParsedArguments, UsageError } from './arguments.ts';
import type { CommandOption } from './command.ts';

/** Options on press and converter; each goes before the record of the maker, which goes before the press profile. */
export const pressOptions = {
  'press-profile': {
    kind: 'text',
    value: 'FILE',
    does: 'profile of press and material, made from stocks/roll-paper.json of the package',
    completes: 'file',
  },
  'die-ink': {
    kind: 'text',
    value: 'NAME',
    does: 'name of the spot ink of the die line; CutContour where nothing names one',
  },
  cut: { kind: ['through', 'kiss'], does: 'whether the cut goes through the liner or not' },
  'bar-width-reduction': {
    kind: 'text',
    value: 'LENGTH',
    does: 'taken off every bar to make up for the gain of the press, such as 0.02mm',
  },
} as const satisfies Readonly<Record<string, CommandOption>>;

/** Reads the options on the press. @throws UsageError for a wrong one, and for one that is asked of a roll printer */
export function pressQuestion(parsed: ParsedArguments, target: string): Outcome<PressOptions> {
  const given = Object.keys(pressOptions).filter(name => parsed.text(name) !== null);
  if (given.length > 0 && target !== 'press')
    throw new UsageError(`--${given[0]} is of a press; leave it out, or --target ${target}`);
  const [file, ink, cut, reduction] = ['press-profile', 'die-ink', 'cut', 'bar-width-reduction'].map(name =>
    parsed.text(name),
  );
  const fault = ink ? dieInkFault(ink) : null;
  if (fault)
    throw new UsageError(`--die-ink: ${fault}; take the name that the converter uses, such as CutContour`);
  const wish = {
    dieInk: ink ?? null,
    cut: (cut ?? null) as 'through' | 'kiss' | null,
    barWidthReduction: reduction ? barWidthReduction(reduction) : null,
  };
  if (!file) return succeed({ wish });
  const profile = readProfile(file);
  return profile.ok ? succeed({ wish, profile: profile.value }) : profile;
}

function barWidthReduction(text: string): number {
  const spaced = text.trim().replace(/^([\d.]+)\s*([a-z]+)$/i, '$1 $2');
  const read = readMeasure(spaced === '0' ? '0 mm' : spaced, 'length');
  if (!read.ok || read.value.base.value < 0)
    throw new UsageError(`--bar-width-reduction ${text} is not a length; write such as 0.02mm`);
  return read.value.base.value;
}

function readProfile(file: string): ReturnType<typeof parsePressProfile> {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new UsageError(
      `--press-profile ${file}: ${code === 'ENOENT' ? 'there is no such file' : 'the file cannot be read'}`,
    );
  }
  try {
    return parsePressProfile(JSON.parse(text), file);
  } catch (error) {
    return fail({
      code: 'press-profile',
      severity: 'error',
      message: `it is no JSON: ${(error as Error).message}`,
      hint: 'begin with a copy of stocks/roll-paper.json of the package',
      at: { file },
    });
  }
}
