import type { Duty } from '../../duties/duty.ts';
import { plain } from '../../quantity/print.ts';

type PackagingDuty = Extract<Duty, { id: 'child-resistant' }>;

const percent = (value: number): string => `${plain.show(Number(value.toPrecision(4)))} %`;

/** `a, b and c` */
export const list = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What else must hold for a rule of child-resistant packaging. */
const conditions: Readonly<Record<string, string>> = {
  household: 'it is for use in or about the household',
  free: 'the hydroxide is free',
  nonemulsion: 'it is no emulsion',
  'furniture-polish': 'it is a furniture polish',
  kindling: 'it is a kindling or illuminating preparation',
  'paint-solvent': 'it is a solvent for paint',
  'glue-remover': 'it is a glue remover',
  'wave-neutralizer': 'it is a home permanent wave neutralizer',
  'fhsa-hazardous': 'it is a hazardous household substance (16 CFR 1500.3)',
  'no-spray-alone': 'it does not come out as a spray alone',
};

const needs: Readonly<Record<string, string>> = {
  viscosity: 'the viscosity at 40 C',
  density: 'the density',
  contents: 'the net contents',
};

const INSTRUMENT = '16 CFR 1700.14';

const saysOf = (packaging: boolean | null): string =>
  packaging === true
    ? 'the record says that the pack has it'
    : packaging === false
      ? 'the record says that the pack has none'
      : 'the record does not say whether the pack has it';

const foundIn = ({ finding }: PackagingDuty): string =>
  list(finding.terms.map(term => `${term.name} ${percent(term.percent)}`));

const whereOf = ({ finding }: PackagingDuty): string =>
  list(finding.conditions.map(name => conditions[name] ?? name));

/** What must still be known, and that it decides; empty where nothing is open. */
function decides(duties: readonly PackagingDuty[]): string {
  const missing = [...new Set(duties.flatMap(({ finding }) => finding.missing))].map(
    name => needs[name] ?? `what ${name} is`,
  );
  if (duties[0]!.finding.outcome !== 'open') return '';
  return `; ${list(missing)} ${missing.length === 1 ? 'decides' : 'decide'}`;
}

/** What the rules ask of one pack, the paragraph of each beside its condition where there are several. */
function rulesText(duties: readonly PackagingDuty[]): string {
  const bySubstance = new Map<string, PackagingDuty[]>();
  for (const duty of duties)
    bySubstance.set(foundIn(duty), [...(bySubstance.get(foundIn(duty)) ?? []), duty]);
  return [...bySubstance]
    .map(([found, of]) => {
      const where = of.map(duty => {
        const only = whereOf(duty);
        const paragraph = duties.length > 1 ? ` ${duty.cite!.replace(INSTRUMENT, '')}` : '';
        return `${only ? `where ${only}` : 'in any case'}${paragraph}`;
      });
      if (duties.length === 1 && whereOf(duties[0]!) === '') return found;
      return `${found}, ${where.join(', or ')}`;
    })
    .join('; for ');
}

/** The rules of 16 CFR 1700.14(a) that stand alike for a pack, as one text, with the duties that it tells. */
export function childResistantTexts(
  duties: readonly PackagingDuty[],
): readonly { readonly text: string; readonly cite: string; readonly of: readonly PackagingDuty[] }[] {
  const alike = new Map<string, PackagingDuty[]>();
  for (const duty of duties) {
    const key = [duty.pack, duty.state, duty.packaging, duty.finding.outcome, ...duty.finding.missing].join(
      '|',
    );
    alike.set(key, [...(alike.get(key) ?? []), duty]);
  }
  // Packs that stand alike share a text.
  const texts = new Map<string, PackagingDuty[]>();
  for (const each of alike.values()) {
    const verb = each[0]!.finding.outcome === 'open' ? 'may be due' : 'is due';
    const text = `child-resistant packaging ${verb} for ${rulesText(each)}${decides(each)}; ${saysOf(each[0]!.packaging)}`;
    texts.set(text, [...(texts.get(text) ?? []), ...each]);
  }
  return [...texts].map(([text, of]) => {
    const cites = [...new Set(of.map(({ cite }) => cite))];
    return {
      text: `${list([...new Set(of.map(({ pack }) => pack))])}: ${text}`,
      cite: cites.length === 1 ? cites[0]! : `${INSTRUMENT}(a)`,
      of,
    };
  });
}
