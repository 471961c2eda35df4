import { expect } from 'vitest';
import { nodeFiles } from '../../../src/cli/files.ts';
import { consumerSections } from '../../../src/document/consumer-label.ts';
import { type LabelModel, labelDocument } from '../../../src/document/label.ts';
import { loadTemplate } from '../../../src/document/template.ts';
import { type ClassifiedProduct, classifyProduct } from '../../../src/draft/classified-product.ts';
import { openProduct } from '../../../src/draft/open-product.ts';
import { openReference } from '../../../src/draft/open-reference.ts';
import { purposeOf } from '../../../src/draft/purposes/purposes.ts';
import { readTemplate } from '../../../src/environment/package-files.ts';
import type { LabelPurpose } from '../../../src/labelling/purposes.ts';
import { labelFacts } from '../../../src/layout/label/facts.ts';
import { tryLabel } from '../../../src/layout/label/layout-label.ts';
import type { Die } from '../../../src/layout/stock.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { en } from '../../../src/words/en/index.ts';
import { advised, expectHeld } from './held.ts';
import { corrosive, type SampleOptions, sampleInput, sampleModel, sampleStock } from './sample.ts';

export const PURPOSES: readonly LabelPurpose[] = ['us-workplace', 'us-consumer', 'eu-supply', 'tank'];

/** A day on which the letters of Regulation (EU) 2024/2865 have their least heights. */
const LATER = '2028-01-01';

const products = new Map<string, ClassifiedProduct>();

/** The record that the purposes take their figures from; its elements are those of the trial. */
async function productUnder(basis: 'us-hcs' | 'eu-clp'): Promise<ClassifiedProduct> {
  const known = products.get(basis);
  if (known) return known;
  const opened = openProduct('templates/demo/patio-cleaner.yaml', nodeFiles);
  const reference = await openReference(basis, LATER);
  if (!opened.ok || !reference.ok) throw new Error('the demo does not open');
  const product = classifyProduct(opened.value, reference.value);
  products.set(basis, product);
  return product;
}

/** Content of a trial on the label of a purpose, as its law asks for it on a die. */
export async function purposeModel(
  purpose: LabelPurpose,
  options: SampleOptions,
  die: Die,
): Promise<LabelModel> {
  if (purpose === 'us-workplace') return sampleModel(options);
  const elements = options.elements ?? corrosive;
  const basis = purpose === 'eu-supply' ? 'eu-clp' : 'us-hcs';
  const product = { ...(await productUnder(basis)), elements };
  const input = sampleInput(options);
  const { width, height, overlap = 0, panels = 1 } = die;
  const label = { width, height, overlap, panels, cornerRadius: 0, unit: 'mm' as const };
  const pack = { ...input.pack, label: { ...product.record.packs[0]!.label!, ...label } };
  const prepared = purposeOf(purpose)!.prepare(product, pack, en);
  const sections =
    purpose === 'us-consumer'
      ? consumerSections({
          facts: { signal: elements.signalWord ? ({ word: 'DANGER' } as never) : null, poison: null },
          texts: {
            statements: elements.hazardStatements.map(({ text }) => text.replace(/\.$/, '').toUpperCase()),
            handling: [],
            aid: [],
            children: 'Keep out of the reach of children.',
            elsewhere: 'Read carefully other cautions on the side panel.',
          },
          elements,
          pack,
          use: 'Cleaner for stone',
          names: ['sodium hypochlorite'],
          elsewhere: prepared.type?.front != null,
        })
      : prepared.sections;
  const template = await loadTemplate(readTemplate, `labels/${purpose}.hbs`);
  return labelDocument({ ...input, pack, sections, type: prepared.type }, template);
}

/** Lays a trial out and holds it against outline, parts and law, or its refusal against the dies that it advises. */
export async function expectTrial(
  purpose: LabelPurpose,
  options: SampleOptions,
  die: Die,
  fonts: FontLibrary,
): Promise<'fits' | 'refused'> {
  const lay = async (on: Die) => {
    const model = await purposeModel(purpose, options, on);
    const stock = { ...(await sampleStock(on.width, on.height)), die: on };
    return { model, stock, ...(await tryLabel(model, fonts, stock)) };
  };
  const hold = ({ model, stock, layout }: Awaited<ReturnType<typeof lay>>) => {
    expectHeld(layout!, stock.die, fonts);
    const { texts, pictograms } = labelFacts(model, layout!, stock, fonts);
    for (const { role, text, capHeight, xHeight } of texts) {
      const rule = model.type?.least[role];
      expect(capHeight, text).toBeGreaterThanOrEqual((rule?.capHeight ?? 0) - 1e-3);
      expect(xHeight, text).toBeGreaterThanOrEqual((rule?.xHeight ?? 0) - 1e-3);
    }
    for (const { side } of pictograms)
      expect(side).toBeGreaterThanOrEqual((model.type?.pictogram?.least ?? 0) - 1e-3);
  };
  const first = await lay(die);
  if (first.layout) {
    hold(first);
    return 'fits';
  }
  expect(first.diagnostics[0]).toMatchObject({ code: 'label-too-small', severity: 'error' });
  for (const other of advised(die, first.remedies!)) {
    // The front of a container is seen at once up to a width: a wider label says where its other cautions are.
    const larger = await lay(other);
    expect(larger.layout, `${JSON.stringify(other)} as advised`).not.toBeNull();
    hold(larger);
  }
  return 'refused';
}
