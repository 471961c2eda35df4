import { bodyOf, nothing, type SectionBodies } from '../content.ts';
import { fill } from '../fill.ts';
import { identification as common } from '../identification.ts';
import type { SheetInput } from '../input.ts';

/** Section 1 (Annex II, 1.1 to 1.4; GHS, Table 1.5.2, 1). */
export function identification(input: SheetInput): SectionBodies {
  const { record } = input;
  const { identification: words, ghs } = input.words.sheet;
  const own = (text: readonly string[]) => bodyOf('product record', { text }) ?? nothing;
  const supplier = record.maker.euSupplier;
  return {
    ...common(input),
    ufi: own(record.ufi ? [record.ufi] : []),
    'eu-supplier': own(
      supplier
        ? [
            supplier.role ? fill(ghs.withRole, { name: supplier.name, role: supplier.role }) : supplier.name,
            ...supplier.address,
            fill(words.telephone, { telephone: supplier.telephone }),
          ]
        : [],
    ),
    'competent-person': own(supplier?.email ? [fill(words.email, { email: supplier.email })] : []),
    'advisory-body': own(
      (supplier?.emergency ?? []).map(({ body, country, telephone, hours }) =>
        fill(country ? ghs.bodyOfCountry : ghs.body, { body, country: country ?? '', telephone, hours }),
      ),
    ),
  };
}
