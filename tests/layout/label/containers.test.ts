import { beforeAll, describe, expect, it } from 'vitest';
import { labelDocument } from '../../../src/document/label.ts';
import { loadTemplate } from '../../../src/document/template.ts';
import { readTemplate } from '../../../src/environment/package-files.ts';
import { taperOf } from '../../../src/layout/die/taper.ts';
import { tryLabel } from '../../../src/layout/label/layout-label.ts';
import type { Pack } from '../../../src/record/product-record.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { corrosive, sampleInput, sampleStock } from './sample.ts';
import { CONTENTS } from './trials.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const trial = async (
  options: Parameters<typeof sampleInput>[0],
  change: Partial<Pack>,
  [width, height]: readonly [number, number],
) => {
  const input = sampleInput(options);
  const model = labelDocument(
    { ...input, pack: { ...input.pack, ...change } },
    await loadTemplate(readTemplate, 'labels/us-workplace.hbs'),
  );
  return tryLabel(model, fonts, await sampleStock(width, height));
};
const rolesOf = ({ layout }: Awaited<ReturnType<typeof trial>>) => layout?.areas.map(({ role }) => role);
const textOf = ({ layout }: Awaited<ReturnType<typeof trial>>) =>
  layout!.document.frames[0]!.items.map(item => (item.kind === 'text' ? item.run.text : '')).join(' ');

describe('a small label', () => {
  it('has no window where lot and date stand elsewhere; without a hazard it fits 60 x 40 mm with its bars', async () => {
    const options = { ...CONTENTS['no hazard']!, diameter: null };
    const found = await trial(options, { lotWindow: 'none' }, [60, 40]);
    expect(rolesOf(found)).toContain('bar-code');
    expect(rolesOf(found)).not.toContain('lot-window');
    expect(rolesOf(await trial(options, {}, [90, 60]))).toContain('lot-window');
  });

  // 29 CFR 1910.1200(f)(12)(ii)(A) to (E).
  it('of a small container carries what the law asks and says where the rest is', async () => {
    const smallContainer = { part: 'container', reason: 'a tag would foul the dropper' } as const;
    const options = { elements: corrosive, gtin: null, diameter: null };
    const text = textOf(await trial(options, { smallContainer, lotWindow: 'none' }, [60, 60]));
    for (const part of [
      'Kerbstone',
      'Danger',
      'Quarry Lane Products, Inc.',
      '+1 555 010 0100',
      'immediate outer package',
    ])
      expect(text).toContain(part);
    expect(text).not.toContain('Causes severe');
    expect(text).not.toContain('Prevention');
    const outer = textOf(
      await trial(options, { smallContainer: { part: 'outer-package', reason: null } }, [130, 120]),
    );
    // (f)(12)(iv)(A) and (B)
    for (const part of ['Causes severe', 'must be stored']) expect(outer).toContain(part);
  });
});

describe('a container that tapers', () => {
  // Frustum of a cone rolled out: all points of an edge at one distance from the apex, arcs as long as the circles.
  it('has a ring segment whose arcs are as long as its circles', () => {
    const cone = { foot: 90, top: 80, height: 120 };
    const slant = Math.hypot(120, 5);
    const { arc, difference } = taperOf(cone, { width: Math.PI * 90, height: slant })!;
    const angle = (arc.degrees * Math.PI) / 180;
    expect(arc.outer * angle).toBeCloseTo(Math.PI * 90, 6);
    expect(arc.inner * angle).toBeCloseTo(Math.PI * 80, 6);
    expect(difference).toBeCloseTo(Math.PI * 10, 6);
  });

  const bottle = (diameterAtTop: number): Pack['container'] => ({
    shape: 'cylinder',
    diameter: 88,
    diameterAtTop,
    labelPanelHeight: 150,
    childResistant: null,
  });

  it('takes a straight label within the limit, and else is refused with a width that does', async () => {
    const options = { elements: CONTENTS['one hazard']!.elements! };
    expect((await trial(options, { container: bottle(87.5) }, [130, 120])).layout).not.toBeNull();
    const refused = await trial(options, { container: bottle(80) }, [130, 120]);
    expect(refused.layout).toBeNull();
    expect(refused.diagnostics[0]).toMatchObject({ code: 'container-tapers', severity: 'error' });
    const height = Number(/([\d.]+) mm of height/.exec(refused.diagnostics[0]!.hint!)![1]);
    const lower = await trial(options, { container: bottle(80) }, [130, height]);
    expect(lower.diagnostics.map(({ code }) => code)).not.toContain('container-tapers');
  });

  // The apex of the cone by its half angle (similar triangles), and the edges of a flat label as chords of one width:
  // a straight label rolled flat is a rectangle, the place on the container a segment of a ring.
  it.each([
    [88, 80, 150, 130, 120],
    [88, 84, 150, 130, 120],
    [60, 90, 110, 100, 60],
    [120, 100, 200, 250, 150],
  ])(
    'is refused with figures that geometry gives: %s to %s over %s mm, %s x %s',
    async (foot, top, tall, wide, high) => {
      const container = { ...bottle(top)!, diameter: foot, labelPanelHeight: tall };
      const options = { elements: CONTENTS['one hazard']!.elements! };
      const { diagnostics } = await trial(options, { container }, [wide, high]);
      const [finding] = diagnostics;
      expect(finding).toMatchObject({ code: 'container-tapers' });
      const figure = (pattern: RegExp) => Number(pattern.exec(`${finding!.message} ${finding!.hint}`)![1]);
      const halfAngle = Math.atan2(Math.abs(foot - top) / 2, tall);
      const outer = Math.max(foot, top) / 2 / Math.sin(halfAngle);
      const turn = wide / outer;
      const folds = (width: number, height: number) => width - (width / outer) * (outer - height);
      expect(figure(/outer radius of ([\d.]+) mm/)).toBeCloseTo(outer, 1);
      expect(figure(/inner one of ([\d.]+) mm/)).toBeCloseTo(outer - high, 1);
      expect(figure(/and ([\d.]+) degrees/)).toBeCloseTo((turn * 180) / Math.PI, 1);
      expect(figure(/in folds of ([\d.]+) mm/)).toBeCloseTo(folds(wide, high), 1);
      const possible = figure(/\(([\d.]+) mm are possible/);
      const [width, height] = [figure(/([\d.]+) mm of width/), figure(/([\d.]+) mm of height/)];
      for (const each of [
        { now: folds(width, high), next: folds(width + 1, high) },
        { now: folds(wide, height), next: folds(wide, height + 1) },
      ]) {
        expect(each.now).toBeLessThanOrEqual(possible + 1e-9);
        expect(each.next).toBeGreaterThan(possible);
      }
    },
  );
});
