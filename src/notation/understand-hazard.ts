import { takeCategories, takeRoutes } from './_taken.ts';
import {
  effects,
  fillers,
  groups,
  type Wording as Named,
  type Token,
  tokensOf,
  withStatementCode,
  wordings,
} from './_wordings.ts';
import { findClass, findCode, hazardCode, hazardCodes, permittedStatements } from './classes.ts';
import type { Hazard } from './hazard.ts';
import { parseHazard } from './parse-hazard.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

/** What a text says of hazards. */
export interface UnderstoodHazards {
  /** One as a rule; several where a text names several routes of acute toxicity. */
  readonly hazards: readonly Hazard[];
  /** The text is not in the notation of Annex VI; what was understood is to be shown. */
  readonly reworded: boolean;
}

/**
 * Reads a hazard as data sheets print it: in the notation of CLP Annex VI, in any case of letters, by the headings of
 * 29 CFR 1910.1200 ("Serious eye damage (Category 1)"), or by its H-code or the text of its statement alone where that
 * leaves nothing open.
 * @returns where a text leaves something open, a question with the possible answers.
 */
export function understandHazard(text: string): Parsed<UnderstoodHazards> {
  const exact = parseHazard(text);
  if (exact.ok) return parsed({ hazards: [exact.value], reworded: false });
  const worded = new Wording(withStatementCode(text.trim()));
  const hazards = worded.hazards();
  if (hazards.ok) return parsed({ hazards: hazards.value, reworded: true });
  // Where no class was recognized, what is wrong with the notation is the better advice.
  return worded.recognized ? hazards : exact;
}

const statementPattern = /\b(?:EU)?H\d{3}[A-Za-z]{0,2}\b/gi;
/** A text taken apart: class, category, statements, routes, organs. */
class Wording {
  /** A class or an H-code was found in the text. */
  recognized = false;
  readonly #text: string;
  readonly #statements: readonly string[];
  /** The text without its H-codes. */
  readonly #bare: string;
  #left: readonly Token[];

  constructor(text: string) {
    this.#text = text.trim();
    const statements = this.#text.match(statementPattern) ?? [];
    this.#statements = [
      ...new Set(statements.map(code => code.replace(/^(?:eu)?h/i, head => head.toUpperCase()))),
    ];
    this.#bare = this.#text.replace(statementPattern, ' ; ');
    this.#left = tokensOf(this.#bare);
  }

  hazards(): Parsed<readonly Hazard[]> {
    const found = wordings.find(({ words }) => this.#at(words) >= 0);
    if (!found || this.#isStatementText(found)) return this.#byStatements();
    this.recognized = true;
    this.#take(found.words);
    const { taken: categories, left } = takeCategories(this.#left);
    this.#left = left;
    if (categories.length > 1)
      return unreadable(`"${this.#text}" names several categories`, 'write one hazard a line');
    const category = categories[0] ?? null;
    const name = found.hazardClass(category);
    if (name === null)
      return unreadable(
        `"${this.#text}" leaves the category open`,
        'the heading covers two classes: write it with its category, such as Skin Irrit. 2 or Eye Dam. 1',
      );
    return this.#ofClass(name, category);
  }

  /** Words behind an H-code, such as "eye damage" behind H314, that name another class than the code and no category. */
  #isStatementText({ hazardClass }: Named): boolean {
    const names = ['1', '2', null].map(hazardClass);
    const fits = hazardCodes.some(
      code =>
        names.includes(findCode(code)!.hazardClass.class) &&
        this.#statements.some(each => allows(code, each)),
    );
    return this.#statements.length > 0 && !fits && !/\bcat(?:egory|\.)?\b|\d[a-c]?\b/i.test(this.#bare);
  }

  #ofClass(name: string, category: string | null): Parsed<readonly Hazard[]> {
    const hazardClass = findClass(name)!;
    const group = hazardClass.brackets === 'group' ? this.#phrase(groups) : null;
    const wanted = group ?? category;
    const effect = name === 'STOT SE' ? this.#phrase(effects) : null;
    const { taken: routes, left } =
      hazardClass.brackets && !group ? takeRoutes(this.#left) : { taken: [], left: this.#left };
    this.#left = left;
    const code = this.#code(name, wanted);
    if (!code.ok) return code;
    const organs = hazardClass.brackets === 'organs' && !effect ? this.#rest() : [];
    const rest = organs.length > 0 ? [] : this.#rest();
    // Beside an H-code other words are those of its statement.
    if (rest.length > 0 && this.#statements.length === 0)
      return unreadable(
        `"${rest.join(', ')}" in "${this.#text}" is not understood`,
        `write it as in CLP Annex VI: ${code.value}`,
      );
    const inside = [effect, organs.join(', '), ...(routes.length === 1 ? routes : [])].filter(each => each);
    const print = (route: readonly (string | null)[], statement: string | undefined): string => {
      const brackets = route.filter(each => each).join('; ');
      return `${code.value}${brackets === '' ? '' : ` (${brackets})`}${statement ? `; ${statement}` : ''}`;
    };
    if (routes.length > 1) return together(routes.map(route => parseHazard(print([route], undefined))));
    if (this.#statements.length > 1)
      return together(this.#statements.map(statement => parseHazard(print(inside, statement))));
    return together([parseHazard(print(inside, this.#statements[0]))]);
  }

  /** Class and category; a category that is not given follows where only one is possible. */
  #code(name: string, category: string | null): Parsed<string> {
    const known = findClass(name)!.categories.map(each => each.category);
    if (category !== null) {
      const match = known.find(each => each.toLowerCase() === category.toLowerCase());
      if (match !== undefined) return parsed(hazardCode(name, match));
      return unreadable(
        `${name} has no category "${category.toUpperCase()}"`,
        `categories of ${name}: ${known.filter(each => each !== '').join(', ')}`,
      );
    }
    const possible = this.#possible(name);
    if (possible.length === 1) return parsed(possible[0]!);
    return unreadable(
      `"${this.#text}" leaves the category open`,
      `look it up in section 2 of the sheet: ${possible.join(', ')}`,
    );
  }

  #possible(name: string): readonly string[] {
    const codes = hazardCodes.filter(code => findCode(code)!.hazardClass.class === name);
    return withoutSame(codes.filter(code => this.#statements.every(each => allows(code, each))));
  }

  #byStatements(): Parsed<readonly Hazard[]> {
    if (this.#statements.length === 0) return unreadable(`"${this.#text}" is no hazard`, 'Skin Irrit. 2');
    const found: Parsed<Hazard>[] = [];
    const categories = takeCategories(this.#left).taken;
    for (const statement of this.#statements) {
      const all = withoutSame(hazardCodes.filter(code => allows(code, statement)));
      if (all.length === 0) continue;
      this.recognized = true;
      const possible = all.filter(code => inCategories(code, categories));
      if (possible.length === 0)
        return unreadable(
          `${statement} is not the statement of category ${categories.join(', ').toUpperCase()}`,
          `look it up in section 2 of the sheet: ${statement} is that of ${all.join(', ')}`,
        );
      if (possible.length > 1)
        return unreadable(
          `${statement} alone leaves open which class and category is meant`,
          `look it up in section 2 of the sheet: ${possible.join(', ')}`,
        );
      found.push(parseHazard(`${possible[0]}; ${statement}`));
    }
    return found.length < this.#statements.length
      ? unreadable(
          `"${this.#text}" holds an H-code that is not known`,
          'write class and category: Skin Irrit. 2',
        )
      : together(found);
  }

  #phrase<T extends string>(known: readonly { words: readonly string[]; meaning: T }[]): T | null {
    const match = known.find(({ words }) => this.#at(words) >= 0);
    if (!match) return null;
    this.#take(match.words);
    return match.meaning;
  }

  /** What is not yet understood, a part each. */
  #rest(): readonly string[] {
    const parts = new Map<number, string[]>();
    for (const { word, part } of this.#left) parts.set(part, [...(parts.get(part) ?? []), word]);
    return [...parts.values()]
      .filter(words => words.some(word => !fillers.has(word)))
      .map(words => words.join(' '));
  }

  #at(words: readonly string[]): number {
    return this.#left.findIndex((_, from) => words.every((word, i) => this.#left[from + i]?.word === word));
  }

  #take(words: readonly string[]): void {
    const from = this.#at(words);
    this.#left = this.#left.filter((_, at) => at < from || at >= from + words.length);
  }
}

const allows = (code: string, statement: string): boolean =>
  permittedStatements(findCode(code)!.category).includes(statement);

/** Whether a code is of a category that stands beside its statement; all are where none stands there. */
const inCategories = (code: string, categories: readonly string[]): boolean =>
  categories.length === 0 ||
  categories.some(each => findCode(code)!.category.category.toLowerCase().startsWith(each));

/** Without `2A` beside `2` of the same statement: the H-code says no more than the category does. */
const withoutSame = (codes: readonly string[]): readonly string[] =>
  codes.length === 2 && codes[0] === 'Eye Irrit. 2' && codes[1] === 'Eye Irrit. 2A' ? [codes[0]] : codes;

function together(read: readonly Parsed<Hazard>[]): Parsed<readonly Hazard[]> {
  const hazards: Hazard[] = [];
  for (const each of read) {
    if (!each.ok) return each;
    hazards.push(each.value);
  }
  return parsed(hazards);
}
