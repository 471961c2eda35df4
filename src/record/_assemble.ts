import type { Measure } from '../quantity/measure.ts';
import type { Position } from '../report/diagnostic.ts';
import {
  reactionsOf,
  reviewsOf,
  sheetIngredientsOf,
  sheetOf,
  statementsOf,
  translationsOf,
} from './_assemble-blocks.ts';
import { packOf } from './_assemble-pack.ts';
import { batchSize, formulaLines } from './_lines.ts';
import type { Materials } from './_materials.ts';
import type { MeasuredInput } from './_measured.ts';
import { resolvePath } from './_read-file.ts';
import type { MakerInput } from './maker-schema.ts';
import { type Path, type Places, pathText } from './places.ts';
import type { Copy, Evidence, Maker, Measured, ProductRecord, Properties } from './product-record.ts';
import type { ProductInput } from './product-schema.ts';
import { type BoundedMeasure, sheetPropertyKeys } from './properties-schema.ts';
import type { SoldTo, Voc } from './record-blocks.ts';

/** The record in fixed units, once all of it is valid. */
export function productRecord(
  input: ProductInput,
  raw: unknown,
  maker: Maker | null,
  places: Places,
  materials: Materials,
): ProductRecord {
  return {
    file: places.file,
    name: input.name,
    code: input.code,
    ufi: input.ufi ?? null,
    use: input.use ?? null,
    advisedAgainst: input['advised-against'] ?? [],
    form: input.form,
    appearance: {
      color: input.appearance?.color ?? null,
      odor: input.appearance?.odor ?? null,
      physicalState: input.appearance?.['physical-state'] ?? null,
    },
    maker,
    properties: propertiesOf(input.properties ?? {}),
    formula: formulaLines(input.formula, places, ['formula'], materials),
    batch: batchSize(input.batch),
    evidence: (input.evidence ?? []).map((entry, index) => evidenceOf(entry, places.at(['evidence', index]))),
    choices: (input.choices ?? []).map((choice, index) => ({ ...choice, at: places.at(['choices', index]) })),
    packs: (input.packs ?? []).map((pack, index) => packOf(pack, places, ['packs', index])),
    copy: { ...copyOf(input.copy, places), at: wordPlaces(input, places) },
    sheet: sheetOf(input.sds, 'text'),
    sheetSearched: sheetOf(input.sds, 'searched'),
    ...(input.sds && { sheetAt: sheetPlaces(input.sds, places) }),
    sheetIngredients: sheetIngredientsOf(input.sds, places),
    soldTo: (input['sold-to'] as SoldTo | undefined) ?? null,
    voc: input.voc
      ? { category: input.voc.category ?? null, counted: (input.voc.counted ?? []) as Voc['counted'] }
      : null,
    statements: statementsOf(input.statements, places),
    reacts: reactionsOf(input.reacts, places),
    reviews: reviewsOf(input.review),
    revision: input.revision ?? null,
    revised: input.revised ?? null,
    ...(input.language && { language: input.language }),
    ...(input.translations && { translations: translationsOf(input.translations) }),
    revisions: (input.revisions ?? []).map(({ changes, ...each }) => ({ ...each, changes: changes ?? null })),
    raw,
  };
}

/** Where each text of `sds:` stands. */
function sheetPlaces(sds: ProductInput['sds'], places: Places): ProductRecord['sheetAt'] {
  const keys = Object.keys({ ...sheetOf(sds, 'text'), ...sheetOf(sds, 'searched') });
  return Object.fromEntries(keys.map(key => [key, places.at(['sds', ...key.split('.')])]));
}

/** @param file in which the maker is written, from where the path of its logo starts. */
export const makerOf = (
  { name, address, telephone, emergency, email, website, brand, press, 'eu-supplier': supplier }: MakerInput,
  file: string,
): Maker => ({
  name,
  address,
  telephone,
  emergency,
  email: email ?? null,
  website: website ?? null,
  euSupplier: supplier
    ? {
        ...supplier,
        role: supplier.role ?? null,
        email: supplier.email ?? null,
        emergency: (supplier.emergency ?? []).map(each => ({ ...each, country: each.country ?? null })),
      }
    : null,
  press: press
    ? {
        dieInk: press['die-ink'] ?? null,
        cut: press.cut ?? null,
        barWidthReduction: press['bar-width-reduction'] ?? null,
        safe: press.safe ?? null,
        bleed: press.bleed ?? null,
      }
    : null,
  brand: brand
    ? {
        color: brand.color ?? null,
        logo: brand.logo === undefined ? null : resolvePath(brand.logo, file),
        logoWidth: brand['logo-width'] ?? null,
        file,
      }
    : null,
});

/** Places of the words of texts that the maker writes for the label. */
function wordPlaces({ name, use, copy }: ProductInput, places: Places): Copy['at'] {
  const texts: readonly (readonly [Path, string | undefined])[] = [
    [['name'], name],
    [['use'], use],
    [['copy', 'tagline'], copy?.tagline],
    ...(copy?.directions ?? []).map((text, index) => [['copy', 'directions', index], text] as const),
    [['copy', 'origin'], copy?.origin],
    [['copy', 'note'], copy?.note],
  ];
  return Object.fromEntries(
    texts.flatMap(([path, text]) => (text ? [[pathText(path), places.words(path, text)] as const] : [])),
  );
}

const copyOf = (copy: ProductInput['copy'], places: Places): Copy => ({
  tagline: copy?.tagline ?? null,
  directions: copy?.directions ?? [],
  origin: copy?.origin ?? null,
  note: copy?.note ?? null,
  artwork: copy?.artwork
    ? {
        file: resolvePath(copy.artwork.file, places.file) ?? copy.artwork.file,
        page: copy.artwork.page ?? null,
        pack: copy.artwork.pack ?? null,
        purposes: copy.artwork.for ?? null,
        areas: copy.artwork.areas.map(area => ({ ...area, ground: area.ground ?? 'white' })),
        at: places.at(['copy', 'artwork', 'file']),
      }
    : null,
});

function propertiesOf(input: NonNullable<ProductInput['properties']>): Properties {
  const base = (measured: MeasuredInput<Measure | BoundedMeasure> | undefined) =>
    measured && {
      ...measured,
      value: measured.value.base,
      written: measured.value.written,
      ...('bound' in measured.value && { bound: measured.value.bound }),
    };
  const { pH, density } = input;
  const flashPoint = input['flash-point'];
  const other: Record<string, Measured<string>> = {};
  for (const key of sheetPropertyKeys) {
    const property = input[key];
    if (property) other[key] = { ...property, written: property.value };
  }
  return {
    ...(pH && { pH: { ...pH, value: pH.value.value, written: pH.value.written } }),
    ...(density && { density: base(density) }),
    ...(flashPoint && {
      flashPoint: {
        ...flashPoint,
        value: flashPoint.value.flashPoint,
        written: flashPoint.value.written,
        ...(flashPoint.value.bound && { bound: flashPoint.value.bound }),
      },
    }),
    ...(input['initial-boiling-point'] && { initialBoilingPoint: base(input['initial-boiling-point']) }),
    ...(input['kinematic-viscosity-40C'] && {
      kinematicViscosity40C: base(input['kinematic-viscosity-40C']),
    }),
    other,
  };
}

const evidenceOf = (entry: NonNullable<ProductInput['evidence']>[number], at: Position): Evidence => ({
  hazardClass: entry.class,
  route: entry.route ?? entry.result.hazard?.route ?? null,
  hazard: entry.result.hazard,
  kind: entry.kind,
  principle: entry.principle ?? null,
  method: entry.method,
  source: entry.source,
  reason: entry.reason ?? null,
  at,
});
