import { Exact } from '../quantity/exact.ts';
import { inhalationForm } from './_brackets.ts';
import { nearest } from './_nearest.ts';
import { printNumber } from './_range.ts';
import type { AteValues } from './limit.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

export type AteKey = keyof AteValues;

/** Units of CLP Annex I Table 3.1.1 and 29 CFR 1910.1200 Table A.1.1: mg/kg body weight, ppmV, mg/L. */
export const ateUnits: Readonly<Record<AteKey, string>> = {
  oral: 'mg/kg',
  dermal: 'mg/kg',
  gas: 'ppm',
  vapour: 'mg/L',
  mist: 'mg/L',
};

const keys = Object.keys(ateUnits) as AteKey[];

const spellings: Readonly<Record<string, RegExp>> = {
  'mg/kg': /^mg\/kg(?: ?bw)?$/,
  ppm: /^ppm[vV]?$/,
  'mg/L': /^mg\/[lL](?:\/4 ?h)?$/,
};

/** Reads the ATE values of a record: `{oral: '4400 mg/kg', gas: '500 ppm', mist: '0.5 mg/L'}`; each carries its unit. */
export function parseAte(written: Readonly<Record<string, unknown>>): Parsed<AteValues> {
  const values: { -readonly [K in AteKey]?: Exact } = {};
  for (const [key, text] of Object.entries(written)) {
    const known = keys.find(candidate => candidate === key);
    if (!known)
      return unreadable(
        `"${key}" is no route or form of an ATE`,
        `did you mean ${nearest(key, keys) ?? keys.join(', ')}?`,
      );
    const value = parseAteValue(known, text);
    if (!value.ok) return value;
    values[known] = value.value;
  }
  return parsed(values);
}

/** Reads one ATE with its unit; above 0. */
export function parseAteValue(key: AteKey, written: unknown): Parsed<Exact> {
  const unit = ateUnits[key];
  const match = /^(\d+(?:\.\d+)?)\s*(\S.*)?$/.exec(String(written).trim());
  const hint = `write a number with its unit: ${key}: 500 ${unit}`;
  if (!match) return unreadable(`"${written}" is no acute toxicity estimate`, hint);
  if (!match[2]) return unreadable(`"${written}" has no unit`, `write ${match[1]} ${unit}`);
  if (!spellings[unit]!.test(match[2]))
    return unreadable(`"${match[2]}" is no unit of an ATE for ${key}`, hint);
  if (Number(match[1]) === 0) return unreadable(`an ATE of 0 has no meaning`, hint);
  return parsed(Exact.decimal(match[1]!));
}

/** An ATE of an entry of Annex VI, with the form of the substance that it holds for where one is named. */
export interface AteItem {
  readonly key: AteKey;
  readonly value: Exact;
  /** `anhydrate` */
  readonly of: string | null;
}

/** Reads an ATE of Annex VI Table 3: `inhalation: ATE = 0.1 mg/L dusts or mists`, `oral: ATE = 890 mg/kg bw`. */
export function parseAteItem(text: string): Parsed<AteItem> {
  const match =
    /^(oral|dermal|inhalation)\s*: ATE = ([\d.]+) (mg\/kg bw|mg\/[lL]|ppmV?)(?: ?\(?([a-z][a-z ]*[a-z])\)?)?$/.exec(
      text.trim(),
    );
  const unread = unreadable(`"${text}" is no ATE of Annex VI`, 'oral: ATE = 890 mg/kg bw');
  if (!match) return unread;
  const [, route, number, unit, word] = match;
  const form = word === undefined ? null : inhalationForm(word);
  const key = route === 'inhalation' ? (form ?? (unit!.startsWith('ppm') ? 'gas' : null)) : (route as AteKey);
  if (key === null || (route !== 'inhalation' && form)) return unread;
  const value = parseAteValue(key, `${number} ${unit}`);
  return value.ok ? parsed({ key, value: value.value, of: form ? null : (word ?? null) }) : value;
}

/** An ATE with its unit: `890 mg/kg`. */
export const printAte = (key: AteKey, value: Exact): string => `${printNumber(value)} ${ateUnits[key]}`;
