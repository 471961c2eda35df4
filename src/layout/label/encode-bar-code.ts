import { digitalLink } from '../../barcode/digital-link.ts';
import { packSymbol } from '../../barcode/gtin.ts';
import { symbolSpec } from '../../barcode/spec.ts';
import { encodeMatrix, encodeSymbol } from '../../barcode/symbols.ts';
import type { LabelModel } from '../../document/label.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Tag } from '../frame.ts';
import type { PressProfile } from '../stock.ts';
import type { BarCode } from './bar-code-sizes.ts';

/** The bar code that a record asks for, or why its GTIN cannot be printed so. */
export async function encodeBarCode(
  { gtin, barCode: wish, container }: LabelModel & { readonly gtin: string },
  tag: Tag,
  { barCode, barWidthReduction, dpi }: PressProfile,
): Promise<BarCode | Diagnostic> {
  const common = {
    tag,
    barWidthReduction: barWidthReduction.value,
    ...(dpi !== undefined && { dpi }),
    diameter: container?.shape === 'cylinder' ? container.diameter : null,
    magnification: wish?.magnification ?? null,
    height: wish?.height ?? null,
  };
  const asked = wish?.symbol ?? null;
  if (asked === 'QR' || asked === 'Data Matrix') {
    const name =
      asked === 'QR' ? ('GS1 Digital Link QR Code' as const) : ('GS1 Digital Link Data Matrix' as const);
    const link = digitalLink(gtin, [], wish?.domain ?? undefined);
    return { ...common, symbol: await encodeMatrix(name, link) };
  }
  const symbol = packSymbol(gtin, asked);
  if (!symbol)
    return {
      code: 'bar-code-symbol',
      severity: 'error',
      message: `the GTIN ${gtin} cannot be printed as ${asked}`,
      hint: 'remove `symbol` from `bar-code:` for the usual symbol of that GTIN',
      cite: 'GS1 General Specifications 5.2',
    };
  // A symbol that is not scanned at the point of sale is made for warehouses.
  const environment = symbolSpec(symbol.name, barCode.environment)
    ? barCode.environment
    : 'general-distribution';
  return { ...common, symbol: await encodeSymbol(symbol.name, symbol.digits, environment) };
}
