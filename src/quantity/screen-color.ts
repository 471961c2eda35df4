/**
 * Process inks in percent for a color of a screen whose red, green and blue are parts of 0 to 1: the gray part becomes
 * black. No profile is behind it: it looks another way on each press.
 */
export function inksOfScreen([red, green, blue]: readonly [number, number, number]): readonly [
  number,
  number,
  number,
  number,
] {
  const black = 1 - Math.max(red, green, blue);
  const part = (light: number) => (black === 1 ? 0 : ((1 - light - black) / (1 - black)) * 100);
  return [part(red), part(green), part(blue), black * 100];
}

/** Red, green and blue of 0 to 255 for process inks in percent, taken as ideal: no profile, no promise. */
export const screenOfInks = ([cyan = 0, magenta = 0, yellow = 0, black = 0]: readonly number[]): readonly [
  number,
  number,
  number,
] => {
  const light = (part: number): number => Math.round(255 * (1 - part / 100) * (1 - black / 100));
  return [light(cyan), light(magenta), light(yellow)];
};
