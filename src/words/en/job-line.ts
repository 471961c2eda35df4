import { type LengthUnit, sizeText } from '../../quantity/length-text.ts';

/** What the line beside the label tells the press, the technical inks by their names. */
export const jobLine = (
  {
    die,
    unit = 'mm',
  }: { readonly die: { readonly width: number; readonly height: number }; readonly unit?: LengthUnit },
  title: string,
  technical: readonly string[],
): string =>
  [title, `die ${sizeText(die.width, die.height, unit)}`, `do not print: ${technical.join(', ')}`].join(
    '  |  ',
  );
