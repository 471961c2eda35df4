/**
 * Name of a data sheet for people who save it, without its ending: `Kerbstone Patio Cleaner SDS rev 1`.
 * @param market `eu`, `un`; null for the United States
 */
export const sheetFileName = (
  product: string,
  market: string | null,
  { revision, date }: { readonly revision: string | null; readonly date: string },
): string =>
  [
    product,
    'SDS',
    ...(market ? [market.toUpperCase()] : []),
    revision === null ? date : `rev ${revision}`,
  ].join(' ');
