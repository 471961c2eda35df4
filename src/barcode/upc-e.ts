/**
 * Expands the six digits of a UPC-E symbol to the first eleven digits of the GTIN-12 they stand for
 * (GS1 General Specifications 7.10: the last digit tells which zeros were suppressed).
 */
export function expandUpcE(six: string): string {
  const [a, b, c, d, e, last] = six as unknown as readonly [string, string, string, string, string, string];
  if (last <= '2') return `0${a}${b}${last}0000${c}${d}${e}`;
  if (last === '3') return `0${a}${b}${c}00000${d}${e}`;
  if (last === '4') return `0${a}${b}${c}${d}00000${e}`;
  return `0${a}${b}${c}${d}${e}0000${last}`;
}

/** The six digits of UPC-E for a GTIN-12, or null where its zeros do not stand where they must. */
export function compressToUpcE(gtin12: string): string | null {
  const match = /^0(\d{5})(\d{5})\d$/.exec(gtin12);
  if (!match) return null;
  const [, company, item] = match as unknown as readonly [string, string, string];
  const candidates = [
    `${company.slice(0, 2)}${item.slice(2)}${company[2]}`,
    `${company.slice(0, 3)}${item.slice(3)}3`,
    `${company.slice(0, 4)}${item.slice(4)}4`,
    `${company}${item.slice(4)}`,
  ];
  return candidates.find(six => expandUpcE(six) === gtin12.slice(0, 11)) ?? null;
}
