import { parseAteItem, printAte } from '../notation/parse-ate.ts';
import {
  parseLimit,
  parseSupplementalLimit,
  printLimit,
  printSupplementalLimit,
} from '../notation/parse-limit.ts';
import { type AnnexViRow, parts, type Unparsed } from './_annex-vi-row.ts';

/** The column "Specific Conc. Limits, M-factors and ATE" of an entry, each kind by itself in our notation. */
export interface LimitCells {
  readonly limits: string[];
  readonly supplementalLimits: string[];
  readonly ate: string[];
  readonly mFactors: string[];
  readonly flags: string[];
}

export function readLimits(row: AnnexViRow, unparsed: Unparsed[]): LimitCells {
  const cells: LimitCells = { limits: [], supplementalLimits: [], ate: [], mFactors: [], flags: [] };
  for (const item of parts(row.limits_m_ate, '|')) {
    const message = readItem(item, cells);
    if (message !== null) unparsed.push({ index: row.index_no, column: 'limits_m_ate', text: item, message });
  }
  return cells;
}

// The reason where the item cannot be read.
function readItem(item: string, cells: LimitCells): string | null {
  // Limits of the former directive that could not be translated (Annex VI 1.2.1).
  const untranslated = /^\*( oral| dermal| inhalation)?$/.exec(item);
  if (untranslated) {
    cells.flags.push(`* limits${untranslated[1] ?? ''}`);
    return null;
  }
  const factor = /^M(?:\((acute|chronic)\))? = (\d+)$/.exec(item);
  if (factor) {
    cells.mFactors.push(`${factor[1] ?? 'single'} ${factor[2]}`);
    return null;
  }
  if (item.includes('ATE')) {
    const ate = parseAteItem(item);
    if (!ate.ok) return ate.message;
    const { key, value, of } = ate.value;
    cells.ate.push(`${key} ${printAte(key, value)}${of === null ? '' : ` (${of})`}`);
    return null;
  }
  if (item.startsWith('EUH')) {
    const limit = parseSupplementalLimit(item);
    if (!limit.ok) return limit.message;
    cells.supplementalLimits.push(printSupplementalLimit(limit.value));
    return null;
  }
  const [, text, mark] = /^(.*?)(?: (\*{2,4}))?$/.exec(item)!;
  const limit = parseLimit(text!);
  if (!limit.ok) return limit.message;
  cells.limits.push(printLimit(limit.value));
  if (mark) cells.flags.push(`${mark} limit ${limit.value.code}`);
  return null;
}
