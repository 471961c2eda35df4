import type { PrecautionGroup } from '../../labelling/label-elements.ts';
import { openOnDocuments } from '../../labelling/open-on-documents.ts';
import type { Route } from '../../notation/hazard.ts';
import { inTerms } from '../../words/in-terms.ts';
import { pictogramTitle } from '../pictogram-title.ts';
import { adviceTexts } from './advice.ts';
import { bodyOf, firstBody, paragraphs, type SectionBodies, said } from './content.ts';
import { capitalized, figure, fill } from './fill.ts';
import { classTitle, hazardTitle, isOfStandard } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { tellingOf } from './secrets.ts';
import { withCode } from './statements.ts';

/** Section 2 (29 CFR 1910.1200 App. D, Table D.1, 2). */
export function hazardIdentification(input: SheetInput): SectionBodies {
  const { classification, elements, record } = input;
  const { identification: words } = input.words.sheet;
  const hazards = classification.hazards.filter(({ hazardClass }) => isOfStandard(hazardClass));
  const undecided = classification.otherClasses.filter(
    ({ outcome, class: name }) => outcome === 'insufficient-data' && isOfStandard(name),
  );
  const { stale, phMissing } = openOnDocuments(classification);
  const figures = elements.pictograms.map(code => ({
    code,
    title: inTerms(input.words.sheet.terms.pictograms, pictogramTitle(code)),
  }));
  const titles = figures.map(({ code, title }) => `${capitalized(title)} (${code})`);
  const statements = elements.hazardStatements.map(withCode);
  const supplemental = elements.supplemental
    .filter(each => !isUnknownStatement(each) && !isNotToMix(each))
    .map(withCode);
  const groups = (Object.keys(words.groups) as PrecautionGroup[]).flatMap(group => {
    const list = elements.precautionaryStatements
      .filter(statement => statement.group === group)
      .map(withCode);
    return list.length > 0 ? [{ title: words.groups[group], list }] : [];
  });
  const reactions = [
    ...reactionWarnings(input),
    ...mixingWarnings(input),
    ...adviceTexts(input, 'reaction-hazards'),
  ];
  return {
    classification: {
      ...firstBody(
        bodyOf('calculation', {
          list: hazards.map(
            hazard =>
              `${hazardTitle(hazard, input.words.sheet)} [${input.words.cites(hazard.because.cites)}]`,
          ),
        }),
        said('calculation', undecided.length > 0 ? words.notClassifiedUndecided : words.notClassified),
      ),
      notes: [
        ...(undecided.length > 0
          ? [
              fill(words.insufficient, {
                titles: [...new Set(undecided.map(each => classTitle(each, input.words.sheet)))].join('; '),
              }),
            ]
          : []),
        ...(phMissing ? [words.phMissing] : []),
        ...(stale.length > 0 ? [words.stale] : []),
      ],
    },
    symbols: firstBody(
      bodyOf('label elements', { figures, text: titles.length > 0 ? [titles.join(', ')] : [] }),
      said('label elements', words.noSymbols),
    ),
    'signal-word': firstBody(
      bodyOf('label elements', {
        text: elements.signalWord ? [inTerms(input.words.sheet.terms.signalWords, elements.signalWord)] : [],
      }),
      said('label elements', words.noSignalWord),
    ),
    'hazard-statements': firstBody(
      bodyOf('label elements', { list: [...statements, ...supplemental] }),
      said('label elements', words.noHazardStatements),
    ),
    'precautionary-statements': firstBody(
      bodyOf('label elements', { groups }),
      said('label elements', words.noPrecautions),
    ),
    'reaction-hazards': firstBody(
      bodyOf('calculation', {
        text: [
          ...(reactions.length > 0 ? [words.reaction] : []),
          ...paragraphs(record.sheet['hazardous-reactions']).map(text => fill(words.namedReaction, { text })),
        ],
        list: reactions,
      }),
      record.reacts.length === 0 ? said('calculation', words.noReactions) : null,
    ),
    'other-hazards': firstBody(
      bodyOf('product record', { text: paragraphs(record.sheet['other-hazards']) }),
      bodyOf('hazard classes', { list: adviceTexts(input, 'other-hazards') }),
    ),
    'unknown-toxicity': firstBody(
      bodyOf('calculation', { text: unknownStatements(input) }),
      said('calculation', words.noUnknown),
    ),
  };
}

/** Code of the statement in `label-rules.json` of every basis. */
const isUnknownStatement = ({ code }: { readonly code: string }): boolean =>
  code === 'unknown-acute-toxicity';

/** Line on what the product must not be mixed with, which no table of statements has; it stands with the reactions. */
const isNotToMix = ({ code }: { readonly code: string }): boolean => code === 'not-to-mix';

/** Statements on unknown acute toxicity as the label has them, else as App. C, C.3.3 words them. */
export function unknownStatements({
  classification,
  elements,
  words: language,
}: SheetInput): readonly string[] {
  const { identification: words } = language.sheet;
  const labelled = elements.supplemental.filter(isUnknownStatement).map(({ text }) => text);
  if (labelled.length > 0) return labelled;
  return Object.entries(classification.unknownAcuteToxicity)
    .filter(([, percent]) => percent > 0)
    .map(([route, percent]) =>
      fill(words.unknown, {
        percent: figure(percent, 3, language.decimalMark),
        route: words.routes[route as Route],
      }),
    );
}

/** What the product must not be mixed with in use, because of one ingredient by itself; each line once. */
export function mixingWarnings({ classification, words: language }: SheetInput): readonly string[] {
  const { identification, terms } = language.sheet;
  const said = (term: string): string => inTerms(terms.mixing, term);
  const lines = classification.warnings.flatMap(warning =>
    warning.id === 'reactive-alone'
      ? warning.groups.map(({ with: others, gives }) =>
          fill(identification.notToMix, { others: said(others), gives: said(gives) }),
        )
      : [],
  );
  return [...new Set(lines)];
}

/** Warnings about ingredients that react with each other, and supplemental statements that speak of reactions. */
export function reactionWarnings(input: SheetInput): readonly string[] {
  const { classification, elements, words: language } = input;
  const telling = tellingOf(input);
  const warned = classification.warnings
    .filter(({ id }) => id === 'reactive-constituents')
    .map(warning => language.warning(warning, telling));
  const stated = elements.supplemental.filter(({ code }) => REACTION_CODES.test(code)).map(withCode);
  return [...new Set([...warned.map(capitalized), ...stated])];
}

// Supplemental statements of CLP Annex II Part 1 on reactions with water, acids and air.
const REACTION_CODES = /^EUH(?:014|018|019|029|031|032|044|206)$/u;
