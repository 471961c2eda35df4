import { readMeasure } from '../quantity/measure.ts';
import type { Outcome } from './answer.ts';
import { type Fact, fact } from './fact.ts';
import type { Setting } from './setting.ts';

/**
 * What 49 CFR 173.27 asks of a package that goes by aircraft beside the columns of the table: level of the packaging,
 * pressure that it withstands, and whether it is a limited quantity by air, whose limits are lower than by road.
 */
export function aircraftRules(outcome: Outcome, { input, data }: Setting): readonly Fact[] {
  const { entry, class: name, packingGroup: group } = outcome;
  const { aircraft: law } = data;
  if (!entry || name === null || /^forbidden$/i.test(entry.aircraft.cargo)) return [];
  const { performance, pressure } = law;
  const among = (classes: readonly string[]): boolean =>
    [name, ...outcome.subsidiary].some(each => classes.includes(each));
  const lower = group === pressure.lower.group && pressure.lower.classes.includes(name);
  return [
    ...(group === performance.group && among(performance.classes)
      ? [fact('aircraft-performance', performance.cite, { level: performance.level })]
      : []),
    ...(input.form === 'liquid'
      ? [
          fact('aircraft-pressure', pressure.cite, {
            kilopascals: lower ? pressure.lower.kilopascals : pressure.kilopascals,
          }),
        ]
      : []),
    ...limitedByAir(outcome, { input, data }),
  ];
}

interface Row {
  readonly class: string;
  readonly group: string;
  readonly form: string;
  readonly inner: string;
  readonly outer: string;
  /** Of glass, earthenware or fiber, where that is less. */
  readonly glass?: string;
  readonly beside?: readonly {
    readonly subsidiary: string;
    readonly inner?: string;
    readonly outer: string;
  }[];
}

/** The row of Table 3 with the lower limits for a subsidiary hazard; null where no row is held. */
function rowFor({ class: name, packingGroup, subsidiary }: Outcome, form: string, rows: readonly Row[]) {
  const row = rows.find(each => each.class === name && each.group === packingGroup && each.form === form);
  if (!row) return null;
  const lower = (row.beside ?? []).filter(each => subsidiary.includes(each.subsidiary));
  const least = (limits: readonly string[]): string =>
    limits.reduce((a, b) => (amount(b) < amount(a) ? b : a));
  const inner = least([row.inner, ...lower.flatMap(each => each.inner ?? [])]);
  return {
    inner,
    glass: row.glass ? least([row.glass, inner]) : inner,
    outer: least([row.outer, ...lower.map(each => each.outer)]),
  };
}

/** Millilitres or grams of a limit as printed. */
function amount(limit: string): number {
  for (const kind of ['volume', 'mass'] as const) {
    const read = readMeasure(limit, kind);
    if (read.ok) return read.value.base.value;
  }
  throw new Error(`no amount: ${limit}`);
}

function limitedByAir(outcome: Outcome, { input, data }: Pick<Setting, 'input' | 'data'>): Fact[] {
  const { limitedQuantity: law } = data.aircraft;
  const { entry } = outcome;
  if (!entry || !input.pack || (input.form !== 'liquid' && input.form !== 'solid')) return [];
  if (/^forbidden$/i.test(entry.aircraft.passenger) || entry.exceptions.length === 0)
    return [fact('aircraft-limited-none', law.cite, { un: entry.id })];
  const limits = rowFor(outcome, input.form, law.rows);
  if (!limits) return [fact('aircraft-limited-not-held', law.cite, { class: outcome.class })];
  const { pack } = input;
  const own = input.form === 'solid' ? pack.grams : pack.millilitres;
  const verdict =
    own === null || pack.count === null
      ? 'open'
      : own > amount(limits.inner) || own * pack.count > amount(limits.outer)
        ? 'over'
        : own > amount(limits.glass)
          ? 'by-material'
          : 'within';
  return [fact('aircraft-limited', law.cite, { ...limits, verdict })];
}
