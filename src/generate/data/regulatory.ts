import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const regulatory = {
  'regulatory/programs.json': z.strictObject({
    about: text,
    checkedOn: date,
    deMinimis: z.strictObject({ cite: text, percent: z.number(), carcinogen: z.number(), source: text }),
    aqueousAmmonia: z.strictObject({ cite: text, sharePercent: z.number(), source: text }),
    supplierNotice: z.strictObject({ cite: text, source: text }),
    inventory: z.strictObject({ cite: text, thresholdPounds: z.number(), source: text }),
    release: z.strictObject({ cite: text, source: text }),
    notHeld: z.array(z.strictObject({ id: text, cite: words, reason: text, source: text })),
    hazardTypes: z.strictObject({
      cite: text,
      source: text,
      health: z.array(z.strictObject({ type: text, classes: z.array(text) })),
      physical: z.array(z.strictObject({ type: text, classes: z.array(text) })),
    }),
  }),
};
