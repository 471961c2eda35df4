import { stringify } from 'yaml';
import type { Formula } from '../../src/formula/constituent.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { memoryFiles } from '../../src/record/files.ts';
import { parseRecordJson, parseRecordText, parseRecordValue } from '../../src/record/load.ts';
import type { FormulaLine, ProductRecord } from '../../src/record/product-record.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { renderText } from '../../src/report/render.ts';
import { pieces } from '../support/pieces.ts';
import { type Random, randomOf } from './random.ts';

type Value = Record<string, unknown>;

/** Raw materials and a maker that random records may name. */
const files = memoryFiles({
  'maker.yaml':
    'labelwright: maker/1\nname: Kerbstone Products LLC\naddress: 12 Quarry Lane\ntelephone: +1 555 0100\nemergency: {telephone: +1 555 0199, hours: always}\n',
  'drums/lye.yaml':
    'labelwright: raw-material/1\nname: lye\ndensity: 1.5 g/mL\nformula:\n  - {name: sodium hydroxide, cas: 1310-73-2, percent: 45-50}\n  - {name: water, amount: balance}\n',
  'drums/blend.yaml':
    'labelwright: raw-material/1\nname: blend\ndensity: 1.01 g/mL\nformula:\n  - {use: lye.yaml, percent: 10}\n  - {use: whole.yaml, percent: "< 5"}\n  - {name: water, amount: balance}\n',
  'drums/whole.yaml':
    'labelwright: raw-material/1\nname: acid blend\nhazards: [Eye Dam. 1]\nsource: supplier sheet\n',
  'drums/circle.yaml':
    'labelwright: raw-material/1\nname: circle\nformula: [{use: circle.yaml, percent: 100}]\n',
  'drums/broken.yaml': 'labelwright: raw-material/1\nname: [\n',
  'drums/empty.yaml': '',
});

const substances: readonly (readonly [string, string | undefined])[] = [
  ['sodium carbonate', '497-19-8'],
  ['d-limonene', '5989-27-5'],
  ['propylene glycol', '57-55-6'],
  ['builder blend', undefined],
  ['dye', undefined],
  ['phosphoric acid', '7664-38-2'],
];
const uses = ['drums/lye.yaml', 'drums/blend.yaml', 'drums/whole.yaml', './drums/../drums/lye.yaml'];
const hazards = [
  'Skin Irrit. 2',
  'Eye Dam. 1',
  'H225',
  'Serious eye damage (Category 1)',
  'Acute Tox. 4 (oral)',
  'STOT RE 2 (kidney, liver)',
];

function amountOf(random: Random): Value {
  const low = random.below(8);
  const high = low + 1 + random.below(4);
  return random.pick<() => Value>([
    () => ({ percent: random.below(120) / 10 }),
    () => ({ percent: `${low} - ${high} %` }),
    () => ({ percent: [low, high] }),
    () => ({ percent: `>= ${low} - < ${high}` }),
    () => ({ percent: `<= ${high}` }),
    () => ({ percent: 0 }),
  ])();
}

function lineOf(random: Random): Value {
  if (random.chance(0.25)) return { use: random.pick(uses), ...amountOf(random) };
  const [name, cas] = random.pick(substances);
  return {
    name,
    ...(cas && { cas }),
    ...amountOf(random),
    ...(random.chance(0.3) && { hazards: [random.pick(hazards)], source: 'supplier sheet' }),
    ...(random.chance(0.1) && { unknown: ['aquatic'] }),
    ...(random.chance(0.1) && { 'trade-secret': random.pick<unknown>(['percent', ['identity', 'percent']]) }),
    ...(random.chance(0.1) && { limits: ['Skin Irrit. 2; C >= 5 %'], ate: { oral: '500 mg/kg' } }),
  };
}

/** A record that is valid more often than not. */
function recordOf(random: Random): Value {
  const weighed = random.chance(0.2);
  const lines = Array.from({ length: 1 + random.below(6) }, () => lineOf(random));
  const formula = weighed
    ? lines.map(({ percent: _, ...line }) => ({
        ...line,
        amount: `${1 + random.below(90)} ${random.pick(['kg', 'lb', 'g', 'oz'])}`,
      }))
    : [...lines, { name: 'water', amount: 'balance' }];
  return {
    labelwright: 'product/1',
    name: 'Test Wash',
    code: random.pick(['TW-1', 'TW 2', 7]),
    form: random.pick(['liquid', 'solid', 'aerosol']),
    ...(random.chance(0.5) && { maker: 'maker.yaml' }),
    ...(random.chance(0.5) && {
      properties: {
        pH: random.below(14),
        'flash-point': random.pick(['none', '46 C', '> 200 F']),
        density: '1.1 g/mL',
      },
    }),
    formula,
    ...(random.chance(0.3) && {
      packs: [{ id: 'a', contents: '1 L', gtin: '0614141000418', dilution: { ratio: '1:16' } }],
    }),
    ...(random.chance(0.2) && { statements: { words: { 'P370+P378': 'sand' }, keep: ['P102'] } }),
    ...(random.chance(0.2) && { sds: { spill: 'Take up.', ppe: { hands: 'nitrile' } } }),
    ...(random.chance(0.2) && { 'sold-to': { users: 'workplace', markets: ['us'] } }),
    ...(random.chance(0.2) && { copy: { tagline: 'Cleans', directions: ['Wet, then rinse.', 'Dry #2'] } }),
  };
}

const strange: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  4711,
  1e21,
  0.1,
  '',
  ' ',
  'balance',
  'constructor',
  '__proto__',
  '4711',
  '9,5',
  '> 5',
  '< 1',
  '5-',
  '[',
  '1:16',
  '#',
  'x'.repeat(3000),
  '\u0000',
  '\ud800',
  '🧪',
  [],
  {},
  [[]],
  [null],
  { use: {} },
  ['a', 'b', 'c'],
  { a: { b: {} } },
  'drums/circle.yaml',
  'drums/broken.yaml',
  'drums/empty.yaml',
  '../outside.yaml',
  '/etc/passwd',
  'c:x',
  'none',
  'H314',
  'Carc. 1',
];
const keys = [
  'constructor',
  'toString',
  'prcent',
  'use',
  'name',
  'percent',
  'amount',
  'formula',
  'hazards',
  '5',
  '',
];

type Holder = Record<string | number, unknown>;

/** Puts something strange in one place of a value, takes a key away, renames one, or copies a part elsewhere. */
function mutate(value: Value, random: Random): void {
  const places: { holder: Holder; key: string | number }[] = [];
  const walk = (holder: unknown): void => {
    if (typeof holder !== 'object' || holder === null) return;
    for (const key of Object.keys(holder)) {
      places.push({ holder: holder as Holder, key: Array.isArray(holder) ? Number(key) : key });
      walk((holder as Holder)[key]);
    }
  };
  walk(value);
  const { holder, key } = random.pick(places);
  const inner = holder[key];
  switch (random.below(5)) {
    case 0:
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
      break;
    case 1:
      if (!Array.isArray(holder)) holder[random.pick(keys)] = inner;
      break;
    case 2:
      holder[key] = structuredClone(random.pick(places).holder);
      break;
    default:
      holder[key] = structuredClone(random.pick(strange));
  }
}

/** Text of a record, in YAML or JSON, now and then with pieces of text put in or cut out. */
function textOf(value: Value, random: Random): { text: string; json: boolean } {
  const json = random.chance(0.5);
  let text = json
    ? JSON.stringify(value)
    : stringify(value, {
        collectionStyle: random.pick(['any', 'block', 'flow']),
        lineWidth: random.pick([0, 60]),
      });
  if (random.chance(0.3))
    for (let cuts = 1 + random.below(3); cuts > 0; cuts--) {
      const at = random.below(text.length + 1);
      text = text.slice(0, at) + random.pick(pieces) + text.slice(at + random.below(10));
    }
  return { text, json };
}

/** How many random records came to which end. */
export interface Counts {
  refused: number;
  accepted: number;
  /** Threw, or came to a result that is not sound. */
  crashed: number;
  /** Took longer than five seconds. */
  hung: number;
  /** Seed and reason of each that crashed or hung. */
  readonly failures: string[];
}

/** Reads random records, each from a seed of its own, and counts how they end. */
export function fuzzRecords(from: number, count: number): Counts {
  const counts: Counts = { refused: 0, accepted: 0, crashed: 0, hung: 0, failures: [] };
  for (let seed = from; seed < from + count; seed++) {
    const start = performance.now();
    try {
      const wrong = readOne(randomOf(seed), counts);
      if (wrong !== null) throw new Error(wrong);
    } catch (error) {
      counts.crashed++;
      counts.failures.push(`seed ${seed}: ${(error as Error).stack}`);
    }
    if (performance.now() - start > 5000) {
      counts.hung++;
      counts.failures.push(`seed ${seed}: too long`);
    }
  }
  return counts;
}

/** Reads one record; what is not sound about the result, or null. */
function readOne(random: Random, counts: Counts): string | null {
  const value = recordOf(random);
  for (let changes = random.pick([0, 0, 1, 1, 2, 3]); changes > 0; changes--) mutate(value, random);
  const { text, json } = textOf(value, random);
  const reader = random.below(3);
  const record =
    reader === 0 && json
      ? parseRecordJson(text, 'record', files)
      : reader === 1
        ? parseRecordValue(value, files)
        : parseRecordText(text, 'r.yaml', files);
  const bad = unsound(record);
  if (bad) return bad;
  const formula = record.ok ? expandFormula(record.value) : null;
  if (!record.ok || !formula?.ok) {
    counts.refused++;
    return formula ? unsound(formula) : null;
  }
  counts.accepted++;
  return lost(
    record.value,
    formula.value,
    formula.diagnostics.filter(({ code }) => code === 'nothing-of-it').length,
  );
}

function unsound(outcome: Outcome<unknown>): string | null {
  const errors = outcome.diagnostics.some(({ severity }) => severity === 'error');
  if (outcome.ok === errors) return 'a value with errors, or no value without one';
  const text = renderText(outcome.diagnostics);
  return /undefined|\[object|NaN/.test(text) ? `a message that says nothing: ${text}` : null;
}

/** What an accepted record lost on the way: a line, or a part of 100 %. */
function lost(record: ProductRecord, { constituents }: Formula, left: number): string | null {
  const written = (record.raw as { formula: unknown[] }).formula.length;
  if (record.formula.length !== written) return `${record.formula.length} of ${written} lines are held`;
  const named = new Set<string>();
  const walk = (lines: readonly FormulaLine[]): void => {
    for (const line of lines) {
      if (line.kind === 'substance')
        named.add(line.cas ?? (line.name === 'water' ? '7732-18-5' : line.name.toLowerCase()));
      else walk(line.material.formula);
    }
  };
  walk(record.formula);
  if (constituents.length + left !== named.size)
    return `${constituents.length} constituents and ${left} of 0 % for ${named.size} substances`;
  const [low, high] = [constituents.map(each => each.low.value), constituents.map(each => each.high.value)];
  const sum = (parts: readonly number[]) => parts.reduce((total, part) => total + part, 0);
  // The formula accounts for 100 % within 0.01.
  if (sum(low) > 100.0101 || sum(high) < 99.9899)
    return `the constituents sum to ${sum(low)} to ${sum(high)} %`;
  return null;
}

/** Counts in one line. */
export const countsText = ({ refused, accepted, crashed, hung }: Counts): string =>
  `records: refused ${refused}, accepted ${accepted}, crashed ${crashed}, hung ${hung}`;
