import type { Fact } from '../../transport/fact.ts';
import { classWord, group, say, text, type Values } from './_transport-values.ts';

/** What is missing, as a thing to provide. */
const needs: Readonly<Record<string, (values: Values) => string>> = {
  'flash-point': () => 'flash point (closed cup)',
  'closed-cup-flash-point': v =>
    `flash point in a closed cup (the record gives ${text(v.flashPoint)} C in an open one)`,
  'water-miscible': v =>
    `whether the product is miscible with water (${text(v.water)} % water): then it is not Class 3`,
  'initial-boiling-point': v => `initial boiling point (at most ${text(v.limit)} C is packing group I)`,
  'skin-corrosion-test': v =>
    `skin corrosion test of the product (${text(v.methods)}), which assigns the packing group`,
  'skin-corrosion-data': () => 'data on skin corrosion',
  'metal-corrosion-test': v =>
    `corrosion test on steel and aluminum at ${text(v.temperature)} C (over ${text(v.rate)} mm a year is Class 8)`,
  'saturated-vapour-concentration': () => 'saturated vapour concentration at 20 C, for toxicity of vapours',
  'acute-toxicity-data': v => `data on acute toxicity (${text(v.route)})`,
  concentration: v =>
    `concentration of ${text(v.name)}: entries of the table divide its range of ${text(v.low)} to ${text(v.high)} %`,
  'class-test': v => `data or test for ${text(v.hazardClass)} (${classWord(v.class)})`,
  approval: v => `type and approval for ${text(v.hazardClass)} (${classWord(v.class)})`,
  gas: () => 'name and division of the gas, from the shipper',
};

/** When an alternative holds. */
const conditions = {
  'none-of-them': () => 'if none of the open classes is met',
  'class-3': (v: Values) => `if the flash point puts it in Class 3, ${group(v.group)}`,
  combustible: () => 'if the flash point makes it a combustible liquid',
  'not-water-miscible': () => 'if it is not miscible with water',
  'boils-above': (v: Values) => `if it begins to boil above ${text(v.limit)} C`,
  'boils-at-or-below': (v: Values) => `if it begins to boil at ${text(v.limit)} C or below`,
  'skin-corrosion-group': (v: Values) => `if the skin test gives ${group(v.group)}`,
  'metal-alone': () => 'if the skin test shows no corrosion, and it corrodes steel or aluminum',
  'corrodes-nothing': () => 'if it corrodes neither skin nor metals',
  'corrodes-metal': () => 'if it corrodes steel or aluminum',
  'toxic-vapour': (v: Values) => `if its vapour is toxic in ${group(v.group)}`,
  toxic: (v: Values) => `if it is toxic (${text(v.route)}) in ${group(v.group)}`,
  'other-class': (v: Values) => `if it is ${classWord(v.class)}, ${group(v.group)}`,
  'by-approval': (v: Values) => `if it is ${classWord(v.class)}`,
  'other-modes-alone': (v: Values) =>
    `by ${(v.modes as readonly string[]).map(mode => (mode === 'A' ? 'aircraft' : 'vessel')).join(' or ')}`,
  'by-vessel': () => 'by vessel, or in bulk',
  'reclassed-combustible': (v: Values) =>
    `if reclassed as a combustible liquid (flash point ${text(v.flashPoint)} C, at or above ${text(v.limit)} C), by highway or rail`,
  'does-not-sustain-combustion': () => 'if a test shows that it does not sustain combustion',
  'aluminum-alone': () => 'if the test shows corrosion of aluminum alone, by motor vehicle or rail',
  'excepted-quantity': () => 'as an excepted quantity, packed, tested and marked as the section asks',
  'concentration-of': (v: Values) => `at ${text(v.percent)} % of ${text(v.name)}`,
  'domestic-cleaning-compound': () => 'as a cleaning compound, within the United States',
} satisfies Readonly<Record<string, (values: Values) => string>>;

/** What an alternative may rest on. */
export type TransportCondition = keyof typeof conditions;

/** What a missing fact asks for. */
export const transportNeed = (fact: Fact): string => say(needs, fact);

/** The case an alternative stands for. */
export const transportCondition = (fact: Fact): string => say(conditions, fact);
