import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnWidths } from '../../../src/layout/flow/column-widths.ts';
import { besides, paginate } from '../../../src/layout/flow/paginate.ts';
import { type Strip, strip, totalHeight } from '../../../src/layout/flow/strip.ts';

const heights = (pages: ReturnType<typeof paginate>) =>
  pages.map(page => page.map(({ strip: { height } }) => height));

describe('page breaks', () => {
  it('fills a page and drops the space at the head of the next', () => {
    const strips = [strip(40), strip(40, [], { before: 10 }), strip(40, [], { before: 10 })];
    const pages = paginate(strips, 100);
    expect(heights(pages)).toEqual([[40, 40], [40]]);
    expect(pages[0]![1]!.y).toBe(50);
    expect(pages[1]![0]!.y).toBe(0);
  });

  it('keeps a heading with what follows', () => {
    const strips = [strip(50), strip(30), strip(10, [], { keep: true }), strip(20)];
    expect(heights(paginate(strips, 95))).toEqual([
      [50, 30],
      [10, 20],
    ]);
  });

  it('breaks a run that no page can hold', () => {
    const strips = Array.from({ length: 5 }, () => strip(40, [], { keep: true }));
    expect(heights(paginate(strips, 100))).toEqual([[40, 40], [40, 40], [40]]);
  });

  it('repeats the head of a table where a page begins with one of its rows', () => {
    const head = strip(10);
    const rows = Array.from({ length: 4 }, (_, at) => strip(30, [], { repeat: at === 0 ? null : head }));
    expect(heights(paginate(rows, 70))).toEqual([
      [30, 30],
      [10, 30, 30],
    ]);
  });

  it('places every strip once, in order and within the page', () => {
    const strips = fc.array(
      fc.record({
        height: fc.integer({ min: 1, max: 60 }),
        before: fc.integer({ min: 0, max: 9 }),
        keep: fc.boolean(),
      }),
      { minLength: 1, maxLength: 60 },
    );
    fc.assert(
      fc.property(strips, parts => {
        const all = parts.map(part => strip(part.height, [], part));
        const pages = paginate(all, 100);
        expect(pages.flat().map(placed => placed.strip)).toEqual(all);
        for (const { strip: part, y } of pages.flat())
          expect(y + part.height).toBeLessThanOrEqual(100 + 1e-6);
      }),
    );
  });
});

describe('a heading beside its text', () => {
  it('leaves room for the taller of the two and keeps the lines beside it together', () => {
    const tall = besides(strip(30), [strip(10), strip(5)]);
    expect(totalHeight(tall)).toBe(30);
    expect(tall.map(({ keep }) => keep)).toEqual([true, true, false]);
    const low = besides(strip(8), [strip(10), strip(10)] as Strip[]);
    expect(totalHeight(low)).toBe(20);
    expect(low.map(({ keep }) => keep)).toEqual([false, false]);
  });
});

describe('column widths', () => {
  it('fill the room and give every column its longest word where that is possible', () => {
    const need = fc.record({
      least: fc.integer({ min: 1, max: 20 }),
      more: fc.integer({ min: 0, max: 300 }),
    });
    fc.assert(
      fc.property(
        fc.array(need, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 100, max: 200 }),
        (needs, room) => {
          const widths = columnWidths(
            needs.map(({ least, more }) => ({ least, natural: least + more })),
            room,
          );
          expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(room, 6);
          for (const [at, { least }] of needs.entries())
            expect(widths[at]!).toBeGreaterThanOrEqual(least - 1e-9);
        },
      ),
    );
  });

  it('shrinks all columns alike where even the longest words do not fit', () => {
    expect(
      columnWidths(
        [
          { least: 60, natural: 60 },
          { least: 40, natural: 40 },
        ],
        50,
      ),
    ).toEqual([30, 20]);
  });
});
