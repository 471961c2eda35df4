import type { Provision } from '../../classify/facts/provision.ts';

/** Paragraphs, the instrument named where it changes: `29 CFR 1910.1200 App. A, A.2.3.1.3; A.2.3.3.3`. */
export function cites(provisions: readonly Provision[], known: readonly string[] = []): string {
  let instrument = '';
  return provisions
    .map(provision => {
      const same =
        provision.instrument === '' ||
        provision.instrument === instrument ||
        known.includes(provision.instrument);
      if (provision.instrument !== '') instrument = provision.instrument;
      return same ? provision.paragraph : `${provision.instrument}, ${provision.paragraph}`;
    })
    .join('; ');
}
