import { describe, expect, it } from 'vitest';
import { chooseSize, type Printing } from '../../src/barcode/choose-size.ts';
import { encodeSymbol } from '../../src/barcode/symbols.ts';
import { sizeFindings } from '../../src/words/en/bar-code.ts';

const ean = await encodeSymbol('EAN-13', '9521234567899', 'retail');
const press: Printing = { kind: 'press' };
const dots: Printing = { kind: 'dots', dpi: 203.2 };

// Sizes with quiet zones and digits at 80, 100 and 200 %: size tables of GS1 Ireland and GS1 Bulgaria.
const at80 = { width: 29.83, height: 20.73 };
const at100 = { width: 37.29, height: 25.93 };

describe('size of a symbol', () => {
  it('is the target where there is room', () => {
    const chosen = chooseSize(ean, { printing: press, room: { width: 60, height: 60 } })!;
    expect(chosen.geometry.magnification).toBeCloseTo(100, 6);
    expect(chosen).toMatchObject({ standing: 'fence', facts: [] });
  });

  it('is the magnification asked for', () => {
    const chosen = chooseSize(ean, { printing: press, magnification: 150 })!;
    expect(chosen.geometry.width).toBeCloseTo(55.94, 1);
    expect(chooseSize(ean, { printing: press, magnification: 79 })).toBeNull();
  });

  it('goes down with the room, to 80 % and no further', () => {
    const small = chooseSize(ean, { printing: press, room: { width: at80.width + 0.01, height: 40 } })!;
    expect(small.geometry.magnification).toBeCloseTo(80, 1);
    expect(chooseSize(ean, { printing: press, room: { width: at80.width - 0.2, height: 25 } })).toBeNull();
  });

  it('is cut short where that is allowed and nothing else fits, and that is told', () => {
    const room = { width: 40, height: 15 };
    expect(chooseSize(ean, { printing: press, room, standing: 'fence' })).toBeNull();
    const cut = chooseSize(ean, { printing: press, room, standing: 'fence', truncate: true })!;
    expect(cut.geometry.height).toBeLessThanOrEqual(15 + 1e-9);
    expect(cut.facts).toMatchObject([{ id: 'truncated', beyondAdvice: true }]);
    expect(sizeFindings(cut.facts, 'EAN-13')).toMatchObject([
      { code: 'bar-code-truncated', severity: 'warning' },
    ]);
    const onDots = chooseSize(ean, {
      printing: dots,
      room: { width: 50, height: 15 },
      standing: 'fence',
      truncate: true,
    })!;
    expect(onDots.geometry.height).toBeLessThanOrEqual(15 + 1e-9);
  });

  it('shrinks rather than cut', () => {
    const room = { width: 60, height: at100.height - 2 };
    const chosen = chooseSize(ean, { printing: press, room, truncate: true })!;
    expect(chosen.facts).toEqual([]);
    expect(chosen.geometry.height).toBeLessThanOrEqual(room.height + 1e-9);
    expect(chosen.geometry.magnification).toBeLessThan(100);
  });

  it('stands upright, smaller, or turned, as the bottle is wide', () => {
    const at = (diameter: number) => {
      const { standing, geometry, facts } = chooseSize(ean, { printing: press, diameter })!;
      return [standing, Math.round(geometry.magnification), facts.map(({ id }) => id)];
    };
    // 60 mm at 100 %, 48 mm at 80 % (6/pi times the width of the bars).
    expect(at(60)).toEqual(['fence', 100, []]);
    expect(at(54)).toEqual(['fence', 90, []]);
    expect(at(47)).toEqual(['ladder', 100, ['turned']]);
  });

  it('turns in a tall narrow room', () => {
    const chosen = chooseSize(ean, { printing: press, room: { width: 27, height: 40 } })!;
    expect(chosen.standing).toBe('ladder');
    expect(chosen.geometry.width).toBeLessThanOrEqual(40);
  });

  it('keeps to whole dots on a printer', () => {
    const chosen = chooseSize(ean, { printing: dots, room: { width: 60, height: 60 } })!;
    // Nearest to 0.33 mm in eighths of a millimetre: three (0.375 mm).
    expect(chosen.geometry.x).toBeCloseTo(0.375, 9);
  });
});
