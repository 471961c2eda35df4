import { RESERVED_INKS } from '../quantity/ink-names.ts';
import { readMeasure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, reads } from '../quantity/reading.ts';
import { leaf, list, mapping, millimetres, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';

/** Symbols that a pack may carry; the two last hold a GS1 Digital Link. */
export const packSymbols = ['UPC-A', 'UPC-E', 'EAN-13', 'EAN-8', 'QR', 'Data Matrix'] as const;

const magnification = leaf(
  text => {
    const number = readNumber(text.replace(/\s*%\s*$/, ''));
    if (!number.ok) return number;
    const { value } = number.value;
    return value >= 80 && value <= 200
      ? reads(value)
      : misreads(
          `\`${text}\` is outside of 80 to 200 %`,
          'write a magnification that GS1 allows, such as 100 %',
        );
  },
  'a percentage from 80 to 200',
  '100 %',
  'Magnification of EAN and UPC; the largest from 80 to 100 % that fits where it is left out',
);

/** How the GTIN of a pack is printed. */
export const barCodeSchema = mapping(
  {
    symbol: z.optional(oneOf(packSymbols, 'Symbol; the usual one of the GTIN where it is left out')),
    magnification: z.optional(magnification),
    height: z.optional(millimetres('15 mm', 'Height of bars that are cut short; that is warned of')),
    domain: z.optional(
      leaf(
        text =>
          /^https?:\/\/[a-z0-9.-]+(?::\d+)?$/i.test(text.trim())
            ? reads(text.trim())
            : misreads(
                `\`${text}\` is not a domain`,
                'write it with its scheme, such as https://id.example.com',
              ),
        'a domain with its scheme',
        'https://id.example.com',
        'Domain of the GS1 Digital Link; that of GS1 where it is left out',
      ),
    ),
  },
  'How the GTIN is printed',
);

/** A distance from an edge of the label, 0 among them. */
export const distance = (example: string, description: string) =>
  leaf(
    text => {
      const length = readMeasure(text.trim() === '0' ? '0 mm' : text, 'length');
      if (!length.ok) return length;
      const { value } = length.value.base;
      return value < 0 ? misreads(`\`${text}\` is outside of the label`) : reads(value);
    },
    'a length with its unit',
    example,
    description,
  );

const from = {
  left: distance('4 mm', 'Distance from the left edge of the label'),
  bottom: distance('60 mm', 'Distance from the lower edge of the label'),
};

/** Red frames that blank stock brings with it. */
export const redFramesSchema = list(
  mapping(
    { ...from, side: millimetres('16 mm', 'Outer side of the red square') },
    'A preprinted red square set at a point: where its left and its lower corner are',
  ),
  '[{left: 5 mm, bottom: 60 mm, side: 16 mm}]',
  "Red frames preprinted on the stock of the shop's own printer, in the order in which they are filled",
).check(z.minLength(1));

/** A mark that the eye of the labeler looks for. */
export const eyeMarkSchema = mapping(
  { ...from, width: millimetres('6 mm', 'Width'), height: millimetres('3 mm', 'Height') },
  'Solid black mark that the eye of the labeler looks for; the layout keeps clear of it',
);

const inkName = leaf(
  text => {
    const name = text.trim();
    if (name === '' || name.length > 60)
      return misreads('it names no ink', 'write a name of 1 to 60 characters');
    return RESERVED_INKS.includes(name)
      ? misreads(`\`${name}\` is no spot ink`, 'take the name that the converter uses, such as CutContour')
      : reads(name);
  },
  'the name of a spot ink',
  'CutContour',
  'Name of the spot ink of the cut line, as the converter wants it',
);

/** How the converter prints and cuts. */
export const pressSchema = mapping(
  {
    'die-ink': z.optional(inkName),
    cut: z.optional(oneOf(['through', 'kiss'], 'Whether the cut goes through the liner or not')),
    'bar-width-reduction': z.optional(
      distance('0.02 mm', 'Taken off every bar to make up for the gain of the press; measured on it'),
    ),
    safe: z.optional(distance('1.6 mm', 'Distance that ink keeps from the cut')),
    bleed: z.optional(distance('3 mm', 'Artwork beyond the cut')),
  },
  'How the converter of the labels prints and cuts',
);
