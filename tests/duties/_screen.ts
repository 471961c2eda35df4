import type { ClaimKind } from '../../src/duties/claim.ts';
import { screenClaims } from '../../src/duties/claims.ts';

/** The verdicts of one kind on a text, with the words that they mark. */
export const screened = (text: string, kind: ClaimKind, statements: readonly string[] = []) =>
  screenClaims([{ path: 'copy.note', text, places: [], file: 'x.yaml' }], statements).filter(
    claim => claim.kind === kind,
  );

/** The gravest verdict of one kind, or none. */
export function verdictOf(text: string, kind: ClaimKind, statements: readonly string[] = []): string {
  const order = ['contradicts', 'claim', 'unqualified', 'ask', 'substantiate'];
  const found = screened(text, kind, statements).map(({ verdict }) => verdict as string);
  return order.find(verdict => found.includes(verdict)) ?? 'none';
}
