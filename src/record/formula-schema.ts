import type { Measure } from '../quantity/measure.ts';
import { amount, batchLeaf, type DensityMeasure, densityLeaf } from './_amounts.ts';
import { readCas } from './_cas.ts';
import { across, type Partly } from './_cross.ts';
import { dateLeaf } from './_date.ts';
import { described, either, leaf, line, mapping, recordKind, told } from './_leaf.ts';
import { type PercentInput, percent } from './_percent.ts';
import * as z from './_zod.ts';
import { type GivenInput, givenShape } from './given-schema.ts';
import type { TradeSecret } from './record-blocks.ts';
import { tradeSecretSchema } from './trade-secret-schema.ts';

const substanceKeys = ['name', 'cas', 'trade-secret', ...Object.keys(givenShape)];

const wholeLine = (
  value: Partly,
  complain: (path: string[], message: string, hint?: string) => void,
): void => {
  const { use, name, percent, amount, hazards, source } = value;
  if (use !== undefined) {
    for (const key of substanceKeys)
      if (value[key] !== undefined)
        complain(
          [key],
          `\`${key}\` stands beside \`use\``,
          key === 'name' || key === 'cas'
            ? 'a line is a raw material (`use`) or a substance (`name`), not both'
            : `give \`${key}\` in the raw material's own record`,
        );
  } else if (name === undefined)
    complain([], 'the line has no `name`', 'add `name: …` for a substance, or `use: …` for a raw material');
  if (percent !== undefined && amount !== undefined)
    complain(['amount'], '`amount` stands beside `percent`', 'keep one of the two');
  if (percent === undefined && amount === undefined)
    complain(
      [],
      'the line does not say how much',
      'add `percent: …` or `amount: …` (`amount: balance` for the rest)',
    );
  if (Array.isArray(hazards) && hazards.length === 0 && source === undefined)
    complain(
      ['hazards'],
      '`hazards: []` says that the constituent is known to have no hazards, but not from where',
      'add `source: …`, or remove `hazards` if nothing is known',
    );
};

/** A line of a formula: a substance, or a raw material by file or written out. */
export const formulaLine = across(
  mapping(
    {
      name: z.optional(
        line('sodium hydroxide', 'Name of the substance, as the data sheet shall print it', 200),
      ),
      cas: z.optional(leaf(readCas, 'a CAS number', '1310-73-2', 'CAS number')),
      use: z.optional(
        either(
          [
            line('drums/hypochlorite-12.yaml', 'Path of a raw-material record, relative to this file'),
            z.lazy(() => rawMaterialSchema),
          ],
          'the path of a raw-material record, or the raw material written out',
          'drums/base.yaml',
          'A raw material: path of its record, or the raw material written out',
        ),
      ),
      percent: z.optional(percent),
      amount: z.optional(amount),
      density: z.optional(densityLeaf),
      'trade-secret': z.optional(tradeSecretSchema),
      ...givenShape,
    },
    'A line of the formula: a substance (name, cas) or a raw material (use), with percent or amount',
    'a line with keys such as `name` and `percent`',
  ),
  wholeLine,
);

/** The lines of a formula. */
export const formulaSchema: z.ZodMiniType<readonly LineInput[]> = described(
  z
    .array(formulaLine, {
      error: told({ what: 'a list of lines, each with a name and how much of it' }),
    })
    .check(z.minLength(1, { error: told({ what: 'a list with at least one line' }) })),
  { id: 'formula', description: 'What is weighed or metered into the batch' },
);

/** A raw material as validated, before files are resolved. */
export interface RawMaterialInput extends GivenInput {
  readonly name: string;
  readonly supplier?: string;
  readonly sheet?: { readonly revision?: string; readonly date?: string; readonly file?: string };
  readonly strength?: string;
  readonly density?: DensityMeasure;
  readonly batch?: Measure;
  readonly formula?: readonly LineInput[];
}

/** A formula line as validated. */
export interface LineInput extends GivenInput {
  readonly name?: string;
  readonly cas?: string;
  readonly use?: string | RawMaterialInput;
  readonly percent?: PercentInput;
  readonly amount?: Measure | 'balance';
  readonly density?: DensityMeasure;
  readonly 'trade-secret'?: TradeSecret;
}

const hazardKeys = Object.keys(givenShape).filter(key => key !== 'source');

/** A raw material: what comes in a drum, with its composition, or with the hazards that its supplier's sheet gives the whole. */
export const rawMaterialSchema: z.ZodMiniType<RawMaterialInput> = across(
  mapping(
    {
      labelwright: z.optional(recordKind('raw-material/1')),
      name: line('sodium hypochlorite solution 12 %', 'Name of the raw material', 200),
      supplier: z.optional(line('Fictional Chemical Supply', 'Supplier')),
      sheet: z.optional(
        mapping(
          {
            revision: z.optional(line('3', "Revision of the supplier's data sheet", 60)),
            date: z.optional(dateLeaf("Date of the supplier's data sheet, year-month-day")),
            file: z.optional(line('hypochlorite-12.pdf', "The supplier's data sheet, kept beside this file")),
          },
          "The supplier's data sheet",
        ),
      ),
      strength: z.optional(line('12.5 % available chlorine', 'Strength as delivered', 200)),
      density: z.optional(densityLeaf),
      batch: z.optional(batchLeaf),
      formula: z.optional(formulaSchema),
      ...givenShape,
    },
    'A raw material with its composition, or with its hazards as a whole',
    'a path of a raw-material record',
  ),
  (value, complain) => {
    const given = hazardKeys.filter(key => value[key] !== undefined);
    if (value.formula === undefined && given.length === 0)
      complain(
        ['formula'],
        'the raw material has neither a composition (`formula`) nor hazards of its own (`hazards`)',
        "give one of them from section 2 or 3 of the supplier's sheet; `hazards: []` with a `source` where the sheet says that it is not classified",
      );
    if (value.formula !== undefined)
      for (const key of given)
        complain(
          [key],
          `\`${key}\` stands beside \`formula\``,
          'the hazards of a raw material follow from its composition: keep one of the two',
        );
    if (Array.isArray(value.hazards) && value.hazards.length === 0 && value.source === undefined)
      complain(
        ['hazards'],
        '`hazards: []` says that the raw material is known to have no hazards, but not from where',
        'add `source: …`',
      );
  },
) as unknown as z.ZodMiniType<RawMaterialInput>;
