import { type Millimetres, MM_PER_INCH } from '../../quantity/length.ts';

/** A number with at most so many decimals and without trailing zeros. */
export const plain = (value: number, decimals = 1): string => String(Number(value.toFixed(decimals)));

/** A number in thirds, a space between thousands left out and a comma set: `12,345`. */
export const counted = (value: number): string => plain(value, 0).replace(/\B(?=(\d{3})+$)/g, ',');

/** A length in both systems: `130 mm (5.12 in)`. */
export const both = (length: Millimetres): string =>
  `${plain(length)} mm (${plain(length / MM_PER_INCH, 2)} in)`;

/** A mass in both systems: `9.2 kg (20.3 lb)`. NIST SP 811, B.8: 1 lb = 0.45359237 kg. */
export const bothMasses = (kilograms: number): string =>
  `${plain(kilograms, 2)} kg (${plain(kilograms / 0.45359237, 1)} lb)`;

/** A time in hours and minutes: `1 h 40 min`. */
export function duration(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 60) return minutes < 10 ? `${plain(minutes)} min` : `${whole} min`;
  const rest = whole % 60;
  return `${Math.floor(whole / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
}
