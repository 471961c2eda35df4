import type { BatchTicket } from '../../batch/ticket.ts';
import type { ProductRecord } from '../../record/product-record.ts';
import { apartText, cautionText, sizeText, stepAmounts, yieldText } from './batch-ticket.ts';

/** A batch for a terminal, a line each. */
export function batchText(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  lot: string,
  { size, steps, apart, yields }: BatchTicket,
): string[] {
  const names = steps.map(({ material }) => material.name);
  return [
    `${name} (${code}), lot ${lot}: ${sizeText(size)}`,
    ...steps.flatMap((step, at) => {
      const { pounds, gallons, containers } = stepAmounts(step);
      const volume = gallons === null ? '' : `, ${gallons} gal`;
      const drums = containers === null ? '' : `, ${containers}`;
      return [
        `  ${at + 1}. ${step.material.name}: ${pounds} lb${volume}${drums}`,
        ...step.cautions.map(caution => `       ${cautionText(caution)}`),
      ];
    }),
    ...(apart.length > 0 ? ['  never let these meet undiluted:'] : []),
    ...apart.map(each => `     ${apartText(each, names)}`),
    ...yields.map(each => {
      const { packs, cases } = yieldText(each);
      return `  fills ${each.pack}, ${each.contents}: ${packs}${cases === '' ? '' : `, ${cases}`}`;
    }),
  ];
}
