import type { BatchTicket, ShopMeasure } from '../batch/ticket.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { apartText, cautionText } from '../words/en/batch-ticket.ts';

/** A batch as `labelwright/batch/1`. */
export function batchJson(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  { lot, made }: { readonly lot: string; readonly made: string },
  { size, steps, apart, yields }: BatchTicket,
) {
  const names = steps.map(({ material }) => material.name);
  return {
    schema: 'labelwright/batch/1',
    product: { name, code },
    lot,
    made,
    size: measureJson(size),
    steps: steps.map(({ material, low, high, ranged, cautions }) => ({
      name: material.name,
      percent: [material.low.value, material.high.value],
      density: material.density?.value ?? null,
      densityAt: material.densityAt,
      ...measureJson(high),
      ...(ranged && { least: measureJson(low) }),
      cautions: cautions.map(caution => ({ id: caution.id, text: cautionText(caution) })),
    })),
    keepApart: apart.map(each => ({
      steps: [each.first, each.second],
      danger: each.danger,
      text: apartText(each, names),
    })),
    yields,
  };
}

const measureJson = ({ grams, pounds, gallons, containers }: ShopMeasure) => ({
  grams,
  pounds,
  gallons,
  containers: containers && {
    container: containers.container,
    count: containers.count,
    full: containers.full,
    restGallons: containers.restGallons,
  },
});
