import { mapping, prose } from './_leaf.ts';
import * as z from './_zod.ts';
import { sheetTexts } from './sheet-keys.ts';

const shape: Record<string, z.ZodMiniType> = {};
const groups = new Map<string, Record<string, z.ZodMiniType>>();
for (const [key, description] of Object.entries(sheetTexts)) {
  const [group, member] = key.split('.') as [string, string | undefined];
  const text = z.optional(prose('…', description));
  if (member === undefined) shape[group] = text;
  else groups.set(group, { ...groups.get(group), [member]: text });
}
for (const [group, members] of groups) shape[group] = z.optional(mapping(members, `Texts on ${group}`));

type Texts = Readonly<Record<string, string | Readonly<Record<string, string>>>>;

/** Texts for sections of the data sheet that no calculation gives. */
export const sheetSchema = mapping(
  shape,
  'Texts for sections of the data sheet that no calculation gives',
) as unknown as z.ZodMiniType<Texts>;
