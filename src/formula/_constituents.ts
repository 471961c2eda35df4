import type { GivenData } from '../record/given-data.ts';
import type { SubstanceLine } from '../record/product-record.ts';
import type { TradeSecret } from '../record/record-blocks.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { positionText } from '../report/render.ts';
import { lineError } from './_findings.ts';
import { sameGiven, saysSomething } from './_given.ts';
import { keyOf, type Plan } from './_plan.ts';
import { isWater, WATER_CAS } from './water.ts';

/** A constituent before its percent is known. */
export interface Identity {
  readonly name: string;
  readonly cas: string | null;
  readonly given: GivenData;
  /** The line that says what `given` holds. */
  readonly line: SubstanceLine;
  readonly via: readonly string[];
  readonly water: boolean;
  readonly tradeSecret: TradeSecret | null;
  readonly undisclosed: boolean;
}

/** The constituents of a plan by key, in the order of their first lines; lines that contradict each other are findings. */
export function identitiesOf(plan: Plan, findings: Diagnostic[]): ReadonlyMap<string, Identity> {
  const known = new Map<Plan, ReadonlyMap<string, Identity>>();
  const complained = new Set<string>();

  const merge = (a: Identity, b: Identity): Identity => {
    const both = {
      via: [...new Set([...a.via, ...b.via])],
      tradeSecret: joined(a.tradeSecret, b.tradeSecret),
      undisclosed: a.undisclosed || b.undisclosed,
    };
    if (!saysSomething(b.given) || a.line === b.line) return { ...a, ...both };
    if (!saysSomething(a.given)) return { ...a, ...both, given: b.given, line: b.line };
    const pair = `${positionText(a.line.at)} ${a.line.path} ${positionText(b.line.at)} ${b.line.path}`;
    if (!sameGiven(a.given, b.given) && !complained.has(pair)) {
      complained.add(pair);
      findings.push(contradiction(a, b));
    }
    return { ...a, ...both };
  };

  const identities = (of: Plan): ReadonlyMap<string, Identity> => {
    const before = known.get(of);
    if (before) return before;
    const found = new Map<string, Identity>();
    const add = (key: string, identity: Identity) => {
      const first = found.get(key);
      found.set(key, first ? merge(first, identity) : identity);
    };
    for (const { line, inner } of of.lines) {
      if (line.kind === 'substance') add(keyOf(line), identity(line));
      else if (inner)
        for (const [key, entry] of identities(inner))
          add(
            key,
            entry.undisclosed && entry.via.length === 0
              ? entry
              : { ...entry, via: [line.material.name, ...entry.via] },
          );
    }
    known.set(of, found);
    return found;
  };
  return identities(plan);
}

/** What either of two lines claims. */
const joined = (a: TradeSecret | null, b: TradeSecret | null): TradeSecret | null =>
  a && b
    ? {
        identity: a.identity || b.identity,
        percent: a.percent || b.percent,
        shownAs: a.shownAs ?? b.shownAs,
        alternativeName: a.alternativeName ?? b.alternativeName ?? null,
      }
    : (a ?? b);

function identity(line: SubstanceLine): Identity {
  const water = isWater(line.name, line.cas);
  return {
    name: line.name,
    cas: line.cas ?? (water ? WATER_CAS : null),
    given: line.given,
    line,
    via: [],
    water,
    tradeSecret: line.tradeSecret,
    undisclosed: line.undisclosed,
  };
}

function contradiction(a: Identity, b: Identity): Diagnostic {
  const [first, second] = [a, b].map(({ line }) =>
    line.at.line === undefined ? `${line.at.file}, ${line.path}` : positionText(line.at),
  );
  return lineError(
    b.line,
    'contradicting-lines',
    `${b.name}${b.cas ? ` (${b.cas})` : ''} is described in two ways: at ${first} and at ${second}`,
    'let both lines say the same, or let one of them say nothing of its hazards',
  );
}
