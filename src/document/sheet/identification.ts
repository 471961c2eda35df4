import { adviceTexts } from './advice.ts';
import { bodyOf, nothing, type SectionBodies } from './content.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { contentsOf } from './units.ts';

/** Section 1 (29 CFR 1910.1200 App. D, Table D.1, 1). */
export function identification(input: SheetInput): SectionBodies {
  const { record, words: language } = input;
  const { identification: words } = language.sheet;
  const { maker } = record;
  const own = (text: readonly string[]) => bodyOf('product record', { text }) ?? nothing;
  const numbers = record.packs.flatMap(({ gtin, contents }) =>
    gtin ? [fill(words.gtin, { gtin, contents: contentsOf(contents, input) })] : [],
  );
  return {
    'product-identifier': own([record.name]),
    'other-identification': own([fill(words.productCode, { code: record.code }), ...numbers]),
    use: own([record.use]),
    restrictions:
      bodyOf('product record', { text: record.advisedAgainst }) ??
      (record.sheet.restrictions
        ? null
        : bodyOf('hazard classes', { text: adviceTexts(input, 'restrictions') })) ??
      nothing,
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
