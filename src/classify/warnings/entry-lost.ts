import type { Hazard } from '../../notation/hazard.ts';
import type { AteValues, MultiplicationFactors, SpecificLimit } from '../../notation/limit.ts';
import { family, milderThan } from '../../notation/severity.ts';
import type { GivenData } from '../../record/given-data.ts';
import type { HarmonisedEntry } from '../../reference/harmonised/entry.ts';
import type { LostData } from '../facts/warning-entry.ts';

type AteKey = keyof AteValues;

/**
 * What of a harmonised entry is lost where the hazards of the record replace it: hazards, their letters, organs and
 * routes, limits, estimates, factors and EUH codes. Null where the record says at least as much.
 */
export function lostOf(
  given: GivenData,
  hazards: readonly Hazard[],
  entry: HarmonisedEntry,
): LostData | null {
  const milder = milderThan(hazards, entry.hazards);
  const lost: LostData = {
    hazards: milder,
    details: entry.hazards.filter(theirs => !milder.includes(theirs) && saysMore(theirs, hazards)),
    limits: entry.limits.filter(theirs => !(given.limits ?? []).some(ours => covers(ours, theirs))),
    ate: lostEstimates(given.ate ?? {}, entry.ate),
    mFactors: lostFactors(given.mFactors ?? {}, entry.mFactors),
    supplemental: entry.supplemental,
    supplementalLimits: entry.supplementalLimits.filter(
      ({ statement }) => !entry.supplemental.includes(statement),
    ),
  };
  const { mFactors, ...lists } = lost;
  const any = Object.values(lists).some(list => list.length > 0) || Object.keys(mFactors).length > 0;
  return any ? lost : null;
}

/**
 * What the values that a record adds to an entry take from it: estimates above and M-factors below its own. Null where
 * they take nothing; limits are held beside those of the entry.
 */
export function lostByValues({ ate, mFactors }: GivenData, entry: HarmonisedEntry): LostData | null {
  const given = Object.keys(ate ?? {});
  const estimates = lostEstimates(ate ?? {}, entry.ate).filter(({ key }) => given.includes(key));
  const all = lostFactors(mFactors ?? {}, entry.mFactors);
  const factors = {
    ...(mFactors?.acute !== undefined && all.acute !== undefined && { acute: all.acute }),
    ...(mFactors?.chronic !== undefined && all.chronic !== undefined && { chronic: all.chronic }),
  };
  if (estimates.length === 0 && Object.keys(factors).length === 0) return null;
  return {
    hazards: [],
    details: [],
    limits: [],
    ate: estimates,
    mFactors: factors,
    supplemental: [],
    supplementalLimits: [],
  };
}

/** Whether a hazard names letters, organs or a wider route that those of the record of the same class do not. */
function saysMore(theirs: Hazard, own: readonly Hazard[]): boolean {
  const same = own.filter(ours => family(ours) === family(theirs));
  const letters = lettersOf(theirs);
  const organs = new Set(same.flatMap(ours => ours.organs));
  const narrower =
    theirs.hazardClass.startsWith('STOT') &&
    theirs.route === null &&
    same.every(({ route }) => route !== null);
  // H350 and H360 without letters hold every route and effect.
  const lettered =
    letters === '' && /^(?:Carc|Repr)/.test(theirs.hazardClass) && same.every(ours => lettersOf(ours) !== '');
  return (
    narrower ||
    lettered ||
    (letters !== '' && !same.some(ours => hasLetters(ours, letters))) ||
    theirs.organs.some(organ => !organs.has(organ))
  );
}

/** `FD` of H360FD, `i` of H350i. */
const lettersOf = ({ statement }: Hazard): string =>
  /^H3[4-6]\d([A-Za-z]+)$/.exec(statement ?? '')?.[1] ?? '';

// Capitals say more than small letters: known or presumed before suspected (CLP Annex VI 1.1.2.1.2).
const hasLetters = (ours: Hazard, letters: string): boolean =>
  [...letters].every(letter => {
    const own = lettersOf(ours);
    return own.includes(letter) || own.includes(letter.toUpperCase());
  });

const covers = (ours: SpecificLimit, theirs: SpecificLimit): boolean =>
  ours.hazardClass === theirs.hazardClass &&
  ours.category === theirs.category &&
  (ours.low?.value ?? 0) <= (theirs.low?.value ?? 0);

const lostEstimates = (own: AteValues, theirs: AteValues): LostData['ate'] =>
  (Object.keys(theirs) as AteKey[]).flatMap(key => {
    const value = theirs[key]!;
    const ours = own[key];
    return ours && ours.value <= value.value ? [] : [{ key, value }];
  });

function lostFactors(own: MultiplicationFactors, theirs: MultiplicationFactors): MultiplicationFactors {
  const lost: { acute?: number; chronic?: number } = {};
  if ((theirs.acute ?? 1) > (own.acute ?? 1)) lost.acute = theirs.acute!;
  if ((theirs.chronic ?? 1) > (own.chronic ?? 1)) lost.chronic = theirs.chronic!;
  return lost;
}
