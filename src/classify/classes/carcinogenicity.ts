import { always, type ClassRule } from '../class-rule.ts';
import type { ClassResult, Context } from '../context.ts';
import { ofHealth } from '../facts/provision.ts';
import { byIngredient, cutOffOf } from './by-ingredient.ts';

const CLASS = 'Carc.';

/** Carcinogenicity: A.6.3.1 with Table A.6.1; CLP 3.6.3.1.1 with Table 3.6.2; UN 3.6.3.3. */
export const carcinogenicity: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge,
  limitedBy: [CLASS],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables[CLASS], category),
};

function judge(context: Context): ClassResult[] {
  const { basis, scale } = context;
  const table = basis.byIngredient[CLASS]!;
  const { result, triggers, reached } = byIngredient(context, CLASS, table);
  if (result.outcome !== 'classified') return [result];
  // CLP Annex III: H350i only where every Category 1 ingredient that triggers is classified by inhalation.
  const one = reached.filter(trigger => trigger.result !== '2');
  const byInhalation =
    basis.letteredStatements && one.length > 0 && one.every(({ statement }) => statement === 'H350i')
      ? ['H350i']
      : result.hazard.statements;
  // Elsewhere the route goes into the words, where no ingredient leaves another route open (C.2.2.1).
  const inhaled = !basis.letteredStatements && reached.every(({ statement }) => statement === 'H350i');
  const optional = table.labelOptionalBelow;
  const belowLabel =
    optional !== undefined &&
    result.hazard.category === optional.category &&
    triggers.every(({ ingredient }) => scale.compare(ingredient.percent, optional.percent) < 0);
  return [
    {
      ...result,
      hazard: {
        ...result.hazard,
        statements: byInhalation,
        ...(inhaled && { route: 'inhalation' as const }),
      },
      readings: [...(result.readings ?? []), ...(belowLabel ? (['carcinogen-2-label'] as const) : [])],
      warnings: belowLabel
        ? [
            {
              id: 'carcinogen-label-optional',
              constituents: triggers.map(({ ingredient }) => ingredient.index),
              below: optional.percent,
              cites: [ofHealth(basis, optional.cite)],
            },
          ]
        : [],
    },
  ];
}
