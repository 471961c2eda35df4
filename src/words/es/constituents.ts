import type { DataSource } from '../../classify/ingredient.ts';

const actIn = (act: string): string =>
  act
    .replace(/^Regulation \((EC|EU)\)/u, (_, of: string) => `Reglamento (${of === 'EC' ? 'CE' : 'UE'})`)
    .replace(' No ', ' n.º ');

/** Where the data of a constituent come from. */
export function source(from: DataSource): string {
  switch (from.kind) {
    case 'record':
      return from.named === null ? 'registro' : `registro: ${from.named}`;
    case 'harmonised':
      return `CLP anexo VI ${from.index}, ${actIn(from.act)}${from.added ? ' con valores del registro' : ''}`;
    case 'water':
      return 'agua';
    case 'none':
      return from.named ?? 'sin datos';
  }
}
