import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { Omission, PictogramCode } from './label-elements.ts';
import type { ShownHazard } from './shown-hazards.ts';

interface Use {
  readonly pictogram: string;
  readonly hazardClass: string;
  readonly hazard: string;
  readonly row: ShownHazard['row'];
}

/**
 * Pictograms of the hazards, each once, the gravest first. The exclamation mark goes only where a rule of precedence
 * names the use it has (C.2.1.2 to C.2.1.4, C.2.3.4; CLP Article 26; UN GHS 1.4.10.5.3.1).
 */
export function pictogramsOf(
  shown: readonly ShownHazard[],
  { pictograms: rules, allocation }: LabelData,
): { readonly pictograms: readonly PictogramCode[]; readonly omitted: readonly Omission[] } {
  const uses = shown.flatMap(({ hazard, row }) =>
    row.pictograms.map(
      (pictogram): Use => ({ pictogram, hazardClass: hazard.hazardClass, hazard: row.hazard, row }),
    ),
  );
  const omitted: Omission[] = [];
  const severity = (use: Use) => allocation.rows.indexOf(use.row);
  const graver = (one: Use, other: Use) =>
    (one.row.signalWord === 'Danger' && other.row.signalWord !== 'Danger') ||
    (one.row.signalWord === other.row.signalWord && severity(one) < severity(other));
  const kept = uses.filter(use => {
    const rule = rules.precedence.find(
      each =>
        each.drops === use.pictogram &&
        (each.usedFor === null || each.usedFor.includes(use.hazardClass)) &&
        uses.some(
          ({ pictogram, hazardClass }) =>
            pictogram === each.shown && (each.shownFor?.includes(hazardClass) ?? true),
        ),
    );
    const sibling =
      rules.oneForAClass &&
      uses.find(
        other =>
          other.hazardClass === use.hazardClass &&
          other.pictogram !== use.pictogram &&
          other.row !== use.row &&
          graver(other, use),
      );
    const what = `${use.pictogram} for ${use.hazard}`;
    if (rule)
      omitted.push({ what, why: { kind: 'pictogram-shown', pictogram: rule.shown }, cite: rule.cite });
    else if (sibling)
      omitted.push({
        what,
        why: { kind: 'graver-category', pictogram: sibling.pictogram },
        cite: rules.oneForAClass!.cite,
      });
    return !rule && !sibling;
  });
  const codes = new Set(kept.map(({ pictogram }) => pictogram));
  return { pictograms: rules.order.filter(code => codes.has(code)) as PictogramCode[], omitted };
}
