import type { PressProfile, Stock } from '../layout/stock.ts';
import type { BrandInk } from '../pdf/profile.ts';
import type { Maker } from '../record/product-record.ts';
import type { BrandColor } from '../record/record-blocks.ts';
import type { Diagnostic, Position } from '../report/diagnostic.ts';

/** The maker's look as a label is printed with it. */
export interface BrandLook {
  readonly ink: BrandInk | null;
  readonly layout: NonNullable<Stock['brand']> | null;
  readonly findings: readonly Diagnostic[];
}

/**
 * What a label does with color and logo of its maker, and what it cannot.
 * @param at where findings point to
 */
export function brandLook({ brand }: Maker, profile: PressProfile, at: Position): BrandLook {
  const findings: Diagnostic[] = [];
  const tell = (code: string, severity: Diagnostic['severity'], message: string, hint: string) =>
    findings.push({ code, severity, message, hint, path: 'brand', at });
  if (brand?.logo)
    tell(
      'logo-not-placed',
      'warning',
      `the logo ${brand.logo} is not placed: labels carry the color of the maker alone`,
      'add it to the file of the label, on the band beside the name',
    );
  if (!brand?.color) return { ink: null, layout: null, findings };
  const ink = inkOf(brand.color);
  if (brand.color.kind === 'rgb')
    tell(
      'brand-color-converted',
      'warning',
      `the brand color ${brand.color.written} is of a screen and is printed as cmyk(${ink.cmyk.join(', ')}), which looks another way on each press`,
      'ask the printer for the parts of the ink, and write cmyk(…) or spot(…)',
    );
  const total = ink.cmyk.reduce((sum, part) => sum + part, 0);
  const { value } = profile.inkLimit;
  if (total > value)
    tell(
      'ink-limit',
      'error',
      `the brand color puts ${total} % of ink on one place; the press takes ${value} %`,
      'take less of the process inks, or a spot ink',
    );
  return { ink, layout: { words: wordsOn(ink.cmyk) }, findings };
}

function inkOf(color: BrandColor): BrandInk {
  if (color.kind === 'cmyk') return { cmyk: color.parts };
  if (color.kind === 'spot') return { cmyk: color.parts, spot: color.name };
  // The gray part of a screen color becomes black: no profile, no promise.
  const [red, green, blue] = color.parts.map(part => part / 255) as [number, number, number];
  const black = 1 - Math.max(red, green, blue);
  const part = (light: number) => (black === 1 ? 0 : Math.round(((1 - light - black) / (1 - black)) * 100));
  return { cmyk: [part(red), part(green), part(blue), Math.round(black * 100)] };
}

/** Relative luminance and contrast as in WCAG 2.2, of process inks taken as ideal. */
function wordsOn([cyan, magenta, yellow, black]: BrandInk['cmyk']): 'black' | 'white' {
  const linear = (ink: number) => {
    const light = (1 - ink / 100) * (1 - black / 100);
    return light <= 0.04045 ? light / 12.92 : ((light + 0.055) / 1.055) ** 2.4;
  };
  const luminance = 0.2126 * linear(cyan) + 0.7152 * linear(magenta) + 0.0722 * linear(yellow);
  return 1.05 / (luminance + 0.05) >= (luminance + 0.05) / 0.05 ? 'white' : 'black';
}
