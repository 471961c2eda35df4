import type * as z from 'zod';
import { mapping, prose } from './_leaf.ts';
import { sheetTexts } from './sheet-keys.ts';

const shape: Record<string, z.ZodType> = {};
const groups = new Map<string, Record<string, z.ZodType>>();
for (const [key, description] of Object.entries(sheetTexts)) {
  const [group, member] = key.split('.') as [string, string | undefined];
  const text = prose('…', description).optional();
  if (member === undefined) shape[group] = text;
  else groups.set(group, { ...groups.get(group), [member]: text });
}
for (const [group, members] of groups) shape[group] = mapping(members, `Texts on ${group}`).optional();

type Texts = Readonly<Record<string, string | Readonly<Record<string, string>>>>;

/** Texts for sections of the data sheet that no calculation gives. */
export const sheetSchema = mapping(
  shape,
  'Texts for sections of the data sheet that no calculation gives',
) as unknown as z.ZodType<Texts>;
