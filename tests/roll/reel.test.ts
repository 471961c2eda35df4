import { describe, expect, it } from 'vitest';
import type { Pack } from '../../src/record/product-record.ts';
import { bottleLabel, labelOnBottle, usualEnds } from '../../src/roll/bottle.ts';
import {
  fullRoll,
  labelOrder,
  linerWidth,
  minutesFor,
  pitchOf,
  usualSpeed,
  woundRoll,
} from '../../src/roll/reel.ts';
import { reelFacts } from '../../src/roll/reel-facts.ts';
import { unwinding } from '../../src/roll/unwind.ts';
import { duration } from '../../src/words/en/lengths.ts';

const web = {
  label: { width: 80, height: 120 },
  gap: 3,
  thickness: 0.16,
  density: 1,
  unwinding: unwinding(null, 'right', 'out'),
  across: 1,
};
const limits = { core: 76, coreWall: 5, maxDiameter: 300 };

describe('a roll', () => {
  it('holds about 4,900 labels of pitch 83 mm at 300 mm', () => {
    // pi (300^2 - 86^2) / (4 * 0.16 * 83) = 4,886 (arithmetic by hand).
    expect(pitchOf(web)).toBe(83);
    const { labels, diameter } = fullRoll(web, limits);
    expect(labels).toBe(Math.floor((Math.PI * (300 ** 2 - 86 ** 2)) / (4 * 0.16 * 83)));
    expect(labels).toBeGreaterThan(4850);
    expect(labels).toBeLessThan(4950);
    expect(diameter).toBeLessThanOrEqual(300);
    expect(woundRoll(labels + 1, web, limits).diameter).toBeGreaterThan(300);
  });

  it('holds as many times more where labels lie side by side', () => {
    const two = { ...web, across: 2 };
    expect(fullRoll(two, limits).labels).toBe(2 * fullRoll(web, limits).labels);
    // Two labels of 120 mm, a gap of 3 mm, 1/16 in on both sides.
    expect(linerWidth(two)).toBeCloseTo(243 + 25.4 / 8, 1);
    expect(woundRoll(3, two, limits).metres).toBeCloseTo(0.166, 9);
  });

  it('turns the label by the edge that leads', () => {
    expect(pitchOf({ ...web, unwinding: unwinding(null, 'top', 'out') })).toBe(123);
  });
});

describe('an order', () => {
  it('adds spoilage and threading, in whole rolls', () => {
    const full = fullRoll(web, limits).labels;
    const order = labelOrder(10_000, web, limits, { spoilagePercent: 3, threadingMetres: 2 })!;
    // 3 % of 10,000 are 300; 2 m are 25 labels of 83 mm; 10,300 need three rolls.
    expect(order).toMatchObject({ rolls: 3, threading: 75, labels: 10_375, fullRolls: 2 });
    expect(order.fullRolls * full + order.rest).toBe(order.labels);
    expect(order.metres).toBeCloseTo(10_375 * 0.083, 9);
  });

  it('gives every roll enough for its share', () => {
    for (const wanted of [1, 4860, 4861, 4862, 9722, 100_000]) {
      const order = labelOrder(wanted, web, limits, { spoilagePercent: 0, threadingMetres: 2 })!;
      expect(order.labels - order.threading).toBe(wanted);
      expect(order.rest).toBeLessThan(fullRoll(web, limits).labels);
    }
  });

  it('is none where no label fits', () => {
    expect(
      labelOrder(10, web, { ...limits, maxDiameter: 86 }, { spoilagePercent: 0, threadingMetres: 0 }),
    ).toBeNull();
  });
});

describe('time', () => {
  it('empties a conveyor of 200 bottles in half an hour', () => {
    // A conveyor of about 200 bottles runs empty in about half an hour (common practice, no source).
    expect(duration(minutesFor(200, usualSpeed))).toBe('30 min');
    expect(duration(minutesFor(4000, 40))).toBe('1 h 40 min');
  });
});

describe('a bottle', () => {
  it('is pi times its diameter round', () => {
    const bottle = bottleLabel(88, 150, usualEnds('overlap'));
    expect(bottle.circumference).toBeCloseTo(276.46, 2);
    // Overlap of 1/8 to 1/4 in, label 1/8 in lower than the straight panel (pages of label printers).
    expect(bottle.wrap.width - bottle.circumference).toBeGreaterThanOrEqual(3);
    expect(bottle.wrap.width - bottle.circumference).toBeLessThanOrEqual(6.35);
    expect(bottle.height).toBeCloseTo(150 - 25.4 / 8, 1);
    expect(bottleLabel(88, null, { kind: 'gap', by: 4 }).wrap.width).toBeCloseTo(272.46, 2);
  });

  it('tells of a label that does not sit on it', () => {
    const bottle = bottleLabel(88, 150, usualEnds('overlap'));
    const problems = (width: number, height: number) =>
      labelOnBottle({ width, height }, bottle, 150).problems;
    expect(problems(130, 120)).toEqual([]);
    expect(problems(130, 151)).toEqual(['taller-than-panel']);
    expect(problems(130, 148)).toEqual(['close-to-panel']);
    expect(problems(278, 120)).toEqual(['thin-overlap']);
    expect(problems(290, 120)).toEqual(['wider-than-wrap']);
  });
});

describe('unwinding', () => {
  it('is not told by a number where charts disagree', () => {
    expect(unwinding('4', null, null)).toMatchObject({ wound: 'out', leadingEdge: null, along: 'width' });
    expect(unwinding('5', null, null)).toMatchObject({ wound: 'in', leadingEdge: null, along: 'height' });
    expect(unwinding('4', 'left', null)).toMatchObject({ leadingEdge: 'left', readings: [] });
  });
});

describe('facts of a pack', () => {
  const pack: Pack = {
    id: 'bottle-946',
    contents: { value: undefined as never, unit: 'mL', written: '946 mL' },
    gtin: null,
    container: null,
    label: null,
    roll: null,
    case: null,
    lotWindow: null,
    at: { file: 'x.yaml' },
  };
  const question = {
    labels: 100,
    spoilagePercent: null,
    speed: null,
    ends: usualEnds('overlap'),
    leadingEdge: null,
    wound: null,
    grammage: null,
  };

  it('say what the record lacks', () => {
    expect(reelFacts(pack, question)).toMatchObject({
      roll: null,
      problems: ['no-cylinder', 'no-label', 'no-roll'],
      taken: [],
    });
  });

  it('name everything that practice gave', () => {
    const whole = {
      ...pack,
      label: {
        width: 80,
        height: 120,
        cornerRadius: 3,
        shape: 'rectangle' as const,
        overlap: 0,
        panels: 1,
        unit: 'mm' as const,
      },
      roll: { core: 76, maxDiameter: 300, gap: 3, linerAndFace: 0.16, unwind: '3' },
    };
    const facts = reelFacts(whole, question);
    expect(facts.taken.map(({ what }) => what)).toEqual([
      'density',
      'core-wall',
      'liner-margin',
      'spoilage',
      'threading',
      'speed',
    ]);
    expect(facts.taken.every(({ source }) => source !== '')).toBe(true);
    const given = reelFacts(whole, { ...question, spoilagePercent: 2, speed: 30, grammage: 160 });
    expect(given.taken.map(({ what }) => what)).toEqual(['core-wall', 'liner-margin', 'threading']);
    // 160 g/m2 at 0.16 mm is 1 g/cm3 (arithmetic).
    expect(given.roll!.full.kilograms).toBeCloseTo(facts.roll!.full.kilograms, 9);
  });
});
