import { consumerSections } from '../../document/consumer-label.ts';
import type { TypeRules } from '../../document/type-rules.ts';
import { consumerFacts } from '../../labelling/consumer/consumer-facts.ts';
import { consumerTexts } from '../../labelling/consumer/consumer-texts.ts';
import { displayPanel, type PanelFound } from '../../labelling/consumer/panel-area.ts';
import type { LabelElements } from '../../labelling/label-elements.ts';
import { workplaceStatements } from '../../labelling/purposes.ts';
import type { Pack } from '../../record/product-record.ts';
import { usual } from '../../reference/basis.ts';
import { consumerData } from '../../reference/consumer/hazard-data.ts';
import { panelType } from '../../reference/consumer/label-type.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import { consumerFindings, consumerNames } from './consumer-findings.ts';
import { consumerProduct } from './consumer-product.ts';
import { declarationFindings } from './declaration-findings.ts';
import type { Purpose } from './purpose.ts';

/**
 * The label of a product for households (15 U.S.C. 1261(p)(1); 16 CFR 1500.121; 16 CFR part 500). Its hazards are
 * proposed from the classification for workplaces; precautions and first aid are the statements of that classification
 * without those that speak of a plant.
 */
export const usConsumer: Purpose = {
  id: 'us-consumer',
  basis: usual,
  languages: 'alone',
  prepare(product, pack, words) {
    const { record, classification } = product;
    const facts = consumerFacts(classification, consumerProduct(record));
    const elements = forHouseholds(product.elements);
    const found = panelOf(pack);
    if (!('panel' in found)) return { elements, findings: panelFindings(pack, words) };
    const texts = consumerTexts(facts, product.elements);
    const names = consumerNames(product, facts, words);
    const elsewhere = pack.label !== null && pack.label.width - pack.label.overlap > found.panel.width + 1e-6;
    return {
      elements,
      sections: consumerSections({
        facts,
        texts,
        elements,
        pack,
        use: record.use,
        names: names.names,
        elsewhere,
      }),
      type: typeRules(found.panel, elsewhere),
      examine: (laidOut, { height }) =>
        declarationFindings({ facts: laidOut, height, area: found.panel.area }, words),
      findings: [...names.findings, ...consumerFindings(product, pack, facts, words)],
    };
  },
};

/** Without what the law says in words of its own, and what speaks of a plant (29 CFR 1910.1200 App. C, C.2.4.9). */
function forHouseholds(elements: LabelElements): LabelElements {
  const spared = new Set([
    ...workplaceStatements(elements.precautionaryStatements).map(({ code }) => code),
    ...consumerData.replaced,
  ]);
  const inPlant = new Set(
    workplaceStatements(elements.missing.map(({ what }) => ({ code: what }))).map(({ code }) => code),
  );
  return {
    ...elements,
    signalWord: null,
    pictograms: [],
    supplemental: [],
    precautionaryStatements: elements.precautionaryStatements.filter(({ code }) => !spared.has(code)),
    missing: elements.missing.filter(({ what }) => !inPlant.has(what)),
  };
}

/** Least heights by the panel (16 CFR 1500.121(c)(2), Table 1; 16 CFR 500.21(b)). */
function typeRules(panel: { readonly area: number; readonly width: number }, elsewhere: boolean): TypeRules {
  const { signal, hazard, other, cite, declaration, declarationCite } = panelType(panel.area);
  const cautionary = { capHeight: other, cite };
  return {
    least: {
      'signal-word': { capHeight: signal, cite },
      poison: { capHeight: signal, cite },
      'hazard-statement': { capHeight: hazard, cite },
      // Names of components and the reference to another panel stand in the hazard block.
      hazard: cautionary,
      notice: cautionary,
      precautions: cautionary,
      'first-aid': cautionary,
      'net-contents': { capHeight: declaration, cite: declarationCite },
    },
    cite,
    front: elsewhere ? panel.width : null,
    ...(!elsewhere && { seen: panel.width }),
    bordered: true,
  };
}

const panelOf = ({ container }: Pack): PanelFound =>
  container ? displayPanel(container) : { missing: ['container'] };

/** What the container of a pack lacks for its label for consumers; nothing where the panel is known. */
export function panelFindings(pack: Pack, words: Words): readonly Diagnostic[] {
  const found = panelOf(pack);
  if ('panel' in found) return [];
  return [
    {
      code: 'panel-unknown',
      severity: 'error',
      message: `pack \`${pack.id}\`: ${words.consumer.noPanel(found.missing)}`,
      hint: 'give the container its sizes, for example `container: {shape: cylinder, diameter: 88 mm, label-panel-height: 150 mm}`',
      at: pack.at,
      cite: '16 CFR 1500.121(c)(1)',
    },
  ];
}
