import type { ClassifiedProduct } from './classified-product.ts';

/** What a reviewer must look at before anything leaves: warnings, missing data, choices, open words of statements. */
export function reviewPoints({ record, classification, elements }: ClassifiedProduct): string[] {
  const undecided = classification.otherClasses.filter(({ outcome }) => outcome === 'insufficient-data');
  const unread = undecided.map(({ class: name, route }) => `${name}${route ? ` (${route})` : ''}`);
  const evidence = classification.hazards.filter(({ calculated }) => calculated).map(({ code }) => code);
  return [
    ...classification.warnings.map(({ text }) => text),
    ...(unread.length > 0 ? [`not decided for want of data: ${unread.join(', ')}`] : []),
    ...(evidence.length > 0
      ? [`given by evidence in the record, not by calculation: ${evidence.join(', ')}`]
      : []),
    ...record.choices.map(({ reading, take, reason }) => `reading ${reading} taken as ${take}: ${reason}`),
    ...elements.missing.map(({ what, why }) => `${what}: ${why}`),
    ...elements.omitted.map(({ what, why }) => `left off the label: ${what} (${why})`),
  ];
}
