import type { SupplyPackagingFinding } from '../../duties/supply-packaging.ts';
import type { SupplyWords } from '../supply-words.ts';
import { languageName } from './spoken.ts';

const things: Readonly<Record<SupplyPackagingFinding['what'], string>> = {
  'child-resistant': 'a child-resistant fastening',
  tactile: 'a tactile warning of danger',
};

const keys: Readonly<Record<SupplyPackagingFinding['what'], string>> = {
  'child-resistant': 'container.child-resistant',
  tactile: 'container.tactile-warning',
};

const asked = ({ what, because }: SupplyPackagingFinding): string =>
  `${things[what]} is asked of packages for the general public because of ${because.join(', ')}`;

/** Figures without a tail of noughts. */
const show = (value: number): string => String(Number(value.toFixed(2)));

/** What is said of a label for supply in the European Union and of a label in the workplace. */
export const supply: SupplyWords = {
  noSupplier: () =>
    'the label must name a supplier established in the Union with address and telephone, and the maker gives none',
  noCapacity: () => 'the capacity of the package, which sets the sizes of the label, is not known',
  nearRow: ({ litres, upTo }) =>
    `the sizes are those of a package of up to ${upTo} L, by its contents of ${show(litres)} L; the law goes by the capacity, which is more`,
  noUfi: () =>
    'a mixture with hazards to health or physical hazards bears its unique formula identifier, and the record gives none',
  language: language =>
    `the label is in ${languageName(language)}; it must be in the official language or languages of each Member State where the product is placed on the market, unless that State says otherwise`,
  names: (count, enough) =>
    `the label names ${count} substances; ${enough} suffice as a rule, and which of them is for the reviewer to say`,
  noNames: () =>
    'the label must name the substances that contribute to the classification, and the calculation names none: the classification rests on the mixture',
  proposedNames: names =>
    `a class rests on the mixture as a whole; the label names what is in that class by itself (${names.join('; ')}), and the reviewer says which of them cause it`,
  secret: () =>
    'the label must name a substance that the record claims as a trade secret; the Union knows none without an alternative name that the Agency allowed',
  letters: (from, least, found) =>
    `from ${from} on letters need an x-height of ${show(least)} mm; the smallest of this label have ${show(Math.floor(found * 100 + 1e-6) / 100)} mm`,
  pictograms: (side, wanted) =>
    `pictograms have a side of ${show(side)} mm; the law asks for ${show(wanted)} mm if possible, and a larger label makes it possible`,
  small: ([short, long]) =>
    `the label is smaller than the ${short} x ${long} mm that the law asks for if possible`,
  plain: () => 'the band in the color of the maker is left off: text is to be black on white',
  smallPackage: (take, reason) =>
    take === 'reduced'
      ? `statements are left out that a small package may go without; reason of the maker: ${reason}`
      : `the label bears the least that an inner packaging may; the whole information must be on a fold-out label, a tie-on tag or the outer packaging; reason of the maker: ${reason}`,
  notSmall: (litres, most) =>
    `statements may be left out up to ${show(most * 1000)} mL, and the package holds ${show(litres * 1000)} mL`,
  packaging: (finding, said) =>
    said === null
      ? `${asked(finding)}; the pack does not say: answer \`${keys[finding.what]}\``
      : `${asked(finding)}; the pack says that it has none`,
  packagingOpen: finding => `${asked(finding)}; who buys the product is not said: answer \`sold-to\``,
  tank: {
    withoutPrecautions: () =>
      'precautions do not fit this size beside letters that are read from afar, and are left out; the paragraph asks for none',
    scope: () =>
      'for containers that stay in the workplace; a container that is shipped bears the whole label',
  },
};
