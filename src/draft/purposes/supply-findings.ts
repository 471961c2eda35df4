import { spokenName } from '../../document/spoken-name.ts';
import { supplyPackaging } from '../../duties/supply-packaging.ts';
import { labelSubstances } from '../../labelling/label-substances.ts';
import type { LabelFacts } from '../../layout/label/facts.ts';
import type { Die } from '../../layout/stock.ts';
import { hazardClasses } from '../../notation/classes.ts';
import type { Pack, ProductRecord } from '../../record/product-record.ts';
import { type SupplyLetters, type SupplySizes, supplySizes } from '../../reference/supply/label-sizes.ts';
import { innerPackageCite, smallPackage } from '../../reference/supply/small-packages.ts';
import type { Diagnostic, Severity } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import type { PackageLitres } from './package-litres.ts';

const found = (code: string, severity: Severity, message: string, cite: string): Diagnostic => ({
  code,
  severity,
  message,
  cite,
});

const environmental = new Set(
  hazardClasses.filter(({ kind }) => kind === 'environmental').map(each => each.class),
);

/** What a reviewer of the label must look at: supplier, identifier, language, and what the package has beside the label. */
export function supplyFindings(
  { record, classification }: ClassifiedProduct,
  pack: Pack,
  { supply }: Words,
  language: string,
): readonly Diagnostic[] {
  const at = { file: record.file };
  const bySelf = classification.hazards.filter(({ hazardClass }) => !environmental.has(hazardClass));
  const supplier: Diagnostic[] = record.maker?.euSupplier
    ? []
    : [
        {
          ...found('eu-supplier-missing', 'error', supply.noSupplier(), 'CLP Articles 4(11) and 17(1)(a)'),
          at,
          path: 'maker.eu-supplier',
          hint: 'give `eu-supplier: {name: …, address: […], telephone: …}` in the record of the maker',
        },
      ];
  const ufi =
    record.ufi === null && bySelf.length > 0
      ? [
          {
            ...found('ufi-missing', 'warning', supply.noUfi(), 'CLP Article 25(7); Annex VIII, Part A, 5.3'),
            at,
            path: 'ufi',
          },
        ]
      : [];
  return [
    ...supplier,
    ...ufi,
    found('label-language', 'note', supply.language(language), 'CLP Article 17(2)'),
    ...packagingFindings({ record, classification }, pack, { supply }),
  ];
}

function packagingFindings(
  { record, classification }: Pick<ClassifiedProduct, 'record' | 'classification'>,
  { container, at }: Pack,
  { supply }: Pick<Words, 'supply'>,
): readonly Diagnostic[] {
  const { form, soldTo } = record;
  if (soldTo && !soldTo.users.includes('consumers')) return [];
  const has = { 'child-resistant': container?.childResistant, tactile: container?.tactileWarning };
  return supplyPackaging({ ...classification, form }).flatMap(each => {
    const said = has[each.what] ?? null;
    if (said) return [];
    const message = soldTo ? supply.packaging(each, said) : supply.packagingOpen(each);
    const code = each.what === 'tactile' ? 'tactile-warning' : 'child-resistant-packaging';
    return [{ ...found(code, soldTo ? 'warning' : 'note', message, each.cite), at }];
  });
}

/** Names of the substances of the product identifier, as the label may tell them (CLP Articles 18(3)(b) and 24). */
export function supplyNames(
  { record, formula, classification }: ClassifiedProduct,
  { supply }: Words,
): { readonly names: readonly string[]; readonly findings: readonly Diagnostic[] } {
  const { due, constituents, proposed, names: enough, cite } = labelSubstances(classification);
  const findings: Diagnostic[] = [];
  const all = [...constituents, ...proposed];
  const names = all.flatMap(place => {
    const secret = formula.constituents[place]?.tradeSecret;
    if (!secret?.identity) return [spokenName(record.spokenNames, classification.constituents[place]!)];
    if (secret.alternativeName) return [secret.alternativeName.name];
    findings.push({
      ...found('secret-on-label', 'error', supply.secret(), 'CLP Articles 18(3)(b) and 24'),
      at: { file: record.file },
      hint: 'give `alternative-name` with the decision of the Agency, or withdraw the claim for this market',
    });
    return [];
  });
  if (due && all.length === 0) findings.push(found('label-substances', 'warning', supply.noNames(), cite));
  if (proposed.length > 0)
    findings.push(
      found(
        'label-substances',
        'warning',
        supply.proposedNames(proposed.map(place => classification.constituents[place]!.name)),
        cite,
      ),
    );
  if (all.length > enough)
    findings.push(found('label-substances', 'note', supply.names(all.length, enough), cite));
  return { names: [...new Set(names)], findings };
}

/** The maker's band is left off, which is never done in silence. */
export const brandFindings = ({ maker }: ProductRecord, { supply }: Words): readonly Diagnostic[] =>
  maker?.brand?.color
    ? [found('brand-left-off', 'note', supply.plain(), 'CLP Annex I, 1.2.1.5 (Regulation (EU) 2024/2865)')]
    : [];

/** What a label by Article 29 rests on: the choice of the maker, and up to 125 mL the volume. */
export function smallPackageFindings(
  litres: PackageLitres | null,
  { smallPackage: small, at }: Pack,
  { supply }: Words,
): readonly Diagnostic[] {
  if (!small) return [];
  const { take, reason } = small;
  const cite = take === 'inner' ? innerPackageCite : smallPackage.cite;
  const chosen = { ...found('small-package', 'warning', supply.smallPackage(take, reason), cite), at };
  if (take === 'inner' || litres === null || litres.value <= smallPackage.litres + 1e-9) return [chosen];
  const message = supply.notSmall(litres.value, smallPackage.litres);
  return [
    {
      ...found('not-small', 'error', message, cite),
      at,
      hint: 'remove `eu-small-package`, or take `inner` where the whole information is on a tag, a fold-out or an outer packaging',
    },
  ];
}

/** From this part of the end of a row on, contents may be those of a package of the next row. Judgement, no source. */
const NEAR = 0.8;

/** Whether the capacity is known well enough to pick a row of Table 1.3. */
export function capacityFindings(
  litres: PackageLitres | null,
  day: string,
  { at }: Pack,
  { supply }: Words,
): readonly Diagnostic[] {
  const cite = 'CLP Annex I, 1.2.1.4, Table 1.3';
  const hint = 'give `container: {capacity: 1 L}` of the pack';
  if (litres === null)
    return [{ ...found('capacity-unknown', 'error', supply.noCapacity(), cite), at, hint }];
  const { upTo } = supplySizes(litres.value, day);
  if (litres.of === 'container' || upTo === null || litres.value < NEAR * upTo) return [];
  return [
    { ...found('capacity-near', 'warning', supply.nearRow({ litres: litres.value, upTo }), cite), at, hint },
  ];
}

interface LaidOut {
  readonly facts: LabelFacts;
  readonly die: Die;
  readonly sizes: SupplySizes;
  readonly next: SupplyLetters | null;
}

/** What the finished label has of the sizes that are asked if possible, and of those that are asked later. */
export function sizeFindings(
  { facts, die, sizes: { label, pictogram, cite }, next }: LaidOut,
  { supply }: Words,
): readonly Diagnostic[] {
  const sides = facts.pictograms.map(({ side }) => side);
  const smallest = Math.min(...sides);
  const [short, long] = [Math.min(die.width, die.height), Math.max(die.width, die.height)];
  const letters = facts.texts.filter(({ role }) => role !== 'draft').map(({ xHeight }) => xHeight);
  const least = Math.min(...letters);
  return [
    ...(sides.length > 0 && smallest < pictogram.wanted - 1e-2
      ? [found('pictogram-small', 'warning', supply.pictograms(smallest, pictogram.wanted), cite)]
      : []),
    ...(!label.asked && (short < label.sides[0] || long < label.sides[1])
      ? [found('label-small', 'note', supply.small(label.sides), cite)]
      : []),
    ...(next && letters.length > 0
      ? [
          found(
            'letters-later',
            least + 1e-3 < next.xHeight ? 'warning' : 'note',
            supply.letters(next.from, next.xHeight, least),
            next.cite,
          ),
        ]
      : []),
  ];
}
