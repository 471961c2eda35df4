import { readGtin } from '../quantity/check-digit.ts';
import { readMeasure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, reads } from '../quantity/reading.ts';
import { across } from './_cross.ts';
import { either, leaf, line, mapping, millimetres, oneOf, truth } from './_leaf.ts';
import * as z from './_zod.ts';
import { dilutionSchema } from './dilution-schema.ts';
import { dieSchema } from './label-schema.ts';
import { barCodeSchema } from './print-schema.ts';
import { smallContainerSchema, wholeSmallContainer } from './small-container-schema.ts';
import { smallPackageSchema } from './small-package-schema.ts';

/** A name that may become part of a file name. */
export const fileNamePart = (what: string, example: string, description: string) =>
  leaf(
    text => {
      const name = text.trim();
      if (name.length > 64) return misreads(`${what} has ${name.length} characters; 64 are possible`);
      if (!/^[\p{L}\p{N}](?:[\p{L}\p{N}._ -]*[\p{L}\p{N}])?$/u.test(name))
        return misreads(
          `${what} \`${name}\` cannot be part of a file name`,
          'use letters, digits, hyphen, point, underscore and space; begin and end with a letter or digit',
        );
      return reads(name);
    },
    'a text',
    example,
    description,
  );

const gtin = (description: string) =>
  z.optional(leaf(readGtin, 'a GTIN in quotes', '"0614141000418"', description));

const tare = (example: string, description: string) =>
  z.optional(
    leaf(
      text => {
        const mass = readMeasure(text, 'mass');
        return mass.ok && mass.value.base.value < 0 ? misreads(`\`${text}\` is negative`) : mass;
      },
      'a weight',
      example,
      description,
    ),
  );

const wholeNumber = (example: string, description: string) =>
  leaf(
    text => {
      const number = readNumber(text);
      if (!number.ok) return number;
      const { value } = number.value;
      return Number.isInteger(value) && value >= 1 && value <= 100_000
        ? reads(value)
        : misreads(`\`${text}\` is not a count`, 'write a whole number from 1');
    },
    'a whole number',
    example,
    description,
  );

/** One pack in which the product is sold. */
export const packSchema = across(
  mapping(
    {
      id: fileNamePart('pack', 'bottle-946', 'Short name of the pack, for the command line and file names'),
      contents: leaf(
        text => {
          const contents = readMeasure(text, 'volume', 'mass');
          return contents.ok && contents.value.base.value <= 0
            ? misreads(`\`${text}\` is not an amount`)
            : contents;
        },
        'an amount with its unit',
        '946 mL',
        'Net contents',
      ),
      gtin: gtin('GTIN of the pack'),
      'bar-code': z.optional(barCodeSchema),
      container: z.optional(
        mapping(
          {
            shape: oneOf(['cylinder', 'rectangular', 'other'], 'Shape of the container'),
            diameter: z.optional(millimetres('88 mm', 'Diameter of a cylinder')),
            'diameter-at-top': z.optional(
              millimetres('84 mm', 'Diameter at the top of the label panel, where the container tapers'),
            ),
            'label-panel-height': z.optional(
              millimetres('150 mm', 'Height of the straight part that takes a label'),
            ),
            'child-resistant': z.optional(truth('Whether the closure is child-resistant')),
            width: z.optional(millimetres('90 mm', 'Width of a container with flat sides')),
            depth: z.optional(millimetres('60 mm', 'Depth of a container with flat sides')),
            height: z.optional(millimetres('240 mm', 'Height of the whole container')),
            capacity: z.optional(
              leaf(
                text => {
                  const capacity = readMeasure(text, 'volume');
                  return capacity.ok && capacity.value.base.value <= 0
                    ? misreads(`\`${text}\` is not a capacity`)
                    : capacity;
                },
                'a volume',
                '1 L',
                'Capacity, where it is not that of the contents',
              ),
            ),
            tare: tare('62 g', 'Weight of the empty container with its closure'),
            material: z.optional(line('HDPE', 'What it is made of', 100)),
            closure: z.optional(line('trigger sprayer', 'Closure', 100)),
            'tactile-warning': z.optional(truth('Whether it carries a tactile warning of danger')),
          },
          'The container',
        ),
      ),
      label: z.optional(dieSchema),
      roll: z.optional(
        mapping(
          {
            core: millimetres('76 mm', 'Inner diameter of the core'),
            'max-diameter': millimetres('250 mm', 'Largest outer diameter that the labeler takes'),
            gap: millimetres('3 mm', 'Gap between labels'),
            'liner-and-face': millimetres('0.15 mm', 'Thickness of liner and face together'),
            across: z.optional(wholeNumber('1', 'Labels side by side')),
            labels: z.optional(wholeNumber('1500', 'Labels on a roll, as ordered')),
            unwind: leaf(
              text =>
                /^[1-8]$/.test(text.trim())
                  ? reads(text.trim())
                  : misreads(`\`${text}\` is not an unwind direction`, 'write a number from 1 to 8'),
              'a number from 1 to 8',
              '4',
              'Unwind direction',
            ),
          },
          'The roll of labels',
        ),
      ),
      'lot-window': z.optional(
        either(
          [
            oneOf(['none'], 'The label has no window: lot and date stand elsewhere on the pack'),
            mapping(
              {
                width: millimetres('30 mm', 'Width of the window for the lot code'),
                height: millimetres('8 mm', 'Height of the window for the lot code'),
              },
              'Space on the label that the coder prints lot and date into',
            ),
          ],
          'a width and a height, or none',
          '{width: 30 mm, height: 8 mm}',
          'Space on the label that the coder prints lot and date into; none where they stand elsewhere',
        ),
      ),
      'small-container': z.optional(smallContainerSchema),
      'eu-small-package': z.optional(smallPackageSchema),
      case: z.optional(
        mapping(
          {
            count: wholeNumber('20', 'Packs in a case'),
            gtin: gtin('GTIN of the case'),
            tare: tare('0.9 kg', 'Weight of the empty case'),
            length: z.optional(millimetres('400 mm', 'Outer length')),
            width: z.optional(millimetres('300 mm', 'Outer width')),
            height: z.optional(millimetres('260 mm', 'Outer height')),
            'per-layer': z.optional(wholeNumber('8', 'Cases in a layer of a pallet')),
            layers: z.optional(wholeNumber('4', 'Layers on a pallet')),
            printer: z.optional(
              oneOf(
                ['203', '300', '600'],
                'Dots per inch of the printer of its label; 203 where it is left out',
              ),
            ),
          },
          'The shipping case',
        ),
      ),
      dilution: z.optional(dilutionSchema),
    },
    'A pack in which the product is sold',
  ),
  wholeSmallContainer,
);
