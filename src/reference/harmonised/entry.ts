import type { Hazard } from '../../notation/hazard.ts';
import type { AteValues, MultiplicationFactors, SpecificLimit } from '../../notation/limit.ts';
import { type AteKey, parseAteValue } from '../../notation/parse-ate.ts';
import { parseHazard } from '../../notation/parse-hazard.ts';
import { parseLimit, parseSupplementalLimit, type SupplementalLimit } from '../../notation/parse-limit.ts';
import type { Parsed } from '../../notation/parsed.ts';
import { type HarmonisedCells, LIST_SEPARATOR } from './columns.ts';

/** A mark of CLP Annex VI 1.2 and what it stands at. */
export interface HarmonisedFlag {
  /** `*` minimum or untranslated limit, `**` route not excluded, `***` effect kept, `****` physical hazard to be confirmed by test. */
  readonly mark: '*' | '**' | '***' | '****';
  /** `STOT RE 2`, `limits`, `limit Ox. Liq. 1`, `physical hazard`. */
  readonly on: string;
}

/** One substance of CLP Annex VI Table 3 as it applies from a date. */
export interface HarmonisedEntry {
  readonly index: string;
  readonly name: string;
  readonly cas: string | null;
  readonly ec: string | null;
  readonly hazards: readonly Hazard[];
  readonly limits: readonly SpecificLimit[];
  readonly ate: AteValues;
  readonly mFactors: MultiplicationFactors;
  /** One factor on an entry of both aquatic classes, which does not say for which; it stands in both. */
  readonly singleMFactor: boolean;
  /** `A`, `B`, `10`: notes of Annex VI 1.1.3. */
  readonly notes: readonly string[];
  /** EUH codes. */
  readonly supplemental: readonly string[];
  /** Concentrations from which an EUH code is due. */
  readonly supplementalLimits: readonly SupplementalLimit[];
  /** Whether any hazard is a minimum classification (Annex VI 1.2.1). */
  readonly minimum: boolean;
  readonly flags: readonly HarmonisedFlag[];
  /** CELEX number of the act. */
  readonly act: string;
  /** Date from which the row is mandatory, `2025-09-01`. */
  readonly appliesFrom: string;
}

/** @throws Error where the compiled file is not what the generator writes. */
export function readEntry(cells: HarmonisedCells): HarmonisedEntry {
  const hazards = list(cells.hazards).map(text => sound(parseHazard(text)));
  const factors = new Map(list(cells['m-factors']).map(text => text.split(' ') as [string, string]));
  const factor = (key: string): number | undefined => {
    const written = factors.get(key) ?? factors.get('single');
    return written === undefined ? undefined : Number(written);
  };
  const acute = factor('acute');
  const chronic = factor('chronic');
  return {
    index: cells.index,
    name: cells.name,
    cas: cells.key === cells.index ? null : cells.key,
    ec: cells.ec === '' ? null : cells.ec,
    hazards,
    limits: list(cells.limits).map(text => sound(parseLimit(text))),
    ate: readAte(list(cells.ate)),
    mFactors: { ...(acute !== undefined && { acute }), ...(chronic !== undefined && { chronic }) },
    singleMFactor: factors.has('single'),
    notes: list(cells.notes),
    supplemental: list(cells.supplemental),
    supplementalLimits: list(cells['supplemental-limits']).map(text => sound(parseSupplementalLimit(text))),
    minimum: hazards.some(({ minimum }) => minimum),
    flags: list(cells.flags).map(readFlag),
    act: cells.act,
    appliesFrom: cells['applies-from'],
  };
}

const list = (cell: string): string[] => (cell === '' ? [] : cell.split(LIST_SEPARATOR));

// Where a route has two values for two forms of the substance, the lower is the cautious one.
function readAte(items: readonly string[]): AteValues {
  const values: { -readonly [K in AteKey]?: AteValues[K] } = {};
  for (const item of items) {
    const [, key, written] = /^(\S+) (\S+ \S+)/.exec(item) as unknown as [string, AteKey, string];
    const value = sound(parseAteValue(key, written));
    const present = values[key];
    if (!present || value.value < present.value) values[key] = value;
  }
  return values;
}

function readFlag(text: string): HarmonisedFlag {
  const space = text.indexOf(' ');
  return { mark: text.slice(0, space) as HarmonisedFlag['mark'], on: text.slice(space + 1) };
}

function sound<T>(result: Parsed<T>): T {
  if (!result.ok) throw new Error(`harmonised.tsv: ${result.message}`);
  return result.value;
}
