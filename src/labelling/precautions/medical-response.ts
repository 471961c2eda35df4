import type { AllocationRow } from '../../reference/label-data/allocation.ts';
import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission } from '../label-elements.ts';
import { codeOf, type Precaution, type Progress } from './_precaution.ts';

interface Call {
  readonly precaution: Precaution;
  /** Position in the order of urgency, 0 the most urgent. */
  readonly level: number;
  readonly code: string;
  readonly routes: readonly string[];
}

/**
 * Medical response (29 CFR 1910.1200 App. C, C.2.4.10): of several calls for help the most urgent, once, with every
 * route of exposure. Statements that name a symptom stay as they are, and so do those of paragraph (c).
 */
export function medicalResponse(
  { precautions, omitted }: Progress,
  { precautions: rules, basis }: LabelData,
): Progress {
  const { levels, routes: known, any, anyFrom, why, whole, joinsAny } = rules.medical;
  const calls = precautions.flatMap((precaution): Call[] => {
    const code = precaution.parts.find(part => levels.some(level => level.includes(part)));
    if (!code) return [];
    const level = levels.findIndex(each => each.includes(code));
    const routes = precaution.parts.filter(part => known.includes(part) || part === any);
    if (routes.length > 0) return [{ precaution, level, code, routes }];
    const bare = precaution.parts.length === 1;
    const fromRows = bare ? [...new Set(precaution.rows.flatMap(row => routesOf(row, known)))] : [];
    return fromRows.length > 0 ? [{ precaution, level, code, routes: fromRows }] : [];
  });
  const [first] = [...calls].sort((a, b) => a.level - b.level);
  if (!first) return { precautions, omitted };
  const gathered = new Set(
    calls.flatMap(({ routes }) => routes.map(route => rules.medical.sameRoute[route] ?? route)),
  );
  // "If swallowed: call. Do NOT induce vomiting." is one sentence of the table and keeps its call.
  const apart = whole.filter(
    ({ route, with: action }) =>
      gathered.has(route) &&
      gathered.size > 1 &&
      calls.some(
        ({ precaution, code, routes }) =>
          routes.includes(route) &&
          precaution.rows.some(row => calledFor(row, `${route}+${code}`) && calledFor(row, action)),
      ),
  );
  for (const { route } of apart) gathered.delete(route);
  const routes =
    gathered.has(any) || gathered.size >= anyFrom ? [any] : known.filter(route => gathered.has(route));
  const fields = Object.assign({}, ...calls.map(({ precaution }) => precaution.fields));
  const ofRoutes = (of: (call: Call) => boolean) => [
    ...new Set(calls.filter(of).flatMap(({ precaution }) => precaution.rows)),
  ];
  const isAny = routes[0] === any;
  const alike = isAny
    ? precautions.filter(({ parts }) => parts[0] === any && joinsAny.includes(parts[1] ?? ''))
    : [];
  const merged: Precaution = {
    parts: [...routes, first.code, ...alike.flatMap(({ parts }) => parts.slice(1))],
    group: 'response',
    fields: Object.assign({}, fields, ...alike.map(each => each.fields)),
    rows: [...new Set([...ofRoutes(() => true), ...alike.flatMap(({ rows }) => rows)])],
    ...(routes.length > 1 && { place: first.code }),
  };
  const own = apart.map(
    ({ route }): Precaution => ({
      parts: [route, first.code],
      group: 'response',
      fields,
      rows: ofRoutes(call => call.routes.includes(route)),
    }),
  );
  const shown = [merged, ...own].map(codeOf);
  const gone = [...calls.map(({ precaution }) => precaution), ...alike]
    .map(codeOf)
    .filter(code => !shown.includes(code) && code !== first.code)
    .map(
      (what): Omission => ({
        what,
        why: { kind: 'replaced', text: why, by: codeOf(merged) },
        cite: rules.cites.medicalResponse[basis],
      }),
    );
  const others = precautions.filter(
    each => !calls.some(({ precaution }) => precaution === each) && !alike.includes(each),
  );
  return { precautions: [...others, merged, ...own], omitted: [...omitted, ...gone] };
}

/** Whether a row prints the statement. */
const calledFor = (row: AllocationRow, statement: string): boolean =>
  row.precautions.response.some(({ code }) => code === statement);

/** Routes of the IF statements in a row: those of a medical statement that the row prints without one. */
const routesOf = (row: AllocationRow, known: readonly string[]): readonly string[] =>
  row.precautions.response.flatMap(({ code }) => code.split('+').filter(part => known.includes(part)));

/**
 * One statement a route: actions printed without an IF, and a call for one route alone, join the statement of that
 * route (C.2.4.6, C.2.4.10(a)).
 */
export function joinRoutes({ precautions, omitted }: Progress, { precautions: rules }: LabelData): Progress {
  const { routes, sameRoute, levels, callFirst } = rules.medical;
  const plain = (route: string) => sameRoute[route] ?? route;
  const routeOf = ({ parts, place }: Precaution) =>
    place ? undefined : parts.find(part => routes.includes(part));
  const isCall = (code: string) => levels.some(level => level.includes(code));
  let left = [...precautions];
  const join = (one: Precaution, two: Precaution, parts: readonly string[]) => {
    left = left.filter(each => each !== one && each !== two);
    left.push({
      ...one,
      parts,
      fields: { ...two.fields, ...one.fields },
      rows: [...new Set([...one.rows, ...two.rows])],
    });
  };
  const calls = left.filter(each => routeOf(each) && each.parts.length === 2 && isCall(each.parts[1]!));
  for (const call of calls) {
    const firstAid = left.find(
      each => each !== call && each.parts.length > 1 && plain(routeOf(each) ?? '') === plain(routeOf(call)!),
    );
    if (!firstAid) continue;
    const [route, ...actions] = firstAid.parts;
    const [, code] = call.parts;
    join(
      firstAid,
      call,
      callFirst.includes(route!) ? [route!, code!, ...actions] : [route!, ...actions, code!],
    );
  }
  for (const { code, route } of rules.attached) {
    const bare = left.find(({ parts }) => parts.length === 1 && parts[0] === code);
    if (!bare) continue;
    const target = left.find(each => routeOf(each) === route);
    if (target) join(target, bare, [...target.parts, code]);
    else left = [...left.filter(each => each !== bare), { ...bare, parts: [route, code] }];
  }
  return { precautions: left, omitted };
}
