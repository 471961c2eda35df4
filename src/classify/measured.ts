import type { FlashPoint, Measured } from '../record/product-record.ts';

/** A measured property as it stands in a working, with its method and source where the record gives them. */
export function withSource(text: string, measured: Measured<unknown>): string {
  const rests = [cupOf(measured), measured.method, measured.source].filter(Boolean);
  return rests.length > 0 ? `${text} (${rests.join('; ')})` : text;
}

function cupOf({ value }: Measured<unknown>): string | null {
  const flash = value as Partial<FlashPoint> | null;
  return flash?.kind === 'temperature' && 'cup' in flash && flash.cup ? `${flash.cup} cup` : null;
}
