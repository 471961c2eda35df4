import { readBrackets } from './_brackets.ts';
import { nearest } from './_nearest.ts';
import {
  type ClassAndCategory,
  findCode,
  followingStatement,
  hazardClasses,
  hazardCode,
  hazardCodes,
  permittedStatements,
} from './classes.ts';
import type { Hazard, Route, TransientEffect } from './hazard.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

/** A hazard with what its text said besides. */
export interface ReadHazard {
  readonly hazard: Hazard;
  /** H-code as written; null where it only follows. */
  readonly written: string | null;
  /** Marks of Annex VI 1.2 behind the class and behind the H-code. */
  readonly classMark: string;
  readonly statementMark: string;
}

interface Piece {
  readonly text: string;
  readonly brackets: readonly string[];
  readonly mark: string;
}

/**
 * Reads a hazard in the notation of CLP Annex VI: `Skin Corr. 1B`, `Acute Tox. 4 * (oral)`, `Repr. 1B; H360FD`.
 * The H-code is the written one or the one that follows from class, category, route and effect.
 */
export function parseHazard(text: string): Parsed<Hazard> {
  const read = readHazard(text);
  return read.ok ? parsed(read.value.hazard) : read;
}

/** As `parseHazard`, keeping the marks and whether the H-code was written. */
export function readHazard(text: string): Parsed<ReadHazard> {
  if (text.split('(').length !== text.split(')').length)
    return unreadable(
      `a bracket of "${text.trim()}" has no partner`,
      'close it; in a list on one line a comma ends an item, so put the whole hazard in quotes: ["STOT RE 2 (kidney, liver)"]',
    );
  const parts = splitOutsideBrackets(text);
  if (parts.length > 2)
    return unreadable(
      `"${text.trim()}" has more than one part after the category`,
      'write one hazard: Repr. 1B; H360FD',
    );
  const head = takeApart(parts[0]!);
  const tail = takeApart(parts[1] ?? '');
  if (parts.length === 2 && tail.text === '')
    return unreadable(`no H-code after the semicolon in "${text.trim()}"`, `write ${head.text}`);
  const found = lookUp(head);
  if (!found.ok) return found;
  const { match, brackets } = found.value;
  const content = readBrackets(match, [...brackets, ...tail.brackets]);
  if (!content.ok) return content;

  const { hazardClass, category } = match;
  const written = tail.text === '' ? null : tail.text;
  let { route, effect } = content.value;
  if (written !== null) {
    const permitted = permittedStatements(category);
    if (!permitted.includes(written)) return wrongStatement(written, match, permitted);
    const said = whatStatementSays(written, match);
    if ((route && said.route && route !== said.route) || (effect && said.effect && effect !== said.effect))
      return unreadable(
        `${written} contradicts (${route ?? effect})`,
        `write (${said.route ?? said.effect}) or leave ${written} out`,
      );
    route ??= said.route;
    effect ??= said.effect;
  }
  const hazard: Hazard = {
    hazardClass: hazardClass.class,
    category: category.category,
    code: hazardCode(hazardClass.class, category.category),
    ...content.value,
    route,
    effect,
    statement: written ?? followingStatement(category, route, effect),
    minimum: head.mark === '*',
  };
  return parsed({ hazard, written, classMark: head.mark, statementMark: tail.mark });
}

function splitOutsideBrackets(text: string): string[] {
  const parts = [''];
  let depth = 0;
  for (const char of text.trim()) {
    if (char === '(') depth++;
    if (char === ')') depth--;
    if (char === ';' && depth === 0) parts.push('');
    else parts[parts.length - 1] += char;
  }
  return parts;
}

function takeApart(part: string): Piece {
  const brackets: string[] = [];
  let mark = '';
  const text = part
    .replace(/\(([^()]*)\)/g, (_, inside: string) => {
      brackets.push(inside);
      return ' ';
    })
    .replace(/(\*{1,4})(?=\s|$)/g, (_, stars: string) => {
      mark = stars;
      return ' ';
    })
    .replace(/\s+/g, ' ')
    .trim();
  return { text, brackets, mark };
}

function lookUp({ text, brackets }: Piece): Parsed<{ match: ClassAndCategory; brackets: readonly string[] }> {
  const grouped = brackets.length === 1 && findCode(`${text} ${brackets[0]!.trim()}`);
  if (grouped && grouped.hazardClass.brackets === 'group') return parsed({ match: grouped, brackets: [] });
  const match = findCode(text);
  if (match) return parsed({ match, brackets });
  const byStatement = /^(EU)?H\d{3}[A-Za-z]*$/.test(text) ? codesWith(text) : [];
  if (byStatement.length > 0)
    return unreadable(
      `"${text}" is an H-code without its class`,
      `write the class and category: ${byStatement.join(', ')}`,
    );
  // The longest name first: "Unst. Expl." before "Expl.".
  const known = hazardClasses
    .filter(({ class: name }) => text === name || text.startsWith(`${name} `))
    .sort((a, b) => b.class.length - a.class.length)[0];
  if (known) {
    const rest = text.slice(known.class.length).trim();
    const categories = known.categories.map(({ category }) => category).filter(category => category !== '');
    const hint =
      categories.length === 0
        ? `write ${known.class}`
        : `categories of ${known.class}: ${categories.join(', ')}`;
    return unreadable(
      rest === '' ? `${known.class} needs its category` : `${known.class} has no category "${rest}"`,
      hint,
    );
  }
  const near = nearest(text, hazardCodes);
  return unreadable(
    `"${text}" is no hazard class and category`,
    near ? `did you mean ${near}?` : 'write it as in CLP Annex VI: Skin Corr. 1B, Acute Tox. 4 (oral)',
  );
}

function wrongStatement(
  written: string,
  { hazardClass, category }: ClassAndCategory,
  permitted: readonly string[],
) {
  const code = hazardCode(hazardClass.class, category.category);
  return unreadable(
    `${written} is no H-code of ${code}`,
    permitted.length === 0 ? `${code} has none: leave it out` : `${code} has ${permitted.join(', ')}`,
  );
}

function whatStatementSays(
  written: string,
  { category }: ClassAndCategory,
): { route: Route | null; effect: TransientEffect | null } {
  const keyOf = <K extends string>(table: Readonly<Record<K, string>> | undefined): K | null =>
    (Object.keys(table ?? {}) as K[]).find(key => table![key] === written) ?? null;
  return { route: keyOf(category.byRoute), effect: keyOf(category.byEffect) };
}

const codesWith = (statement: string): string[] =>
  hazardCodes.filter(code => permittedStatements(findCode(code)!.category).includes(statement));
