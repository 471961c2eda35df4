import type { LabelModel } from '../../document/label.ts';
import type { Millimetres } from '../../quantity/length.ts';
import { type LengthUnit, lengthText, sizeText } from '../../quantity/length-text.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { taperOf } from '../die/taper.ts';
import { type Die, leastXHeight, type Stock } from '../stock.ts';
import type { Remedies } from './remedies.ts';

/** Room on the container for a label: once round a cylinder, and the height of its straight panel. */
export interface ContainerRoom {
  readonly width: Millimetres | null;
  readonly height: Millimetres | null;
}

export const containerRoom = ({ container }: LabelModel): ContainerRoom => ({
  width:
    container?.shape === 'cylinder' && container.diameter !== null
      ? Math.floor(Math.min(container.diameter, container.diameterAtTop ?? container.diameter) * Math.PI)
      : null,
  height: container?.labelPanelHeight ?? null,
});

/** Refuses a straight label on a container that tapers too much for it; null where it sits. */
export function tapersTooMuch(
  { container }: LabelModel,
  { die, profile, unit = 'mm' }: Stock,
): Diagnostic | null {
  const { diameter: foot, diameterAtTop: top, labelPanelHeight: height } = container ?? {};
  if (!foot || !top || !height) return null;
  const found = taperOf({ foot, top, height }, die);
  const { most, source } = profile.taper;
  if (!found || found.difference <= most) return null;
  const text = (length: Millimetres) => lengthText(length, unit);
  const { outer, inner, degrees } = found.arc;
  const share = most / found.difference;
  const down = (length: Millimetres) => text(Math.floor(length * share));
  return {
    code: 'container-tapers',
    severity: 'error',
    message: `the container tapers from ${text(foot)} to ${text(top)} over ${text(height)}: one edge of a straight label of ${sizeText(die.width, die.height, unit)} would lie in folds of ${text(found.difference)} (${text(most)} are possible)`,
    hint: `take a label of at most ${down(die.width)} of width at this height, or one of ${down(die.height)} of height at this width; a label of this size that lies flat is a segment of a ring, with an outer radius of ${text(outer)}, an inner one of ${text(inner)} and ${degrees.toFixed(1)} degrees, which is not laid out here`,
    path: 'label',
    cite: source,
  };
}

/** Says by how much the label is too small and which larger one would do. */
export function tooSmall(model: LabelModel, stock: Stock, found: Remedies): Diagnostic {
  const { die, profile, unit = 'mm', isArea = false } = stock;
  const asked = sizeText(die.width, die.height, unit);
  const what = isArea ? 'the area for the regulated text in the artwork,' : 'a label of';
  const letters = Number(leastXHeight(stock).toFixed(2));
  const pictograms = model.type?.bordered ? '' : `, pictograms of ${profile.pictogram.minimumSide} mm a side`;
  const { leastSides } = stock;
  const label = leastSides ? `, a label of ${sizeText(leastSides[0], leastSides[1], unit)}` : '';
  const sizes = `letters of ${letters} mm x-height${pictograms}${label}`;
  return {
    code: 'label-too-small',
    severity: 'error',
    message: `${what} ${asked}${isArea ? ',' : ''} does not hold its text at the least sizes (${sizes})${shortage(die, found, unit)}`,
    hint: advice(die, found, containerRoom(model), unit),
    path: isArea ? 'copy.artwork.areas' : 'label',
    cite: model.type?.cite ?? '29 CFR 1910.1200(f)(1)-(2)',
  };
}

function shortage(die: Die, { height, width }: Remedies, unit: LengthUnit): string {
  const parts: string[] = [];
  if (height !== null) parts.push(`${lengthText(height - die.height, unit)} of height at this width`);
  if (width !== null) parts.push(`${lengthText(width - die.width, unit)} of width at this height`);
  const areas = [height && height * die.width, width && width * die.height].filter(area => area !== null);
  const more = areas.length > 0 ? Math.min(...areas) / (die.width * die.height) - 1 : null;
  if (more !== null) parts.push(`at least ${Math.ceil(more * 100)} % of area`);
  return parts.length > 0 ? `: it lacks ${parts.join(', or ')}` : '';
}

function advice(
  die: Die,
  { height, width, panels, both }: Remedies,
  room: ContainerRoom,
  unit: LengthUnit,
): string {
  const beyond = (size: Millimetres, most: Millimetres | null, what: string): string =>
    most !== null && size > most ? ` (more than the ${what} of ${lengthText(most, unit)})` : '';
  const options: string[] = [];
  if (height !== null)
    options.push(`${sizeText(die.width, height, unit)}${beyond(height, room.height, 'label panel')}`);
  if (width !== null)
    options.push(`${sizeText(width, die.height, unit)}${beyond(width, room.width, 'circumference')}`);
  if (both !== null) options.push(sizeText(both.width, both.height, unit));
  if (panels !== null)
    options.push(`a fold-out of ${panels} panels of ${sizeText(die.width, die.height, unit)}`);
  return options.length > 0
    ? `would hold it: ${options.join('; ')}`
    : 'shorten the text or take a much larger label';
}
