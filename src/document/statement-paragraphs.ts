import type { PrecautionaryStatement } from '../labelling/label-elements.ts';

/** A telephone number, or a short lead-in, stays on one line. */
export const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

/** Longest lead-in that stays on one line. */
const SHORT_LEAD = 14;

const shortUnbroken = (lead: string): string => (lead.length <= SHORT_LEAD ? unbroken(lead) : lead);

/** Statements on spills, which would seem to go with the lead-in of the statement before them. */
const SPILL = /^P39[01]$/;

/** Statements set as one paragraph: those without a condition run on, each condition begins one of its own. */
export interface StatementParagraph {
  readonly lead: string | null;
  readonly statements: readonly string[];
}

/**
 * Statements as paragraphs: those on spills first; a condition with what is to be done starts a line, and a
 * condition that follows another is named once where both have the same
 * (29 CFR 1910.1200 App. C, C.2.4.6: statements may be combined to improve readability).
 */
export function paragraphsOf(
  statements: readonly Pick<PrecautionaryStatement, 'code' | 'text' | 'lead'>[],
): readonly StatementParagraph[] {
  const spill = statements.filter(({ code }) => SPILL.test(code));
  const others = statements.filter(({ code }) => !SPILL.test(code));
  const paragraphs: { lead: string | null; statements: string[] }[] = [];
  for (const statement of [...spill, ...others]) {
    const { lead, rest } = leadIn(statement);
    const last = paragraphs.at(-1);
    if (last && last.lead === lead) last.statements.push(rest);
    else paragraphs.push({ lead, statements: [rest] });
  }
  return paragraphs;
}

/** `If in eyes:` is set apart, so that the way of contact is found at a glance. */
function leadIn({ text, lead }: Pick<PrecautionaryStatement, 'text' | 'lead'>): {
  readonly lead: string | null;
  readonly rest: string;
} {
  return lead ? { lead: shortUnbroken(lead), rest: text.slice(lead.length + 1) } : { lead: null, rest: text };
}
