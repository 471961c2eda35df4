import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { TransportData } from '../reference/transport/transport-data.ts';
import { fact } from './fact.ts';
import { type Case, type Finding, finding, type Hazard, type Missing } from './finding.ts';
import type { TransportInput } from './input.ts';

const skin = (group: PackingGroup, tested: boolean): Hazard => ({ class: '8', group, by: 'skin', tested });

const groupCases = (groups: readonly PackingGroup[]): Case[] =>
  groups.map(group => ({ id: 'skin-corrosion-group', values: { group }, hazard: skin(group, true) }));

/**
 * Class 8 (49 CFR 173.136, 173.137): skin corrosion by its subcategory, and corrosion of steel or aluminum as a
 * trigger of its own. The packing group is assigned by test; a subcategory worked out stands in for it and says so.
 */
export function corrosive(input: TransportInput, { criteria }: TransportData): Finding {
  const { corrosive: rules } = criteria;
  const onSkin = input.hazards.find(({ hazardClass }) => hazardClass === 'Skin Corr.');
  const onMetal = input.hazards.find(({ hazardClass }) => hazardClass === 'Met. Corr.');
  const open = (name: string) => input.open.some(({ hazardClass }) => hazardClass === name);
  const mayBecomeLiquid = input.form === 'liquid';
  const metalFact = onMetal && [
    fact('corrosive-to-metals', rules.metals.cite, {
      rate: rules.metals.millimetresAYearAbove,
      group: rules.metals.group,
    }),
  ];
  const metal: Hazard = { class: '8', group: rules.metals.group as PackingGroup, by: 'metals', tested: true };
  // A test that finds no skin corrosion leaves that of metals.
  const mayAttackMetal = mayBecomeLiquid && (onMetal !== undefined || open('Met. Corr.'));
  const notOnSkin: Case[] = [
    ...(mayAttackMetal ? [{ id: 'metal-alone', values: {}, hazard: metal } as const] : []),
    ...(onMetal && mayBecomeLiquid ? [] : [{ id: 'corrodes-nothing', values: {}, hazard: 'none' } as const]),
  ];
  if (onSkin) {
    const assigned = rules.packingGroups[onSkin.category as keyof typeof rules.packingGroups];
    const groups: readonly PackingGroup[] = ['I', 'II', 'III'];
    const test = fact('skin-corrosion-test', rules.tests.cite, { methods: rules.tests.methods });
    if (!assigned)
      return finding({
        because: [
          fact('corrosive-to-skin', rules.cite, { category: onSkin.category || '1' }),
          ...(metalFact ?? []),
        ],
        missing: [{ ...test, class: '8', decides: 'group', cases: [...groupCases(groups), ...notOnSkin] }],
      });
    const group = assigned.group as PackingGroup;
    const confirm: Missing[] = onSkin.tested
      ? []
      : [
          {
            ...test,
            class: '8',
            decides: 'confirm',
            cases: [...groupCases(groups.filter(other => other !== group)), ...notOnSkin],
          },
        ];
    return finding({
      hazards: [skin(group, onSkin.tested)],
      because: [
        fact('corrosive-to-skin', rules.cite, { category: onSkin.category }),
        fact(onSkin.tested ? 'skin-packing-group' : 'skin-packing-group-worked-out', assigned.cite, {
          category: onSkin.category,
          group,
        }),
        ...(metalFact ?? []),
      ],
      missing: confirm,
    });
  }
  const missing: Missing[] = [];
  if (open('Skin Corr.'))
    missing.push({
      ...fact('skin-corrosion-data', rules.cite, { methods: rules.tests.methods }),
      class: '8',
      decides: 'class',
      cases: groupCases(['I', 'II', 'III']),
    });
  if (onMetal && mayBecomeLiquid)
    return finding({ hazards: [{ ...metal, tested: onMetal.tested }], because: metalFact ?? [], missing });
  if (open('Met. Corr.') && mayBecomeLiquid)
    missing.push({
      ...fact('metal-corrosion-test', rules.metals.cite, {
        rate: rules.metals.millimetresAYearAbove,
        temperature: rules.metals.testTemperature,
      }),
      class: '8',
      decides: 'class',
      cases: [{ id: 'corrodes-metal', values: {}, hazard: metal }],
    });
  return finding({
    missing,
    because: missing.length > 0 ? [] : [fact('not-corrosive', rules.cite)],
  });
}
