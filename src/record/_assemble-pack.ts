import { inUnit } from '../quantity/measure.ts';
import type { Path, Places } from './places.ts';
import type { Pack } from './product-record.ts';
import type { ProductInput } from './product-schema.ts';

/** A pack in fixed units. */
export function packOf(pack: NonNullable<ProductInput['packs']>[number], places: Places, path: Path): Pack {
  const { container, label, roll } = pack;
  return {
    id: pack.id,
    contents: { value: pack.contents.number, unit: pack.contents.unit, written: pack.contents.written },
    gtin: pack.gtin ?? null,
    barCode: pack['bar-code']
      ? {
          symbol: pack['bar-code'].symbol ?? null,
          magnification: pack['bar-code'].magnification ?? null,
          height: pack['bar-code'].height ?? null,
          domain: pack['bar-code'].domain ?? null,
        }
      : null,
    container: container
      ? {
          shape: container.shape,
          diameter: container.diameter ?? null,
          ...(container['diameter-at-top'] !== undefined && { diameterAtTop: container['diameter-at-top'] }),
          labelPanelHeight: container['label-panel-height'] ?? null,
          childResistant: container['child-resistant'] ?? null,
          width: container.width ?? null,
          depth: container.depth ?? null,
          height: container.height ?? null,
          capacityMillilitres: container.capacity?.base ?? null,
          ...(container.tare && { tareKilograms: inUnit(container.tare.base, 'mass', 'kg') }),
          material: container.material ?? null,
          closure: container.closure ?? null,
          tactileWarning: container['tactile-warning'] ?? null,
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
          redFrames: label['red-frames'] ?? [],
          eyeMark: label['eye-mark'] ?? null,
        }
      : null,
    roll: roll
      ? {
          core: roll.core,
          maxDiameter: roll['max-diameter'],
          gap: roll.gap,
          linerAndFace: roll['liner-and-face'],
          unwind: roll.unwind,
          across: roll.across ?? null,
          labels: roll.labels ?? null,
        }
      : null,
    case: pack.case
      ? {
          count: pack.case.count,
          gtin: pack.case.gtin ?? null,
          tareKilograms: pack.case.tare ? inUnit(pack.case.tare.base, 'mass', 'kg') : null,
          length: pack.case.length ?? null,
          width: pack.case.width ?? null,
          height: pack.case.height ?? null,
          perLayer: pack.case['per-layer'] ?? null,
          layers: pack.case.layers ?? null,
          printer: pack.case.printer ?? null,
        }
      : null,
    dilutions: (pack.dilution ?? []).map(({ with: diluent, ratio, use }, index) => ({
      with: diluent ?? 'water',
      ...ratio,
      use: use ?? null,
      at: places.at([...path, 'dilution', index]),
    })),
    lotWindow: pack['lot-window'] ?? null,
    ...(pack['small-container'] && {
      smallContainer: {
        part: pack['small-container'].part,
        reason: pack['small-container'].reason ?? null,
      },
    }),
    ...(pack['eu-small-package'] && { smallPackage: pack['eu-small-package'] }),
    at: places.at(path),
  };
}
