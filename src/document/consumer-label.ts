import type { ConsumerTexts } from '../labelling/consumer/consumer-texts.ts';
import type { ConsumerFacts } from '../labelling/consumer/facts.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { Pack } from '../record/product-record.ts';
import type { LabelSections } from './label.ts';
import { netDeclaration } from './net-declaration.ts';
import { paragraphsOf } from './statement-paragraphs.ts';

/** What the label for consumers is filled from. */
export interface ConsumerLabelInput {
  readonly facts: Pick<ConsumerFacts, 'signal' | 'poison'>;
  readonly texts: ConsumerTexts;
  /** Statements of the classification, those of the workplace left out. */
  readonly elements: Pick<LabelElements, 'precautionaryStatements'>;
  readonly pack: Pick<Pack, 'contents'>;
  readonly use: string | null;
  /** As the label may tell them. */
  readonly names: readonly string[];
  /** Other cautions stand on another panel. */
  readonly elsewhere: boolean;
}

/** The sections of the label for consumers (15 U.S.C. 1261(p)(1); 16 CFR 1500.121; 15 U.S.C. 1453). */
export function consumerSections(input: ConsumerLabelInput): LabelSections {
  const { facts, texts, elements, pack, use, names, elsewhere } = input;
  const all = elements.precautionaryStatements;
  return {
    use: use ?? '',
    cautions: facts.signal !== null,
    word: facts.signal?.word ?? '',
    poison: facts.poison !== null,
    statements: texts.statements,
    contains: names,
    children: texts.children,
    elsewhere: elsewhere ? texts.elsewhere : null,
    precautions: paragraphsOf([...texts.handling, ...all.filter(({ group }) => group !== 'response')]),
    firstAid: paragraphsOf([...texts.aid, ...all.filter(({ group }) => group === 'response')]),
    declaration: netDeclaration(pack.contents) ?? pack.contents.written,
  };
}
