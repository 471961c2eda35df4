import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import { effectOf, listedClass } from '../../notation/listed-class.ts';
import type { ClassResult } from '../context.ts';
import type { Because } from '../facts/because.ts';
import type { Provision } from '../facts/provision.ts';
import type { Needed, Warning } from '../facts/warning.ts';
import type { Ingredient } from '../ingredient.ts';

interface Pointer {
  /** Ingredients that the rule itself names for the class. */
  readonly named: readonly number[];
  readonly needs: Needed;
  readonly lacking?: readonly number[];
}

const places = (list: readonly { readonly constituent: number }[]): number[] =>
  list.map(({ constituent }) => constituent);

/** What a rule that could not decide says of the ingredients, and what would decide it. */
function pointerOf(because: Because): Pointer {
  const { lacking } = because;
  switch (because.kind) {
    case 'flash-point':
      return { named: because.flammable ?? [], needs: 'flash-point' };
    case 'signs':
      return {
        named: because.signs.flatMap(sign => (sign.kind === 'ingredient' ? [sign.constituent] : [])),
        needs: 'test',
      };
    case 'peroxide-data':
      return { named: places(because.peroxides), needs: 'test' };
    case 'aerosol':
      return { named: places(because.terms), needs: 'test' };
    case 'additivity':
    case 'shared-category':
      return { named: places(because.terms), needs: 'data', lacking: places(because.unknown) };
    case 'nothing-counts':
      return { named: [], needs: 'data', lacking: places(because.unknown) };
    case 'ratios':
      return { named: places(because.terms), needs: 'data', lacking: lacking ?? [] };
    case 'sum':
      return because.viscosity
        ? { named: places(because.terms), needs: 'viscosity' }
        : { named: places(because.terms), needs: 'data', lacking: lacking ?? [] };
    case 'ingredients':
      return { named: places(because.comparisons), needs: 'data', lacking: lacking ?? [] };
    default:
      return lacking ? { named: [], needs: 'data', lacking } : { named: [], needs: 'test' };
  }
}

/** Whether an ingredient has a hazard of the class of a result, however little of it there is. */
function isOf({ data: { hazards } }: Ingredient, { class: name, route }: ClassResult): boolean {
  const wanted = effectOf(name);
  return hazards.some(hazard => {
    if (wanted) return hazard.code === 'STOT SE 3' && (hazard.effect ?? wanted) === wanted;
    if (name === 'STOT SE' && hazard.category === '3') return false;
    if (route && (hazard.route ?? route) !== route) return false;
    return listedClass(hazard.hazardClass) === name;
  });
}

/** Whether an ingredient burns, or nearly always does, where the flash point of the product is missing. */
const burns = ({ data: { hazards } }: Ingredient): boolean =>
  hazards.some(({ hazardClass }) => doubts.flashPoint.missing.classes.includes(hazardClass));

/** Adds what a list has not got yet. */
function join<T>(list: T[], more: readonly T[], isSame = (a: T, b: T): boolean => a === b): void {
  for (const each of more) if (!list.some(known => isSame(known, each))) list.push(each);
}

const isSameParagraph = (a: Provision, b: Provision): boolean => a.paragraph === b.paragraph;

/** What the classes that wait for the same have come to. */
interface Open {
  readonly classes: string[];
  readonly constituents: number[];
  readonly lacking: number[];
  readonly cites: Provision[];
}

/**
 * Classes left open although an ingredient has the hazard or a neighbouring one: silence would read as harmless (29 CFR
 * 1910.1200(d)(2); CLP Article 5). One warning for all classes that wait for the same.
 * @param ingredients at the upper ends of ranges.
 */
export function undecidedWithCause(
  results: readonly ClassResult[],
  ingredients: readonly Ingredient[],
): Warning[] {
  const open = new Map<Needed, Open>();
  const held = new Set<string>();
  for (const { data } of ingredients)
    for (const { hazardClass } of data.hazards) held.add(listedClass(hazardClass));
  for (const result of results) {
    const { class: name, route, outcome, because } = result;
    if (outcome !== 'insufficient-data') continue;
    const isHeld = held.has(effectOf(name) ? 'STOT SE' : name);
    // Most of the classes that wait for a test.
    if (!isHeld && because.kind === 'signs' && because.signs.length === 0) continue;
    const { named, needs, lacking } = pointerOf(because);
    if (!isHeld && needs !== 'flash-point' && named.length === 0) continue;
    const constituents: number[] = [];
    join(constituents, named);
    if (isHeld || needs === 'flash-point')
      for (const each of ingredients) {
        if (each.percent.value === 0 || constituents.includes(each.index)) continue;
        if (isOf(each, result) || (needs === 'flash-point' && burns(each))) constituents.push(each.index);
      }
    if (constituents.length === 0) continue;
    let known = open.get(needs);
    if (!known) {
      known = { classes: [], constituents: [], lacking: [], cites: [] };
      open.set(needs, known);
    }
    join(known.classes, [route ? `${name} (${route})` : name]);
    join(known.constituents, constituents);
    if (lacking) join(known.lacking, lacking);
    join<Provision>(known.cites, because.cites, isSameParagraph);
  }
  const warnings: Warning[] = [];
  for (const [needs, { classes, constituents, lacking, cites }] of open)
    warnings.push({ id: 'undecided-with-cause', needs, classes, constituents, lacking, cites });
  return warnings;
}
