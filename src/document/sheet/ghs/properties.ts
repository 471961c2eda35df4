import data from '../../../../hazard-data/eu-clp/sheet/properties.json' with { type: 'json' };
import { bodyOf, type ItemBody, nothing, type SectionBodies, said } from '../content.ts';
import { fill } from '../fill.ts';
import type { SheetInput } from '../input.ts';
import { properties as common } from '../properties.ts';
import { hazardsOfKind, othersOfKind, outcomeText, titleAndCode, titleOf } from './classes.ts';

const APPLIES: Readonly<Record<string, readonly string[]>> = data.appliesTo;

/**
 * Section 9 (Annex II, 9.1(a) to (r), 9.2.1 and 9.2.2; GHS, Table 1.5.2, 9). A property that does not apply to the
 * physical form says so, with the reason that 9.1 asks for.
 */
export function properties(input: SheetInput): SectionBodies {
  const { form } = input.record;
  const { properties: phrases, ghs: words } = input.words.sheet;
  const { 'other-properties': other, ...known } = common(input);
  const bodies = Object.entries(known).map(([key, body]): [string, ItemBody] => {
    const forms = APPLIES[key];
    const given = body.source === 'product record';
    if (given || !forms || forms.includes(form)) return [key, body];
    return [key, said('physical form', fill(words.notApplicableTo, { form: phrases.forms[form] }))];
  });
  return {
    ...Object.fromEntries(bodies),
    'physical-classes': physicalClasses(input),
    'safety-characteristics':
      bodyOf('product record', {
        text: [
          ...(other?.text ?? []),
          ...(input.record.sheet['properties.safety-characteristics'] ?? '').split(/\n+/u),
        ],
      }) ?? nothing,
  };
}

/** Every physical hazard class that the form admits, with its outcome (9.2.1). */
function physicalClasses(input: SheetInput): ItemBody {
  const { ghs: words } = input.words.sheet;
  const found = hazardsOfKind(input, 'physical').map(hazard => titleAndCode(hazard, input));
  const others = othersOfKind(input, 'physical').filter(({ outcome }) => outcome !== 'not-applicable');
  const outcomes = [...new Set(others.map(({ outcome }) => outcome))];
  return (
    bodyOf('calculation', {
      list: found,
      groups: outcomes.map(outcome => {
        const some = others.filter(each => each.outcome === outcome);
        return {
          title: outcomeText(some[0]!, input),
          list: [some.map(each => titleOf(each, input)).join('; ')],
        };
      }),
    }) ?? said('calculation', words.noPhysicalClass)
  );
}
