import type { ReactiveShare } from '../../classify/facts/warning.ts';
import type { Telling } from '../words.ts';

/** `4 % sodium hydroxide, 2 % acetic acid`; without percents where they are not told. */
export const sharesOf = (shares: readonly ReactiveShare[], tell: Telling): string =>
  shares
    .map(({ constituent, amount }) => {
      const share = tell.amounts ? `${tell.style.show(amount.value)} % ` : '';
      return `${share}${tell.names(constituent)}`;
    })
    .join(', ');
