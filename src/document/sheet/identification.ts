import { bodyOf, firstBody, type SectionBodies } from './content.ts';
import type { SheetInput } from './input.ts';
import { fill, phrases } from './phrases.ts';

const words = phrases.identification;

/** Section 1 (29 CFR 1910.1200 App. D, Table D.1, 1). */
export function identification({ record }: SheetInput): SectionBodies {
  const { maker } = record;
  const none = phrases.frame.none;
  const own = (text: readonly string[]) => firstBody(none, bodyOf('product record', { text }));
  const numbers = record.packs.flatMap(({ gtin, contents }) =>
    gtin ? [fill(words.gtin, { gtin, contents: contents.written })] : [],
  );
  return {
    'product-identifier': own([record.name]),
    'other-identification': own([fill(words.productCode, { code: record.code }), ...numbers]),
    use: own([record.use]),
    restrictions: firstBody(words.noRestrictions, bodyOf('product record', { text: record.advisedAgainst })),
    'responsible-party': own([
      maker.name,
      ...maker.address,
      fill(words.telephone, { telephone: maker.telephone }),
      ...(maker.email ? [fill(words.email, { email: maker.email })] : []),
      ...(maker.website ? [fill(words.website, { website: maker.website })] : []),
    ]),
    'emergency-phone': own([maker.emergency.telephone, fill(words.hours, { hours: maker.emergency.hours })]),
  };
}
