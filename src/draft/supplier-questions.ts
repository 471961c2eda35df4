import type { Classification, ClassifiedConstituent } from '../classify/classification.ts';
import type { Formula } from '../formula/constituent.ts';
import type { Hazard, Route } from '../notation/hazard.ts';
import type { Endpoint } from '../record/given-data.ts';
import type { AskedSection, SupplierQuestion, Wanted } from '../words/answer-words.ts';

type Question = Pick<SupplierQuestion, 'section' | 'wants'>;

const routeOf: Readonly<Partial<Record<Endpoint, Route>>> = {
  'acute-oral': 'oral',
  'acute-dermal': 'dermal',
  'acute-inhalation': 'inhalation',
};

const codesOf = (hazards: readonly Hazard[]): readonly string[] => [
  ...new Set(hazards.map(({ code }) => code)),
];

const ask = (section: AskedSection, wants: Wanted): Question => ({ section, wants });

function unclassified({ data, cas }: ClassifiedConstituent): Question[] {
  const { hazards, source, noData } = data;
  const unsourced = source.kind === 'record' && source.named === null && hazards.length === 0;
  return [
    ...(noData || unsourced ? [ask(2, { kind: 'classification' })] : []),
    ...(noData && cas === null ? [ask(3, { kind: 'identity' })] : []),
    ...(noData && data.limits.length === 0 ? [ask(3, { kind: 'limits' })] : []),
  ];
}

/** What a hazard leaves open: a least category, organs, the form that is inhaled. */
function unspecific({ data: { hazards, ate } }: ClassifiedConstituent): Question[] {
  const least = hazards.filter(({ minimum }) => minimum);
  const organs = hazards.filter(
    each => /^STOT (SE|RE)$/.test(each.hazardClass) && /^[12]$/.test(each.category) && !each.organs.length,
  );
  const formless = hazards.filter(
    ({ hazardClass, route, form }) => hazardClass === 'Acute Tox.' && route === 'inhalation' && !form,
  );
  const estimated = ate.gas || ate.vapour || ate.mist;
  return [
    ...(least.length > 0 ? [ask(2, { kind: 'minimum', codes: codesOf(least) })] : []),
    ...(organs.length > 0 ? [ask(2, { kind: 'organs', codes: codesOf(organs) })] : []),
    ...(formless.length > 0 && !estimated
      ? [ask(11, { kind: 'inhalation-form', codes: codesOf(formless) })]
      : []),
  ];
}

const routes = ['oral', 'dermal', 'inhalation'] as const;

/** Routes by which the additivity formula lacks a constituent, also where a reading makes it unknown. */
function lackedRoutes({ hazards, otherClasses }: Classification, constituent: number): ReadonlySet<Route> {
  const found = [...hazards, ...otherClasses].flatMap(({ because }) =>
    'unknown' in because && because.unknown.some(term => term.constituent === constituent)
      ? [because.key === 'oral' || because.key === 'dermal' ? because.key : ('inhalation' as const)]
      : [],
  );
  return new Set(found);
}

function unknown(classification: Classification, index: number): Question[] {
  const { data } = classification.constituents[index]!;
  const aquatic = classification.unknownAquatic !== null;
  const lacked = new Set([
    ...[...data.unknown].flatMap(endpoint => routeOf[endpoint] ?? []),
    ...lackedRoutes(classification, index),
  ]);
  const factors = (['acute', 'chronic'] as const).filter(
    kind =>
      !data.mFactors.given.has(kind) &&
      data.hazards.some(({ code }) => code === (kind === 'acute' ? 'Aquatic Acute 1' : 'Aquatic Chronic 1')),
  );
  return [
    ...(lacked.size > 0
      ? [ask(11, { kind: 'acute', routes: routes.filter(route => lacked.has(route)) })]
      : []),
    ...(aquatic && data.unknown.has('aquatic') ? [ask(12, { kind: 'aquatic' })] : []),
    ...(aquatic && factors.length > 0 ? [ask(12, { kind: 'm-factor', of: factors })] : []),
  ];
}

interface Property {
  readonly wants: Wanted;
  /** Those whose hazard makes it decide. */
  readonly constituents: readonly number[];
}

/** Properties of the product that decide a class and are not given. */
function unmeasured({ otherClasses, warnings }: Classification): Property[] {
  const open = otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  return [
    ...open.flatMap(({ because }): Property[] => {
      if (because.kind === 'flash-point' && because.found === 'missing')
        return [{ wants: { kind: 'flash-point' }, constituents: because.flammable ?? [] }];
      if (because.kind === 'sum' && because.viscosity?.measured === null)
        return [
          {
            wants: { kind: 'viscosity' },
            constituents: because.terms.map(({ constituent }) => constituent),
          },
        ];
      return [];
    }),
    ...warnings.flatMap((warning): Property[] => {
      if (warning.id === 'boiling-point-missing')
        return [{ wants: { kind: 'boiling-point' }, constituents: [] }];
      if (warning.id !== 'ph-missing') return [];
      return [
        { wants: { kind: 'pH' }, constituents: warning.constituents.map(({ constituent }) => constituent) },
      ];
    }),
  ];
}

/** Constituents without the data for available oxygen. */
const withoutPeroxygen = ({ otherClasses }: Classification): ReadonlySet<number> =>
  new Set(otherClasses.flatMap(({ because }) => (because.kind === 'peroxide-data' ? because.without : [])));

/**
 * What a classification lacks, as questions by raw material and section of the supplier's data sheet (sections of 29 CFR
 * 1910.1200 App. D, Table D.1; REACH Annex II). Questions of one raw material stand together, sections in order; last
 * what is to be measured on the product, which no supplier can tell.
 * @param formula says through which raw materials a constituent came; without it, each stands for itself.
 */
export function supplierQuestions(
  classification: Classification,
  formula: Pick<Formula, 'constituents'> | null,
): readonly SupplierQuestion[] {
  const properties = unmeasured(classification);
  const peroxides = withoutPeroxygen(classification);
  const groups = new Map<string, SupplierQuestion[]>();
  classification.constituents.forEach((constituent, index) => {
    const { via: through = [], undisclosed = false } = formula?.constituents[index] ?? {};
    const questions = [
      ...unclassified(constituent),
      ...unspecific(constituent),
      ...(undisclosed ? [ask(3, { kind: 'composition' })] : []),
      ...(peroxides.has(index) ? [ask(3, { kind: 'peroxygen' })] : []),
      ...properties
        .filter(({ constituents }) => constituents.includes(index))
        .map(({ wants }) => ask(9, wants)),
      ...unknown(classification, index),
    ].map(each => ({ through, constituent: index, ...each }));
    const key = JSON.stringify(through.length > 0 ? through : index);
    groups.set(key, [...(groups.get(key) ?? []), ...questions]);
  });
  return [
    ...[...groups.values()].flatMap(group => group.sort((one, other) => one.section - other.section)),
    ...properties.map(({ wants }) => ({ through: [], constituent: null, section: 9 as const, wants })),
  ];
}
