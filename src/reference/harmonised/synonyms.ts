/**
 * The names under which an entry is found: its whole name, and, for a substance of its own, each synonym between
 * semicolons, with and without the `… %` of solutions. Names of reaction masses are not taken apart, because
 * their parts are other substances.
 */
export function synonyms(name: string): string[] {
  const whole = name.toLowerCase();
  if (/reaction (mass|product)|mixture|compounds|salts|esters|\[/i.test(name)) return [whole];
  const parts = whole.split(/;\s+/).flatMap(part => {
    const bare = part.replace(/,?\s*(solution\s*)?(…|\.\s?\.\s?\.)\.?\s*%.*$/, '').trim();
    return [part.trim(), bare];
  });
  return [...new Set([whole, ...parts])].filter(part => part !== '');
}
