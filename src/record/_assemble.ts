import type { Measure } from '../quantity/measure.ts';
import { inUnit } from '../quantity/measure.ts';
import type { Position } from '../report/diagnostic.ts';
import type { MeasuredInput } from './_leaf.ts';
import { batchSize, formulaLines } from './_lines.ts';
import type { Materials } from './_materials.ts';
import type { MakerInput } from './maker-schema.ts';
import type { Path, Places } from './places.ts';
import type {
  Evidence,
  Maker,
  Measured,
  Pack,
  ProductRecord,
  Properties,
  SheetTexts,
} from './product-record.ts';
import type { ProductInput } from './product-schema.ts';
import { sheetPropertyKeys } from './properties-schema.ts';
import { type SheetKey, sheetKeys } from './sheet-keys.ts';

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
    copy: { tagline: input.copy?.tagline ?? null, directions: input.copy?.directions ?? [] },
    sheet: input.sds ? sheetOf(input.sds) : {},
    revision: input.revision ?? null,
    revised: input.revised ?? null,
    raw,
  };
}

export const makerOf = ({ name, address, telephone, emergency, email, website }: MakerInput): Maker => ({
  name,
  address,
  telephone,
  emergency,
  email: email ?? null,
  website: website ?? null,
});

function propertiesOf(input: NonNullable<ProductInput['properties']>): Properties {
  const base = (measured: MeasuredInput<Measure> | undefined) =>
    measured && { ...measured, value: measured.value.base, written: measured.value.written };
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
      flashPoint: { ...flashPoint, value: flashPoint.value.flashPoint, written: flashPoint.value.written },
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

function packOf(pack: NonNullable<ProductInput['packs']>[number], places: Places, path: Path): Pack {
  const { container, label, roll } = pack;
  return {
    id: pack.id,
    contents: { value: pack.contents.number, unit: pack.contents.unit, written: pack.contents.written },
    gtin: pack.gtin ?? null,
    container: container
      ? {
          shape: container.shape,
          diameter: container.diameter ?? null,
          labelPanelHeight: container['label-panel-height'] ?? null,
          childResistant: container['child-resistant'] ?? null,
        }
      : null,
    label: label
      ? {
          width: label.width.length * (label.panels ?? 1),
          height: label.height.length,
          cornerRadius: label['corner-radius'] ?? 0,
          shape: label.shape ?? 'rectangle',
          overlap: label.overlap ?? 0,
          panels: label.panels ?? 1,
          unit: label.width.unit,
        }
      : null,
    roll: roll
      ? {
          core: roll.core,
          maxDiameter: roll['max-diameter'],
          gap: roll.gap,
          linerAndFace: roll['liner-and-face'],
          unwind: roll.unwind,
        }
      : null,
    case: pack.case
      ? {
          count: pack.case.count,
          gtin: pack.case.gtin ?? null,
          tareKilograms: pack.case.tare ? inUnit(pack.case.tare.base, 'mass', 'kg') : null,
        }
      : null,
    lotWindow: pack['lot-window'] ?? null,
    at: places.at(path),
  };
}

function sheetOf(texts: NonNullable<ProductInput['sds']>): SheetTexts {
  const flat: Partial<Record<SheetKey, string>> = {};
  for (const key of sheetKeys) {
    const [group, member] = key.split('.') as [string, string | undefined];
    const found = texts[group];
    const text = typeof found === 'string' ? found : member === undefined ? undefined : found?.[member];
    if (text !== undefined) flat[key] = text;
  }
  return flat;
}
