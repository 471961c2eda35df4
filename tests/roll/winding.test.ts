import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turns, webLength, webMass, woundDiameter } from '../../src/roll/winding.ts';

describe('a wound web', () => {
  it('has the side of a ring: the area is length times thickness', () => {
    const outer = woundDiameter(86, 409_000, 0.16);
    expect((Math.PI / 4) * (outer ** 2 - 86 ** 2)).toBeCloseTo(409_000 * 0.16, 6);
  });

  it('agrees with the length of the Archimedean spiral', () => {
    // Integral of sqrt(r^2 + b^2) over the angle, with b the rise of the radius a radian (closed form of any table of
    // integrals): the middle line of the web, half a thickness out of the core.
    const [core, outer, t] = [86, 300, 0.16];
    const b = t / (2 * Math.PI);
    const along = (theta: number) =>
      (b / 2) * (theta * Math.sqrt(1 + theta ** 2) + Math.log(theta + Math.sqrt(1 + theta ** 2)));
    // From the middle of the first turn's thickness to that of the last.
    const spiral = along(outer / 2 / b) - along(core / 2 / b);
    expect(webLength(core, outer, t) / spiral).toBeCloseTo(1, 6);
  });

  it('agrees with a sum over single turns', () => {
    const [core, outer, t] = [86, 250, 0.15];
    const count = turns(core, outer, t);
    let sum = 0;
    for (let turn = 0; turn < Math.floor(count); turn += 1) sum += Math.PI * (core + (2 * turn + 1) * t);
    expect(webLength(core, outer, t) / sum).toBeCloseTo(1, 2);
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 1e6, noNaN: true }),
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        (core, length, t) => {
          const back = webLength(core, woundDiameter(core, length, t), t);
          expect(Math.abs(back - length)).toBeLessThan(1e-6 * length + 1e-6);
        },
      ),
    );
  });

  it('holds nothing where the core is as large as the roll', () => {
    expect([webLength(76, 76, 0.15), webLength(80, 76, 0.15), turns(80, 76, 0.15)]).toEqual([0, 0, 0]);
  });

  it('weighs its volume times its density', () => {
    // 100 m of 100 mm and 0.15 mm are 1.5 litres (arithmetic).
    expect(webMass(100_000, 100, 0.15, 1)).toBeCloseTo(1.5, 12);
  });
});
