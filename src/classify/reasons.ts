import type { Because } from './classification.ts';

const none: Because = { rule: '', cite: '', working: '', terms: [] };

let wanted = true;

/** A reason, made unless reasons are off. */
export const reason = (make: () => Because): Because => (wanted ? make() : none);

/** A reason with other words for its working, and for its paragraph where given. Every field is named: spreading is slow. */
export const retold = (
  { rule, cite, total, limit, unit, terms }: Because,
  working: string,
  otherCite = cite,
): Because => ({ rule, cite: otherCite, working, total, limit, unit, terms });

/** Whether reasons are made. */
export const reasonsWanted = (): boolean => wanted;

/** Runs rules for their outcomes alone: every reason is empty. For those who ask the rules thousands of times. */
export function withoutReasons<T>(run: () => T): T {
  const before = wanted;
  wanted = false;
  try {
    return run();
  } finally {
    wanted = before;
  }
}
