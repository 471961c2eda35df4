import type { TableEntry } from '../reference/transport/table-entry.ts';
import type { Outcome } from './answer.ts';
import { contributorsTo } from './contributors.ts';
import { type Fact, fact } from './fact.ts';
import { type Hazard, namesOf } from './finding.ts';
import { generic } from './generic-entry.ts';
import { type NamedMaterial, shippingName } from './named-entry.ts';
import { undecided } from './outcome.ts';
import { mostStringent, orderHazards } from './precedence.ts';
import type { Setting } from './setting.ts';
import { withoutClass } from './without-class.ts';

/** The answer for given hazards: entry by name before generic entries, one class before another by precedence. */
export function settle(hazards: readonly Hazard[], setting: Setting): Outcome {
  const { input, data, named } = setting;
  if (input.form === 'aerosol') return undecided();
  const byTable = named?.listed ? listedByName(hazards, named, setting) : null;
  if (byTable) return byTable;
  const own = named?.listed ? hazardOfEntry(named.entries[0]!) : null;
  const classes = hazards.filter(hazard => hazard.class !== 'Comb liq' && hazard.class !== own?.class);
  const all = own ? [...classes, own] : classes;
  if (all.length === 0) return withoutClass(hazards, setting);
  const form = input.form === 'solid' ? 'solid' : 'liquid';
  const ordered = orderHazards(all, form, data);
  if (!ordered) return undecided(fact('no-precedence', data.precedence.cite, { classes: namesOf(all) }));
  const [primary, ...rest] = ordered;
  const because: Fact[] =
    rest.length > 0
      ? [
          fact('precedence', data.precedence.cite, {
            primary: primary!.class,
            subsidiary: namesOf(rest),
            group: mostStringent(all),
          }),
        ]
      : [];
  return (
    bearsName(primary!, rest, all, because, setting) ??
    generic(primary!, rest, mostStringent(all), because, setting)
  );
}

const hazardOfEntry = ({ hazardClass, packingGroup }: TableEntry): Hazard => ({
  class: hazardClass,
  group: packingGroup,
  tested: false,
});

const describe = (
  entry: TableEntry,
  named: NamedMaterial,
  form: string,
  because: readonly Fact[],
): Outcome => ({
  answer: entry.hazardClass === 'Forbidden' ? 'undecided' : 'regulated',
  entry,
  name: shippingName(entry, named, form),
  technical: entry.symbols.includes('G') ? [named.constituent.name] : [],
  class: entry.hazardClass,
  subsidiary: entry.subsidiary,
  packingGroup: entry.packingGroup,
  because,
});

/** An entry whose description holds the concentration says what the material is (49 CFR 173.2a(a)). */
function listedByName(hazards: readonly Hazard[], named: NamedMaterial, { input }: Setting): Outcome | null {
  const wanted = mostStringent(hazards);
  const alone = input.constituents.length === 1;
  const entry = named.entries.find(({ packingGroup }) => packingGroup === wanted) ?? named.entries[0]!;
  // Against the table stands a test alone, or another constituent.
  const covered = [entry.hazardClass, ...entry.subsidiary, 'Comb liq'];
  const foreign = hazards.filter(hazard => !covered.includes(hazard.class));
  const byOthers = (name: string) => contributorsTo(input, name).some(other => other !== named.constituent);
  if (!alone && foreign.some(hazard => hazard.tested || byOthers(hazard.class))) return null;
  return describe(entry, named, input.form, [
    fact(alone ? 'listed-by-name' : 'listed-by-concentration', '49 CFR 172.101(a), 173.2a(a)', {
      name: named.constituent.name,
      percent: named.constituent.high.value,
      entry: entry.description,
      un: entry.id,
      group: entry.packingGroup,
    }),
  ]);
}

/** A mixture of one predominant material that the table names bears that name (49 CFR 172.101(c)(10)(i)). */
function bearsName(
  primary: Hazard,
  rest: readonly Hazard[],
  all: readonly Hazard[],
  because: readonly Fact[],
  { input, named }: Setting,
): Outcome | null {
  if (!named) return null;
  const subsidiary = namesOf(rest).sort().join();
  const fitting = named.entries.filter(
    entry => entry.hazardClass === primary.class && [...entry.subsidiary].sort().join() === subsidiary,
  );
  if (fitting.length === 0) return null;
  const group = mostStringent(all);
  const exact = fitting.find(({ packingGroup }) => packingGroup === group);
  // A test that shows another packing group takes the name away (172.101(c)(12)(i)).
  if (!exact && primary.tested) return null;
  const entry = exact ?? fitting[0]!;
  return describe(entry, named, input.form, [
    ...because,
    fact('named-entry', '49 CFR 172.101(c)(10)(i)', {
      name: named.constituent.name,
      percent: named.constituent.high.value,
      entry: entry.description,
      un: entry.id,
    }),
    ...(exact
      ? []
      : [fact('packing-group-of-table', '49 CFR 172.101(f)', { un: entry.id, group: entry.packingGroup })]),
  ]);
}
