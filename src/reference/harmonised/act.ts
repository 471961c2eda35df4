/**
 * The act of a CELEX number in words: `32025R1222` is `Regulation (EU) 2025/1222`. Numbering changed twice:
 * (EC) No until 2009, (EU) No until 2014, year first since 2015.
 */
export function formatAct(celex: string): string {
  const match = /^3(\d{4})R0*(\d+)$/.exec(celex);
  if (!match) return celex;
  const [, year, number] = match;
  if (Number(year) >= 2015) return `Regulation (EU) ${year}/${number}`;
  return `Regulation (${Number(year) < 2010 ? 'EC' : 'EU'}) No ${number}/${year}`;
}
