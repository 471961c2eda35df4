import type { ElementString } from '../../barcode/element-strings.ts';
import type { CaseFacts } from '../../logistics/case-facts.ts';
import type { MassGap } from '../../logistics/case-mass.ts';
import type { HierarchyFact } from '../../logistics/hierarchy.ts';
import type { PalletLoad } from '../../logistics/pallet.ts';
import type { Pack } from '../../record/product-record.ts';
import type { Diagnostic, Severity } from '../../report/diagnostic.ts';
import { bothMasses, counted, plain } from './lengths.ts';

const GAPS: Readonly<Record<MassGap, readonly [string, string]>> = {
  density: ['the density of the product', 'add `density:` to the properties of the record'],
  'empty-pack': [
    'the mass of an empty pack',
    'add `tare:` to the container of the pack, weighed with its closure, or give --bottle-tare',
  ],
  'case-tare': ['the mass of the empty case', 'add `tare:` to the case of the pack, or give --case-tare'],
};

const hierarchyText = (fact: HierarchyFact): readonly [Severity, string, string?] => {
  switch (fact.id) {
    case 'unit-missing':
      return ['warning', 'the pack has no GTIN', 'add `gtin:` to the pack'];
    case 'case-missing':
      return ['warning', 'the case has no GTIN: no ITF-14 is drawn', 'add `gtin:` to the case'];
    case 'same-number':
      return [
        'error',
        `pack and case have the same number ${fact.gtin}`,
        'a case is a trade item of its own and needs a GTIN of its own',
      ];
    case 'other-item':
      return [
        'error',
        `the number ${fact.case} of the case stands for a grouping of ${fact.contained}, and the pack is ${fact.unit}`,
        `with the same indicator this pack would give ${fact.right}`,
      ];
    case 'variable-measure':
      return [
        'error',
        `the number ${fact.case} begins with 9, which is for items of variable measure`,
        'a case of a fixed count takes an indicator from 1 to 8',
      ];
    case 'own-number':
      return [
        'note',
        `the case has a number of its own, ${fact.case}; nothing in it tells that ${fact.unit} is inside`,
      ];
    case 'case-of-one':
      return ['note', `the case of one pack has its own number ${fact.case}`];
    case 'unit-is-grouping':
      return ['note', `the number ${fact.unit} of the pack is itself that of a grouping`];
  }
};

/** A pack that is sold without a case. */
export const caseMissing = ({ id, at }: Pack): Diagnostic => ({
  code: 'case-missing',
  severity: 'error',
  message: `pack \`${id}\` has no case`,
  hint: 'add `case: {count: 20, gtin: "…", tare: 0.9 kg}` to the pack',
  at,
});

/** What a packet leaves to the day of production: lot and dates, and the number of each pallet. */
export function leftToProduction(pack: Pack, facts: Pick<CaseFacts, 'gtin' | 'load'>): Diagnostic[] {
  const note = (code: string, message: string, hint: string): Diagnostic => ({
    code,
    severity: 'note',
    message,
    hint,
    at: pack.at,
  });
  return [
    note(
      'case-batch',
      `the case label of ${pack.id} bears no lot and no date${facts.gtin === null ? '' : ', and so no GS1-128'}: a packet is made before the batch`,
      '`case --lot LOT --use-by DATE` makes it for a batch',
    ),
    ...(facts.load && facts.load.cases > 0
      ? [
          note(
            'pallet-number',
            `the logistic label of ${pack.id} is not in the packet: each pallet gets an SSCC of its own`,
            '`case --pallet --sscc NUMBER` makes it for a pallet',
          ),
        ]
      : []),
  ];
}

/** What is to be told of a case before it is labelled. */
export function caseFindings(facts: CaseFacts, pack: Pack): Diagnostic[] {
  const at = pack.at;
  const found: Diagnostic[] = facts.hierarchy.map(fact => {
    const [severity, message, hint] = hierarchyText(fact);
    return { code: `gtin-${fact.id}`, severity, message, ...(hint && { hint }), at };
  });
  for (const { element, problem, characters, most } of facts.faults)
    found.push({
      code: 'element-string',
      severity: 'error',
      message: faultText(element, problem, characters, most),
      cite: 'GS1 General Specifications 3.2',
    });
  if (facts.dates === 'use-by-before-made')
    found.push({ code: 'dates', severity: 'error', message: 'the product expires before it is made' });
  for (const gap of facts.mass.missing) {
    const [what, hint] = GAPS[gap];
    found.push({
      code: 'gross-mass',
      severity: 'warning',
      message: `${what} is not known: no gross mass is printed; the case weighs ${bothMasses(facts.mass.atLeast)} or more`,
      hint,
      at,
    });
  }
  found.push(...limitedQuantityFindings(facts, at), ...palletFindings(facts.load, facts.otherLayer));
  return found;
}

function limitedQuantityFindings({ limitedQuantity, mass }: CaseFacts, at: Pack['at']): Diagnostic[] {
  if (!limitedQuantity) return [];
  const { mark, gross, grossLimit } = limitedQuantity;
  const found: Diagnostic[] = [];
  if (limitedQuantity.arrows === 'due')
    found.push({
      code: 'orientation',
      severity: 'warning',
      message: `a case of liquids needs orientation arrows on two opposite sides, except ${limitedQuantity.exceptions.map(({ words, cite }) => `${words} (${cite})`).join('; ')}`,
      hint: 'add --arrows',
      cite: '49 CFR 172.312(a)(2)',
      at,
    });
  if (!mark)
    found.push({
      code: 'limited-quantity-mark',
      severity: 'error',
      message: 'no side of the case takes the mark of a limited quantity at its least size',
      cite: '49 CFR 172.315(a)(2)',
      at,
    });
  else if (mark.because === 'no-side-takes-it')
    found.push({
      code: 'limited-quantity-mark',
      severity: 'warning',
      message: `the mark is reduced to sides of ${plain(mark.side)} mm, since no side of the case takes it in full`,
      cite: mark.cite,
      at,
    });
  if (gross === 'above')
    found.push({
      code: 'limited-quantity-gross',
      severity: 'error',
      message: `the case weighs ${bothMasses(mass.atLeast)} or more; a package of limited quantities may weigh ${plain(grossLimit.kilograms)} kg`,
      cite: grossLimit.cite,
      at,
    });
  if (gross === 'unknown')
    found.push({
      code: 'limited-quantity-gross',
      severity: 'warning',
      message: `whether the case stays within ${plain(grossLimit.kilograms)} kg is not known`,
      cite: grossLimit.cite,
      at,
    });
  return found;
}

function palletFindings(load: PalletLoad | null, otherLayer: number | null): Diagnostic[] {
  if (!load) return [];
  if (otherLayer !== null)
    return [
      ...palletFindings(load, null),
      {
        code: 'pallet-layer',
        severity: 'warning',
        message: `the record has ${otherLayer} cases in a layer, and ${load.perLayer} were found to fit upright without overhang`,
      },
    ];
  if (load.cases === 0)
    return [
      {
        code: 'pallet',
        severity: 'error',
        message:
          load.limitedBy === 'too-large'
            ? `the case is larger than a pallet of ${load.pallet.name}`
            : `not one layer goes on a pallet of ${load.pallet.name}`,
      },
    ];
  if (load.mass === null)
    return [
      {
        code: 'pallet',
        severity: 'warning',
        message: `the safe load of ${counted(load.pallet.load)} kg is not watched, since the gross mass of a case is not known`,
      },
    ];
  return [];
}

function faultText({ ai, value }: ElementString, problem: string, characters: string, most: number): string {
  switch (problem) {
    case 'characters':
      return `(${ai}) ${value} has characters that no bar code may carry here: ${[...characters].map(each => `“${each}”`).join(', ')}`;
    case 'check-digit':
      return `(${ai}) ${value} has a wrong check digit`;
    case 'date':
      return `(${ai}) ${value} is no date`;
    default:
      return `(${ai}) ${value} has ${value.length} characters; it takes ${most === 18 || most === 14 ? most : `1 to ${most}`}`;
  }
}
