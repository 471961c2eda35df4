import { childResistant, type PackagedProduct, type PackagingFinding } from '../duties/child-resistant.ts';
import type { Duty, DutyState } from '../duties/duty.ts';
import { stateVoc } from '../duties/state-voc.ts';
import { type CountedAs, type VocProduct, volatileContent } from '../duties/voc.ts';
import { Exact } from '../quantity/exact.ts';
import { readMeasure } from '../quantity/measure.ts';
import { completeRecord } from '../record/complete.ts';
import type { Pack } from '../record/product-record.ts';
import type { Voc } from '../record/record-blocks.ts';
import { childResistantRules } from '../reference/duties/child-resistant-data.ts';
import { stateVocLimits } from '../reference/duties/state-voc-data.ts';
import { vocData } from '../reference/duties/voc-data.ts';
import { basicDescription } from '../transport/answer.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { draftTransport } from './draft-transport.ts';
import { regulatoryTable } from './open-reference.ts';

/** Duties around the label, as far as composition, packs and record decide them; claims have findings of their own. */
export const dutiesOf = (product: ClassifiedProduct): readonly Duty[] => [
  ...packagingDuties(product),
  ...vocDuties(product),
  ...stateDuties(product),
  ...listingDuties(product),
];

const household = ({ record: { soldTo } }: ClassifiedProduct): boolean | null =>
  soldTo === null ? null : soldTo.users.includes('consumers') && soldTo.markets.includes('us');

function packagingDuties(product: ClassifiedProduct): Duty[] {
  const { record } = product;
  const cite = '16 CFR 1700.14(a)';
  const sold = household(product);
  const rules = childResistantRules();
  const found = record.packs.flatMap((pack): Duty[] => {
    const packaging = pack.container?.childResistant ?? null;
    const all = childResistant(packaged(product, pack), rules);
    const named = all.filter(({ outcome, terms }) => outcome !== 'not-required' && terms.length > 0);
    const unknown = all.filter(({ outcome, terms }) => outcome === 'open' && terms.length === 0);
    const names = unnamed(product).filter(name => unknown.some(({ missing }) => missing.includes(name)));
    const shared = { pack: pack.id, packaging };
    const state = (outcome: PackagingFinding['outcome']): DutyState =>
      packaging === true ? 'met' : outcome === 'open' || sold === null ? 'open' : 'due';
    return [
      ...named.map(
        (finding): Duty => ({
          id: 'child-resistant',
          ...shared,
          state: state(finding.outcome),
          cite: finding.cite,
          finding,
        }),
      ),
      ...(unknown.length > 0
        ? [
            {
              id: 'child-resistant-unknown' as const,
              ...shared,
              state: state('open'),
              cite: [...new Set(unknown.map(each => each.cite))].join('; '),
              names,
              rules: unknown.length,
            },
          ]
        : []),
    ];
  });
  if (found.length > 0) return found;
  return [{ id: 'child-resistant-none', state: 'free', cite, household: sold }];
}

const unnamed = ({ formula }: ClassifiedProduct): readonly string[] =>
  formula.constituents.filter(({ cas, water }) => cas === null && !water).map(({ name }) => name);

function packaged(product: ClassifiedProduct, { contents }: Pack): PackagedProduct {
  const { record, formula } = product;
  const { density, kinematicViscosity40C } = record.properties;
  const read = readMeasure(contents.written, 'mass', 'volume');
  const grams = !read.ok
    ? null
    : read.value.kind === 'mass'
      ? read.value.base.value
      : density
        ? read.value.base.value * density.value.value
        : null;
  return {
    form: record.form,
    constituents: formula.constituents,
    viscosity: kinematicViscosity40C?.value ?? null,
    density: density?.value ?? null,
    grams,
    household: household(product),
  };
}

const countedAs: Readonly<Record<Voc['counted'][number]['as'], CountedAs>> = {
  voc: 'voc',
  'low-vapor-pressure': 'low',
  exempt: 'exempt',
  'not-organic': 'none',
  fragrance: 'fragrance',
};

const same = (written: string, name: string, cas: string | null): boolean =>
  written === cas || written.trim().toLowerCase() === name.trim().toLowerCase();

function vocDuties(product: ClassifiedProduct): Duty[] {
  const { record, formula } = product;
  const counted = record.voc?.counted ?? [];
  const sold: VocProduct = {
    constituents: formula.constituents.map(({ name, cas, water }) => {
      const stated = counted.find(({ of }) => same(of, name, cas));
      return { name, cas, water, stated: stated ? countedAs[stated.as] : null };
    }),
    most: weights => formula.most(weights),
    category: record.voc?.category ?? null,
    aerosol: record.form === 'aerosol',
    consumer: household(product),
    dilutions: leastDilutions(record.packs),
  };
  const finding = volatileContent(sold, vocData);
  if (!finding) return [{ id: 'voc-none', state: 'free', cite: '40 CFR 59.202' }];
  const state = {
    within: 'met',
    above: 'due',
    open: 'open',
    'no-category': finding.atMost > 0 ? 'open' : 'free',
    'no-limit': 'free',
  } as const;
  return [
    {
      id: 'voc',
      state: state[finding.outcome],
      cite: vocData.cites.rules,
      finding,
      tableSource: vocData.tableSource,
    },
    ...stateVocDuties(product, sold),
  ];
}

/** VOC limits of the states that the record names. */
function stateVocDuties({ record }: ClassifiedProduct, sold: VocProduct): Duty[] {
  const states = record.soldTo?.states ?? [];
  const state = {
    within: 'met',
    above: 'due',
    open: 'open',
    'not-held': 'open',
    'no-category': 'open',
    'none-fits': 'free',
  } as const;
  return states.flatMap((each): Duty[] => {
    const finding = stateVoc(each, stateVocLimits(each), sold, vocData);
    return finding ? [{ id: 'voc-state', state: state[finding.outcome], cite: finding.cite, finding }] : [];
  });
}

/** Use solutions of all packs; none where a pack is used as it is. */
function leastDilutions(packs: readonly Pack[]) {
  if (packs.length === 0 || packs.some(({ dilutions = [] }) => dilutions.length === 0)) return [];
  return packs.flatMap(({ dilutions = [] }) =>
    dilutions.map(({ product, diluent, written }) => ({
      written,
      share: Exact.fraction(product.exact.div(product.exact.add(diluent.exact))),
    })),
  );
}

function stateDuties(product: ClassifiedProduct): Duty[] {
  const { record, formula } = product;
  const { prop65 } = regulatoryTable();
  const cite = 'California Health and Safety Code 25249.6';
  const found = formula.constituents.flatMap(({ name, cas, high }) =>
    prop65({ name, cas, form: record.form }).found.map(
      (each): Duty => ({ id: 'state-warning', state: 'open', cite, name, percent: high.value, found: each }),
    ),
  );
  const unknown = unnamed(product);
  if (found.length > 0 && unknown.length === 0) return found;
  const sought = formula.constituents.length - unknown.length;
  const state = unknown.length > 0 ? 'open' : 'free';
  return [...found, { id: 'state-warning-none', state, cite, sought, found: found.length, unknown }];
}

function listingDuties(product: ClassifiedProduct): Duty[] {
  const { record } = product;
  const [first = null] = record.packs;
  const answer = draftTransport(product, first);
  const item = (
    of: Extract<Duty, { id: 'listing' }>['item'],
    value: string | null,
    cite: string | null,
    pack: string | null = null,
  ): Duty => ({ id: 'listing', state: value === null ? 'due' : 'met', cite, item: of, pack, value });
  const complete = completeRecord(record).ok;
  const transport =
    answer.answer === 'undecided'
      ? null
      : (basicDescription(answer, answer.reportable) ?? answer.answer.replace('-', ' '));
  return [
    item('sheet', complete ? 'sds.pdf' : null, '29 CFR 1910.1200(g)'),
    item('sheet-date', record.revised, '29 CFR 1910.1200 App. D, section 16'),
    item('transport', transport, '49 CFR 172.202'),
    ...(record.form === 'gas'
      ? []
      : [item('flash-point', record.properties.flashPoint?.written ?? null, null)]),
    ...record.packs.flatMap(pack => [
      item('net-contents', pack.contents.written, '16 CFR 500.7', pack.id),
      item('gtin', pack.gtin, null, pack.id),
    ]),
  ];
}
