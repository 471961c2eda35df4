import type { Position } from '../report/diagnostic.ts';
import { type ClaimRule, type ClaimRules, claimRules } from './_claim-rules.ts';
import type { Claim, ClaimText, ClaimVerdict } from './claim.ts';

const gravest: readonly ClaimVerdict[] = ['contradicts', 'claim', 'unqualified', 'ask', 'substantiate'];

interface Span {
  readonly from: number;
  readonly to: number;
}

interface Found extends Span {
  readonly rule: ClaimRule;
  readonly verdict: ClaimVerdict;
  readonly against: readonly string[];
}

/**
 * Marks words that make a claim, and rewrites nothing: wording that makes a cleaner a pesticide (40 CFR 152.15(a)),
 * environmental claims (16 CFR 260), claims of origin (16 CFR 323.2), and words that contradict the hazard statements
 * of the label (29 CFR 1910.1200 App. C, C.3.1).
 * @param statements codes of the hazard statements of the label
 */
export const screenClaims = (texts: readonly ClaimText[], statements: readonly string[]): Claim[] =>
  texts.flatMap(text =>
    claimRules
      .flatMap(rules => foundBy(rules, text.text, statements).map(found => claimOf(found, rules, text)))
      .sort((a, b) => a.from - b.from),
  );

const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/** Matches of the rules of one law; of those that overlap the gravest, and the longest. */
function foundBy(rules: ClaimRules, text: string, statements: readonly string[]): Found[] {
  const matched = rules.rules
    .map(rule => ({ rule, spans: spansOf(rule.pattern, text) }))
    .filter(({ spans }) => spans.length > 0);
  if (matched.length === 0) return [];
  const exempt = rules.exempt.flatMap(pattern => spansOf(pattern, text));
  const all = matched.flatMap(({ rule, spans }) =>
    spans
      .filter(span => !exempt.some(each => each.from <= span.from && span.to <= each.to))
      .filter(span => !rules.negated?.test(sentenceBefore(text, span.from)))
      .flatMap((span): Found[] => {
        const against = statements.filter(code =>
          rule.against.some(start => start === '*' || code.startsWith(start)),
        );
        if (against.length > 0) return [{ ...span, rule, verdict: 'contradicts', against }];
        if (!rule.verdict) return [];
        const qualified = rule.verdict === 'unqualified' && rules.qualified?.test(sentenceAround(text, span));
        const soft = rule.verdict === 'claim' && rules.softened?.test(sentenceBefore(text, span.from));
        const verdict = qualified ? 'substantiate' : soft ? 'ask' : rule.verdict;
        return [{ ...span, rule, verdict, against }];
      }),
  );
  const rank = ({ verdict }: Found) => gravest.indexOf(verdict);
  const ordered = [...all].sort((a, b) => rank(a) - rank(b) || b.to - b.from - (a.to - a.from));
  const kept: Found[] = [];
  for (const found of ordered) if (!kept.some(each => overlap(each, found))) kept.push(found);
  return kept;
}

/** Matches of a global pattern; `matchAll` would copy it for each of many texts. */
function spansOf(pattern: RegExp, text: string): Span[] {
  const spans: Span[] = [];
  pattern.lastIndex = 0;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
    const to = match.index + match[0].length;
    spans.push({ from: match.index, to });
    if (match[0] === '') pattern.lastIndex = to + 1;
  }
  return spans;
}

// A full stop behind a single capital letter ends no sentence: E. coli, U.S.
const ENDS = /(?<![A-Z])[.!?](?=\s)/g;

/** The sentence as far as an offset. */
function sentenceBefore(text: string, offset: number): string {
  const ends = [...text.slice(0, offset).matchAll(ENDS)];
  return text.slice((ends[ends.length - 1]?.index ?? -1) + 1, offset);
}

/** The words around a match, to the end of the text: a qualification may be a sentence of its own. */
function sentenceAround(text: string, { from }: Span): string {
  const start = from - sentenceBefore(text, from).length;
  return text.slice(start);
}

function claimOf({ rule, verdict, against, from, to }: Found, { kind }: ClaimRules, text: ClaimText): Claim {
  return {
    kind,
    rule: rule.id,
    verdict,
    words: text.text.slice(from, to),
    path: text.path,
    from,
    at: placeOf(text, from),
    cite: rule.cite,
    against,
  };
}

/** The place of an offset: that of its word, moved by the letters before it in the word. */
function placeOf({ text, places, file }: ClaimText, offset: number): Position {
  let index = -1;
  let start = 0;
  for (const { index: at } of text.matchAll(/\S+/g)) {
    if (at > offset) break;
    index++;
    start = at;
  }
  const place = places[index];
  if (place?.column === undefined) return place ?? { file };
  return { ...place, column: place.column + offset - start };
}
