import type { PressProfile, Stock } from '../layout/stock.ts';
import type { BrandInk } from '../pdf/profile.ts';
import { inksOfScreen } from '../quantity/screen-color.ts';
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
 * What a label does with the color of its maker.
 * @param at where findings point to
 */
export function brandLook({ brand }: Maker, profile: PressProfile, at: Position): BrandLook {
  const findings: Diagnostic[] = [];
  const tell = (code: string, severity: Diagnostic['severity'], message: string, hint: string) =>
    findings.push({ code, severity, message, hint, path: 'brand', at });
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
  const [red, green, blue] = color.parts.map(part => part / 255) as [number, number, number];
  const [cyan, magenta, yellow, black] = inksOfScreen([red, green, blue]).map(Math.round) as [
    number,
    number,
    number,
    number,
  ];
  return { cmyk: [cyan, magenta, yellow, black] };
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
