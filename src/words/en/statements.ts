import type {
  Conditional,
  PrecautionaryStatement,
  Proposed,
  Unused,
} from '../../labelling/label-elements.ts';
import type { OmissionReason } from '../../labelling/omission-reason.ts';
import type { ProductFact } from '../../reference/label-data/rules.ts';
import type { StatementTelling } from '../words.ts';

/** Why something is left off, or lacks what it needs. */
function why(reason: OmissionReason): string {
  switch (reason.kind) {
    case 'rule':
      return reason.text;
    case 'replaced':
      return `${reason.text}: ${reason.by}`;
    case 'graver-signal-word':
      return 'Danger is on the label';
    case 'pictogram-shown':
      return `${reason.pictogram} is on the label`;
    case 'graver-category':
      return `${reason.pictogram} stands for the most severe category of the class`;
    case 'beside':
      return `may be left out beside ${reason.statement}`;
    case 'repeated':
      return 'every part of it is said by other statements';
    case 'record':
      return `the record omits it: ${reason.reason}`;
    case 'beyond-proposal':
      return `beyond the proposed set: hazards are covered, and more than ${reason.most} statements need a ground; \`statements.keep\` of the record puts it back`;
    case 'no-text':
      return 'the basis has no text for it';
    case 'no-row':
      return 'the allocation table has no row for it';
    case 'needs-words':
      return `the law leaves words of this statement to the maker (${reason.fields.join(', ')}); give them in the record: \`${reason.key}\``;
  }
}

const keys: Readonly<Partial<Record<ProductFact, string>>> = {
  volatile: 'statements.conditions.volatile',
  inhalable: 'statements.conditions.inhalable',
  compatibilityGroupS: 'statements.conditions.compatibility-group-S',
  specificTreatment: 'statements.conditions.specific-treatment',
};

const answer = (needs: Conditional['needs']): string => {
  const key = needs && keys[needs];
  return key
    ? `answer \`${key}\` in the record`
    : 'if it does not apply, `statements.omit` takes it with a reason';
};

function conditionals(all: readonly Conditional[]): string[] {
  const byAnswer = new Map<string, Conditional[]>();
  for (const each of all) {
    const key = each.needs ? each.needs : each.condition;
    byAnswer.set(key, [...(byAnswer.get(key) ?? []), each]);
  }
  return [...byAnswer.values()].map(group => {
    const codes = [...new Set(group.map(({ statement }) => statement))].join(', ');
    const texts = [...new Set(group.map(({ text }) => text))].join('; ');
    const verb = group.length > 1 ? 'stand' : 'stands';
    return `${codes} ${verb} on the label as long as a condition is open (${texts}): ${answer(group[0]!.needs)}`;
  });
}

function combined(statements: readonly PrecautionaryStatement[]): string[] {
  const byCite = new Map<string, string[]>();
  for (const { code, combinedUnder } of statements)
    if (combinedUnder) byCite.set(combinedUnder, [...(byCite.get(combinedUnder) ?? []), code]);
  return [...byCite].map(
    ([cite, codes]) => `combined here; no revision prints the codes together: ${codes.join(', ')} (${cite})`,
  );
}

function proposed(lines: readonly Proposed[]): string[] {
  const byCode = new Map<string, string[]>();
  for (const { code, text } of lines) byCode.set(code, [...(byCode.get(code) ?? []), `"${text}"`]);
  return [...byCode].map(
    ([code, texts]) =>
      `proposed for the label, no text of the law: ${texts.join(' ')} Keep it with \`statements: {keep: [${code}]}\`, or leave it out with \`omit\` and a reason`,
  );
}

const reasons: Readonly<Record<Unused['why'], string>> = {
  'not-on-label': 'this label has no such statement',
  'no-such-field': 'the statement has no such place for words; name its field',
  'no-such-alternative': 'the statement offers no such alternative',
  'no-ground': 'the basis gives no ground to leave out a hazard statement',
};

const unused = ({ block, code, why: reason }: Unused): string =>
  `\`statements.${block}\` of the record names ${code} without effect: ${reasons[reason]}`;

/** Label elements in words. */
export const statements: StatementTelling = { why, conditionals, combined, proposed, unused };
