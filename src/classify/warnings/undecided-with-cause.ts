import type { ClassResult } from '../context.ts';
import type { Because } from '../facts/because.ts';
import type { Provision } from '../facts/provision.ts';
import type { Needed, Warning } from '../facts/warning.ts';

interface Cause {
  readonly constituents: readonly number[];
  readonly needs: Needed;
  readonly lacking?: readonly number[];
}

/** Which ingredients have the hazard of a class that stays undecided, and what would decide it; null where none has. */
function causeOf(because: Because): Cause | null {
  if (because.kind === 'flash-point') {
    const found = because.flammable ?? [];
    return found.length > 0 ? { constituents: found, needs: 'flash-point' } : null;
  }
  if (because.kind === 'sum' && because.viscosity)
    return { constituents: because.terms.map(({ constituent }) => constituent), needs: 'viscosity' };
  if (because.kind === 'signs') {
    const found = because.signs.flatMap(sign => (sign.kind === 'ingredient' ? [sign.constituent] : []));
    return found.length > 0 ? { constituents: found, needs: 'test' } : null;
  }
  if (because.kind === 'peroxide-data')
    return { constituents: because.peroxides.map(({ constituent }) => constituent), needs: 'test' };
  const { lacking } = because;
  if (!lacking) return null;
  const named =
    because.kind === 'sum' || because.kind === 'ratios'
      ? because.terms.map(({ constituent }) => constituent)
      : because.kind === 'ingredients'
        ? because.comparisons.map(({ constituent }) => constituent)
        : [];
  return named.length > 0 ? { constituents: named, needs: 'data', lacking } : null;
}

const union = <T>(a: readonly T[], b: readonly T[] = []): T[] => [...new Set([...a, ...b])];

/**
 * Classes left open although an ingredient has the hazard: silence would read as harmless (29 CFR 1910.1200(d)(2); CLP
 * Article 5). One warning for all classes that wait for the same.
 */
export function undecidedWithCause(results: readonly ClassResult[]): Warning[] {
  const open = new Map<Needed, Extract<Warning, { id: 'undecided-with-cause' }>>();
  for (const { class: name, outcome, because } of results) {
    if (outcome !== 'insufficient-data') continue;
    const cause = causeOf(because);
    if (!cause) continue;
    const known = open.get(cause.needs);
    const cites: readonly Provision[] = because.cites;
    open.set(cause.needs, {
      id: 'undecided-with-cause',
      needs: cause.needs,
      classes: union(known?.classes ?? [], [name]),
      constituents: union(known?.constituents ?? [], cause.constituents),
      lacking: union(known?.lacking ?? [], cause.lacking),
      cites: [
        ...(known?.cites ?? []),
        ...cites.filter(cite => !known?.cites.some(({ paragraph }) => paragraph === cite.paragraph)),
      ],
    });
  }
  return [...open.values()];
}
