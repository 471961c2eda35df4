import { readMeasure } from '../quantity/measure.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { leaf, line, list, mapping, millimetres, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';
import type { BrandColor } from './record-blocks.ts';

function readColor(text: string): Reading<BrandColor> {
  const written = text.trim();
  const hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(written);
  if (hex) {
    const [red, green, blue] = hex.slice(1).map(pair => Number.parseInt(pair, 16));
    return reads({ kind: 'rgb', parts: [red!, green!, blue!], written });
  }
  const spot = /^spot\s*\(\s*([^,()]{1,60}?)\s*,\s*(cmyk\s*\(.*\))\s*\)$/i.exec(written);
  if (spot) {
    const looks = readColor(spot[2]!);
    if (looks.ok && looks.value.kind === 'cmyk')
      return reads({ kind: 'spot', name: spot[1]!, parts: looks.value.parts, written });
  }
  const parts = /^cmyk\s*\(?\s*([\d.]+)[\s,]+([\d.]+)[\s,]+([\d.]+)[\s,]+([\d.]+)\s*\)?$/i.exec(written);
  if (parts) {
    const [cyan, magenta, yellow, black] = parts.slice(1).map(Number);
    if ([cyan!, magenta!, yellow!, black!].every(part => part >= 0 && part <= 100))
      return reads({ kind: 'cmyk', parts: [cyan!, magenta!, yellow!, black!], written });
  }
  return misreads(
    `\`${text}\` is not a color`,
    'write cmyk(80, 20, 60, 10) in percent, spot(Name of the ink, cmyk(80, 20, 60, 10)), or "#0a5c36" in quotes',
  );
}

/** The maker's look. */
export const brandSchema = mapping(
  {
    color: z.optional(leaf(readColor, 'a color', 'cmyk(80, 20, 60, 10)', 'Color of the brand band')),
    logo: z.optional(line('artwork/logo.svg', 'Path of the logo, relative to this file: SVG, PDF or PNG')),
    'logo-width': z.optional(
      millimetres(
        '20 mm',
        'Width that is kept for the logo beside the name; where it is left out, the logo takes what the name leaves free',
      ),
    ),
  },
  "The maker's look: color and logo",
);

const place = (example: string, description: string) =>
  leaf(
    text => {
      const length = text.trim() === '0' ? readMeasure('0 mm', 'length') : readMeasure(text, 'length');
      if (!length.ok) return length;
      const { value } = length.value.base;
      return value < 0 ? misreads(`\`${text}\` is outside of the label`) : reads(value);
    },
    'a length with its unit',
    example,
    description,
  );

const pageNumber = leaf(
  text => {
    const page = /^[1-9]\d{0,4}$/.test(text.trim()) ? Number(text) : 0;
    return page > 0
      ? reads(page)
      : misreads(`\`${text}\` is not the number of a page`, 'write a whole number from 1');
  },
  'the number of a page',
  '1',
  'Page of a PDF that has several',
);

/** Artwork under the label, with the areas that are printed on. */
export const artworkSchema = mapping(
  {
    file: line('artwork/front.pdf', 'Path of the artwork, relative to this file: PDF, PNG or SVG'),
    page: z.optional(pageNumber),
    pack: z.optional(line('bottle-946', 'Pack that it is for; every pack where it is left out')),
    for: z.optional(
      list(
        oneOf(['us-workplace', 'us-consumer', 'eu-supply'], 'Purpose of a label'),
        '[us-consumer]',
        'Labels that it is for; every label of a pack where it is left out',
      ),
    ),
    areas: list(
      mapping(
        {
          holds: oneOf(
            ['regulated', 'identity', 'directions', 'bar-code', 'net-contents', 'lot'],
            'What is printed there',
          ),
          left: place('4 mm', 'Distance from the left edge of the trim'),
          bottom: place('4 mm', 'Distance from the lower edge of the trim'),
          width: millimetres('60 mm', 'Width'),
          height: millimetres('80 mm', 'Height'),
          ground: z.optional(
            oneOf(
              ['white', 'artwork'],
              'What its text stands on: white where it is left out; the regulated text, bars and the window for the lot always',
            ),
          ),
        },
        'An area of the artwork that stays free',
      ),
      '[{holds: regulated, left: 4 mm, bottom: 4 mm, width: 60 mm, height: 80 mm}]',
      'Areas that the label prints on',
    ).check(z.minLength(1)),
  },
  'Artwork of the maker under declared areas',
);
