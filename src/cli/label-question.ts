import { readFileSync } from 'node:fs';
import sizes from '../../templates/stocks/die-sizes.json' with { type: 'json' };
import { iccFault } from '../pdf/icc.ts';
import { isConditionName, type OutputProfile } from '../pdf/profile.ts';
import type { Millimetres } from '../quantity/length.ts';
import { lengthText } from '../quantity/length-text.ts';
import { readMeasure } from '../quantity/measure.ts';
import { type ParsedArguments, UsageError } from './arguments.ts';

const refuse = (message: string): never => {
  throw new UsageError(message);
};

/** `80x60mm`, `3.5 x 2 in`, `80x60`: width and height of the panel alone. @throws UsageError */
export function panelSize(
  parsed: ParsedArguments,
): { readonly width: Millimetres; readonly height: Millimetres; readonly unit: 'mm' | 'in' } | undefined {
  const text = parsed.text('size');
  if (text === null) return undefined;
  if (parsed.text('only') === null) refuse('--size is that of the panel alone; add --only precautions');
  const match = /^([\d.]+)\s*[x×]\s*([\d.]+)\s*([a-z"]*)$/i.exec(text.trim());
  const unit = match?.[3] || 'mm';
  const [width, height] = [match?.[1], match?.[2]].map(side => {
    const read = readMeasure(`${side} ${unit}`, 'length');
    return read.ok ? read.value.base.value : 0;
  });
  if (!width || !height) return refuse(`--size ${text} is not a size; write such as 80x60mm or 3x2in`);
  const inches = /^(?:in|")/i.test(unit) ? 'in' : 'mm';
  for (const side of [width, height])
    if (side < sizes.least || side > sizes.most)
      refuse(
        `--size ${text}: sides are ${lengthText(sizes.least, inches)} to ${lengthText(sizes.most, inches)}`,
      );
  return { width, height, unit: inches };
}

/** The ICC profile of the press and the name of its printing condition. @throws UsageError where one is of no use */
export function outputProfile(parsed: ParsedArguments): OutputProfile | undefined {
  const [file, condition] = [parsed.text('icc'), parsed.text('condition')];
  if (file === null && condition === null) return undefined;
  if (file === null || condition === null)
    return refuse('--icc FILE and --condition NAME go together: the printer gives you both');
  if (!isConditionName(condition))
    refuse(`--condition "${condition}" is not the name of a printing condition; write such as FOGRA39`);
  const bytes = readProfile(file);
  const fault = iccFault(bytes);
  if (fault) refuse(`--icc ${file}: the file ${fault}; ask the printer for the CMYK profile of the press`);
  return { bytes, condition };
}

function readProfile(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return refuse(
      `--icc ${file}: ${code === 'ENOENT' ? 'there is no such file' : 'the file cannot be read'}`,
    );
  }
}
