import type { TypeRules } from '../../document/type-rules.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { leastXHeight, type Stock } from '../stock.ts';
import type { LabelContent } from './content.ts';
import { legalXHeight } from './legal-size.ts';

/**
 * A stock with what the law of a label asks of sizes, one for each side of pictograms that is to be tried, the wanted
 * one first. Nothing that the press asks becomes less. A die without room for the wanted side has the least text, and
 * its room goes to the pictograms: else the next larger one, which has it, would have smaller text.
 */
export function legalStocks(
  stock: Stock,
  content: LabelContent,
  type: TypeRules | null,
  fonts: FontLibrary,
): readonly Stock[] {
  if (!type) return [stock];
  const { pictogram, label, sign } = type;
  const legal: Stock = {
    ...stock,
    profile: sign ? signProfile(stock, sign) : stock.profile,
    legalXHeight: Math.max(legalXHeight(content, type, fonts), sign?.least ?? 0),
    ...(label && { leastSides: label.sides }),
  };
  const shown = content.sections.some(({ pictograms }) => pictograms.length > 0);
  if (!pictogram || !shown) return [legal];
  const wanted = withSide(legal, pictogram.wanted);
  if (pictogram.least >= pictogram.wanted) return [wanted];
  const { xHeight } = legal.profile;
  const leastText = { ...legal.profile, xHeight: { ...xHeight, largest: leastXHeight(legal) } };
  const short = withSide({ ...legal, profile: leastText }, pictogram.least);
  return [wanted, { ...short, wantedSide: pictogram.wanted }];
}

function signProfile({ profile }: Stock, sign: NonNullable<TypeRules['sign']>): Stock['profile'] {
  const { xHeight, pictogram } = profile;
  return {
    ...profile,
    xHeight: { ...xHeight, largest: sign.largest, largestPart: sign.part },
    pictogram: { ...pictogram, largestSide: Math.max(pictogram.largestSide, sign.pictogramSide) },
  };
}

function withSide(stock: Stock, side: Millimetres): Stock {
  const { pictogram } = stock.profile;
  const minimumSide = Math.max(pictogram.minimumSide, side);
  const largestSide = Math.max(pictogram.largestSide, minimumSide);
  return {
    ...stock,
    profile: { ...stock.profile, pictogram: { ...pictogram, minimumSide, largestSide } },
  };
}

/** Whether a label has the sides that its law asks, either way round. */
export function hasSides({ die, leastSides }: Stock): boolean {
  if (!leastSides) return true;
  const [short, long] = [Math.min(die.width, die.height), Math.max(die.width, die.height)];
  return short >= leastSides[0] - 1e-6 && long >= leastSides[1] - 1e-6;
}
