import type { OutlineCommand } from './glyph-run.ts';

/** A command of a glyph outline as the font library gives it, in font units. */
interface FontCommand {
  readonly command: string;
  readonly args: readonly number[];
}

/**
 * Outlines with their quadratic curves as cubic ones.
 * @param dx added to each abscissa, in thousandths of the em
 * @param perMille thousandths of the em in a font unit
 */
export function cubic(
  commands: readonly FontCommand[],
  dx: number,
  perMille: number,
): readonly OutlineCommand[] {
  let [x, y] = [0, 0];
  return commands.map(({ command, args }): OutlineCommand => {
    const points = args.map((value, at) => value * perMille + (at % 2 === 0 ? dx : 0));
    const [fromX, fromY] = [x, y];
    [x, y] = [points.at(-2) ?? x, points.at(-1) ?? y];
    switch (command) {
      case 'moveTo':
        return ['M', ...points];
      case 'lineTo':
        return ['L', ...points];
      case 'quadraticCurveTo': {
        const [cx = 0, cy = 0] = points;
        const third = (end: number, control: number) => end + (2 / 3) * (control - end);
        return ['C', third(fromX, cx), third(fromY, cy), third(x, cx), third(y, cy), x, y];
      }
      case 'bezierCurveTo':
        return ['C', ...points];
      default:
        return ['Z'];
    }
  });
}
