import type { Millimetres } from '../../quantity/length.ts';
import { panelPart } from '../../reference/consumer/label-type.ts';

/** Sizes of a container; null where they are not known. */
export interface PanelContainer {
  readonly shape: 'cylinder' | 'rectangular' | 'other';
  readonly diameter: Millimetres | null;
  /** Of the straight part: shoulders, necks and flanges are left out. */
  readonly labelPanelHeight: Millimetres | null;
  readonly width?: Millimetres | null;
  readonly depth?: Millimetres | null;
  readonly height?: Millimetres | null;
}

/** The principal display panel of a container. */
export interface DisplayPanel {
  /** Square millimetres. */
  readonly area: number;
  /** Of the side that is seen at once. */
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** The panel, or the keys of the container that are missing to work it out. */
export type PanelFound = { readonly panel: DisplayPanel } | { readonly missing: readonly string[] };

/**
 * The principal display panel (16 CFR 1500.121(c)(1)): 40 percent of height times circumference of a cylinder, one
 * side of a rectangular package, 40 percent of the whole surface of any other shape.
 */
export function displayPanel(container: PanelContainer): PanelFound {
  const { shape, diameter } = container;
  const height = container.labelPanelHeight ?? container.height ?? null;
  const { width = null, depth = null } = container;
  const lacking = (wanted: Readonly<Record<string, number | null>>) => ({
    missing: Object.entries(wanted)
      .filter(([, value]) => value === null)
      .map(([key]) => key),
  });
  if (shape === 'cylinder') {
    if (diameter === null || height === null) return lacking({ diameter, 'label-panel-height': height });
    const front = panelPart * Math.PI * diameter;
    return { panel: { area: front * height, width: front, height } };
  }
  if (shape === 'rectangular') {
    if (width === null || height === null) return lacking({ width, 'label-panel-height': height });
    return { panel: { area: width * height, width, height } };
  }
  if (width === null || depth === null || height === null)
    return lacking({ width, depth, 'label-panel-height': height });
  const surface = 2 * (width * height + depth * height + width * depth);
  return { panel: { area: panelPart * surface, width, height } };
}
