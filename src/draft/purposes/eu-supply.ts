import { supplySections } from '../../document/supply-label.ts';
import type { TypeRules } from '../../document/type-rules.ts';
import { smallPackageElements } from '../../labelling/small-package.ts';
import type { LabelFacts } from '../../layout/label/facts.ts';
import { unionBasis } from '../../reference/basis.ts';
import {
  type SupplyLetters,
  type SupplySizes,
  supplyLetters,
  supplySizes,
} from '../../reference/supply/label-sizes.ts';
import { labelledProduct } from '../labelled-product.ts';
import { packageLitres } from './package-litres.ts';
import type { Purpose } from './purpose.ts';
import {
  brandFindings,
  capacityFindings,
  sizeFindings,
  smallPackageFindings,
  supplyFindings,
  supplyNames,
} from './supply-findings.ts';

/** Roles of texts that Article 17 asks for, by their name in `label --json`. */
const ASKED = [
  'product-identifier',
  'signal-word',
  'hazard-statement',
  'substances',
  'precautions',
  'supplemental',
  'ufi',
  'supplier',
  'net-contents',
] as const;

/** The label for supply in the European Union (CLP Articles 17 to 33; Annex I, 1.2.1). */
export const euSupply: Purpose = {
  id: 'eu-supply',
  basis: unionBasis,
  languages: 'market',
  prepare(product, pack, words, said = words) {
    const { record, reference } = product;
    const small = pack.smallPackage ?? null;
    const day = reference.basis.asOf;
    const litres = packageLitres(record, pack);
    const aside = smallPackageFindings(litres, pack, words);
    const elements =
      small?.take === 'reduced'
        ? smallPackageElements(
            product.elements,
            product.classification,
            reference.labelData,
            labelledProduct(record),
          )
        : product.elements;
    const supplier = record.maker?.euSupplier ?? null;
    const names = supplyNames(product, words);
    const sections = supplySections({
      supplier,
      names: names.names,
      ufi: record.ufi,
      elements,
      pack,
      language: said.language,
      decimalMark: said.decimalMark,
      inner: small?.take === 'inner',
    });
    const told = [
      ...names.findings,
      ...supplyFindings(product, pack, words, said.language),
      ...brandFindings(record, words),
      ...aside,
    ];
    const capacity = capacityFindings(litres, day, pack, words);
    if (litres === null) return { elements, sections, findings: [...told, ...capacity] };
    const sizes = supplySizes(litres.value, day);
    const letters = supplyLetters(litres.value, day);
    return {
      elements,
      sections,
      type: typeRules(sizes, letters.now),
      examine: (facts: LabelFacts, die) => sizeFindings({ facts, die, sizes, next: letters.next }, words),
      findings: [...told, ...capacity],
    };
  },
};

/** Table 1.3 of Annex I; before letters have a least height by law, the press has one. */
function typeRules({ label, pictogram, cite }: SupplySizes, letters: SupplyLetters | null): TypeRules {
  const least = letters && { xHeight: letters.xHeight, cite: letters.cite };
  return {
    least: least ? Object.fromEntries(ASKED.map(role => [role, least])) : {},
    front: null,
    cite,
    bordered: false,
    frames: { red: true, cite: 'CLP Annex I, 1.2.1; Annex V' },
    pictogram: { ...pictogram, cite },
    ...(label.asked && { label: { sides: label.sides, cite } }),
    plain: true,
  };
}
