import type { LimitedQuantity, Outcome } from '../../transport/answer.ts';
import type { Fact } from '../../transport/fact.ts';
import type { HazardLabels } from '../../transport/hazard-label.ts';
import { hazardLabelLines } from './hazard-labels.ts';
import { transportWorking } from './transport.ts';
import { transportCondition, transportNeed } from './transport-cases.ts';

const worked = (facts: readonly Fact[]): readonly string[] =>
  facts.map(each => `${transportWorking(each)} [${each.cite}]`);
const asked = (open: readonly Fact[], missing: readonly Fact[]): string => {
  const needs = missing.map(each => `${transportNeed(each)} [${each.cite}]`).join('; ');
  return [...worked(open), ...(needs === '' ? [] : [`missing: ${needs}`])].join('; ');
};

const capital = (line: string): string => `${line[0]!.toUpperCase()}${line.slice(1)}`;
const sentence = (line: string): string => `${capital(line)}.`;

/** Texts of section 14, and what its reviewer must look at. */
export const transport = {
  unNumber: (un: string): string => un,
  /** With technical names, as 49 CFR 172.203(k) puts them. */
  shippingName: (name: string, technical: readonly string[]): string =>
    technical.length > 0 ? `${name} (${technical.join(', ')})` : name,
  /** Class, with subsidiary hazards in parentheses. */
  hazardClass: ({ class: name, subsidiary }: Pick<Outcome, 'class' | 'subsidiary'>): string => {
    const shown = name === 'Comb liq' ? 'Combustible liquid' : (name ?? '');
    return subsidiary.length > 0 ? `${shown} (${subsidiary.join(', ')})` : shown;
  },
  packingGroup: (group: string | null): string => group ?? 'Not applicable: the entry has no packing group.',
  notRegulated: (because: readonly Fact[]): string => {
    const answer = 'Not regulated by highway and rail in the United States (49 CFR parts 171 to 180)';
    return because.length > 0 ? `${answer}: ${worked(because).join('; ')}` : `${answer}.`;
  },
  notApplicable: 'Not applicable: not regulated by highway and rail in the United States.',
  marinePollutant: (yes: boolean): string =>
    yes
      ? 'Marine pollutant: yes (49 CFR 171.8 and 172.101, Appendix B).'
      : 'Marine pollutant: no; no ingredient was found in Appendix B to 49 CFR 172.101 at the concentration of 171.8.',
  limitedQuantity: ({ allowed, innerLimit, grossLimit, cite }: LimitedQuantity): string => {
    if (innerLimit === null) return `Limited quantity: none [${cite}].`;
    const limits = `inner packagings up to ${innerLimit}, package up to ${grossLimit} [${cite}].`;
    if (allowed === null) return `Limited quantity: facts of the pack are missing; ${limits}`;
    return `Limited quantity: ${allowed ? 'allowed' : 'not for this pack'}; ${limits}`;
  },
  /** Hazard labels of a package; null where transport decides none. */
  hazardLabels: (found: HazardLabels | null): string | null =>
    found ? sentence(hazardLabelLines(found).join('; ')) : null,
  packed: (packs: readonly string[]): string =>
    `Not carried in bulk by vessel: sold in packs (${packs.join(', ')}).`,
  modes:
    'Drafted for highway and rail in the United States. Air, vessel and other countries have rules and limits of their own, which are not worked out here.',
  /** A text that holds for some packs alone. */
  ofPacks: (packs: readonly string[], text: string): string => `${packs.join(', ')}: ${text}`,
  /** What holds where a missing test comes out so. */
  inCase: (when: readonly Fact[], text: string): string =>
    `${capital(when.map(transportCondition).join('; or '))}: ${text}`,
  review: (text: string): string => `data sheet, section 14: ${text}`,
  undecided: (open: readonly Fact[], missing: readonly Fact[]): string =>
    `transport is not decided: ${asked(open, missing)}`,
  mayChange: (open: readonly Fact[], missing: readonly Fact[]): string =>
    `the transport description may change: ${asked(open, missing)}`,
  marineOpen: (names: readonly string[], facts: readonly Fact[]): string =>
    `whether the product is a marine pollutant is not decided: ${[
      ...worked(facts),
      ...names.map(name => `${name} has no CAS number to look up`),
    ].join('; ')}`,
  nameWithheld: (name: string): string =>
    `number and shipping name are left open, for they tell ${name}, whose identity is claimed as a trade secret`,
  technicalWithheld: (name: string, shown: string): string =>
    `"${shown}" stands in place of the technical name ${name}, which is withheld here; a shipping paper needs it [49 CFR 172.203(k)]`,
};
