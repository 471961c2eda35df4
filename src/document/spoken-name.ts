/** The name of a constituent in the language of the document; as the formula has it where the record gives none. */
export const spokenName = (
  names: Readonly<Record<string, string>> | undefined,
  { name, cas }: { readonly name: string; readonly cas: string | null },
): string => names?.[cas ?? ''] ?? names?.[name] ?? name;
