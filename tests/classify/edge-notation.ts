import type { Classification } from '../../src/classify/classification.ts';

/** One case in words: `5 % Skin Corr. 1A + pH 1 => Skin Corr. 1A; Eye Dam. 1`. */
export interface EdgeCase {
  readonly formula: readonly Record<string, unknown>[];
  readonly properties: Record<string, unknown>;
  readonly expectations: readonly string[];
}

const properties: readonly (readonly [RegExp, string, (value: string) => unknown])[] = [
  [/^pH (.+)$/, 'pH', Number],
  [/^viscosity (.+)$/, 'kinematic-viscosity-40C', String],
  [/^flash point (.+)$/, 'flash-point', value => `${value} (closed cup)`],
  [/^boiling point (.+)$/, 'initial-boiling-point', String],
];

/**
 * Reads a case: ingredients in percent with their hazards, and what the mixture must have. The rest is water.
 * After the hazards, parted by ` | `: `limit …`, `ate KEY VALUE`, `m acute 10`, `unknown ENDPOINT`, `relevant`,
 * `not additive`. `none` is known and not classified; `nothing known` has no data.
 */
export function readEdgeCase(text: string): EdgeCase {
  const [mixture, outcome] = text.split(' => ') as [string, string];
  const formula: Record<string, unknown>[] = [];
  const found: Record<string, unknown> = {};
  let total = 0;
  for (const term of mixture.split(' + ')) {
    const property = properties.find(([pattern]) => pattern.test(term));
    if (property) {
      found[property[1]] = property[2](property[0].exec(term)![1]!);
      continue;
    }
    const [, percent, content] = /^([\d.]+) % (.+)$/.exec(term)!;
    formula.push(line(`Ingredient ${formula.length + 1}`, Number(percent), content!.split(' | ')));
    total += Number(percent);
  }
  if (total < 100) formula.push({ name: 'water', amount: 'balance' });
  return { formula, properties: found, expectations: outcome.split('; ') };
}

function line(
  name: string,
  percent: number,
  [hazards, ...options]: readonly string[],
): Record<string, unknown> {
  if (hazards === 'nothing known') return { name, percent };
  const result: Record<string, unknown> = {
    name,
    percent,
    hazards: hazards === 'none' ? [] : hazards!.split(' & '),
    source: 'test',
  };
  const add = (key: string, value: string) => {
    result[key] = [...((result[key] as string[] | undefined) ?? []), value];
  };
  for (const option of options) {
    const [word, ...rest] = option.split(' ') as [string, ...string[]];
    if (option === 'not additive') result.additive = false;
    else if (option === 'relevant') result.relevant = true;
    else if (word === 'limit') add('limits', rest.join(' '));
    else if (word === 'unknown') add('unknown', rest.join(' '));
    else if (word === 'ate') result.ate = { ...(result.ate as object), [rest[0]!]: rest.slice(1).join(' ') };
    else if (word === 'm')
      result['m-factors'] = { ...(result['m-factors'] as object), [rest[0]!]: Number(rest[1]) };
    else throw new Error(`no such option: ${option}`);
  }
  return result;
}

/** Hazards of a classification as the cases write them. */
export const hazardsInWords = ({ hazards }: Classification): string[] =>
  hazards.map(({ code, route, effect }) => {
    const bracket = effect ?? (code.startsWith('Acute') ? route : null);
    return bracket ? `${code} (${bracket})` : code;
  });

/** What is wrong with a classification for one expectation; null where nothing is. */
export function failure(classification: Classification, expectation: string): string | null {
  const { ateMix, unknownAcuteToxicity, otherClasses, hazards } = classification;
  const found = hazardsInWords(classification);
  const tell = (met: boolean, value: unknown): string | null =>
    met ? null : `${expectation}: found ${JSON.stringify(value)}`;
  const close = (value: number | null, figure: string): boolean =>
    value !== null && Math.abs(value - Number(figure)) <= 1e-6 * Number(figure);
  const ate = /^(no )?ATEmix (\w+)(?: (.+))?$/.exec(expectation);
  if (ate) {
    const value = ateMix[ate[2] as keyof typeof ateMix];
    return tell(ate[1] ? value === null : close(value, ate[3]!), value);
  }
  const unknown = /^unknown (\w+) (.+)$/.exec(expectation);
  if (unknown) {
    const value = unknownAcuteToxicity[unknown[1] as 'oral'];
    return tell(close(value, unknown[2]!), value);
  }
  const other = /^(undecided|not classified|not applicable) (.+)$/.exec(expectation);
  if (other) {
    const outcome = {
      undecided: 'insufficient-data',
      'not classified': 'not-classified',
      'not applicable': 'not-applicable',
    };
    const entry = otherClasses.find(({ class: name }) => name === other[2]);
    return tell(entry?.outcome === outcome[other[1] as keyof typeof outcome], entry?.outcome);
  }
  const absent = /^no ([^(]+?)(?: \((.+)\))?$/.exec(expectation);
  if (absent) {
    const of = found.filter(
      hazard => hazard.startsWith(absent[1]!) && (!absent[2] || hazard.endsWith(`(${absent[2]})`)),
    );
    return tell(of.length === 0, of);
  }
  const lettered = /^(.+) (H3\d\d\w*)$/.exec(expectation);
  if (lettered)
    return tell(
      hazards.some(({ code, statements }) => code === lettered[1] && statements.includes(lettered[2]!)),
      hazards.map(({ code, statements }) => [code, ...statements]),
    );
  return tell(found.includes(expectation), found);
}
