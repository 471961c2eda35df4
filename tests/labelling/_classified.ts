import type { BasisId, Classification, ClassifiedHazard } from '../../src/classify/classification.ts';
import { findCode } from '../../src/notation/classes.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';

/** A classification with the hazards in the notation of Annex VI, as if the mixture had been classified so. */
export function classified(
  basis: BasisId,
  hazards: readonly string[],
  rest: Partial<Pick<Classification, 'unknownAcuteToxicity' | 'supplemental'>> = {},
): Classification {
  return {
    basis: { id: basis, title: basis, asOf: '2026-11-25' },
    constituents: [],
    hazards: hazards.map(hazardOf),
    otherClasses: [],
    ateMix: { oral: null, dermal: null, gas: null, vapour: null, mist: null },
    unknownAcuteToxicity: { oral: 0, dermal: 0, inhalation: 0 },
    unknownAquatic: null,
    supplemental: [],
    readings: [],
    warnings: [],
    ...rest,
  };
}

export function hazardOf(text: string): ClassifiedHazard {
  const read = parseHazard(text);
  if (!read.ok) throw new Error(`${text}: ${read.message}`);
  const { code, hazardClass, category, route, form, effect, organs, statement } = read.value;
  const following = findCode(code)?.category.statements ?? [];
  return {
    code,
    hazardClass,
    category,
    route,
    form,
    effect,
    organs,
    statements: statement && !following.includes(statement) ? [statement] : following,
    because: { kind: 'screening', classes: [], cites: [] },
  };
}
