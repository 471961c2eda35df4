import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { demoWith, inProcess, put, workshop } from './_command.ts';

describe('label --json', () => {
  const jsonOf = async (die: string) => {
    const folder = workshop();
    const record = demoWith(['{width: 130 mm, height: 120 mm, corner-radius: 3 mm}', die]);
    const out = join(folder, 'made');
    const {
      status,
      out: said,
      err,
    } = await inProcess(label, [put(folder, 'p.yaml', record), '--out', out, '--json']);
    return { status, err, json: said === '' ? null : JSON.parse(said) };
  };

  it('gives places and sizes that the page has', async () => {
    const { status, json } = await jsonOf('{width: 5 in, height: 4.75 in, corner-radius: 0.125 in}');
    expect(status).toBe(0);
    expect(json).toMatchObject({
      schema: 'labelwright/label/1',
      pack: 'bottle-946',
      purpose: 'us-workplace',
      target: 'press',
      file: 'label-bottle-946.pdf',
      die: { shape: 'rectangle', width: 127, cornerRadius: 3.175, safe: 1.6 },
      barCode: { symbology: 'UPC-A', number: '0614141000418', turned: false },
    });
    const signal = json.texts.find(({ role }: { role: string }) => role === 'signal-word');
    expect(signal).toMatchObject({ text: 'Danger', leading: 1.2 });
    const body = json.texts.find(({ role }: { role: string }) => role === 'precautions');
    expect(signal.xHeight / body.xHeight).toBeCloseTo(2.5, 1);
    expect(signal.box[3] - signal.box[1]).toBeGreaterThan(signal.capHeight);
    for (const { side } of json.pictograms) expect(side).toBeGreaterThanOrEqual(10);
    for (const { box } of [...json.texts, ...json.pictograms, json.barCode]) {
      expect(Math.min(box[0], box[1])).toBeGreaterThanOrEqual(1.6);
      expect(box[2]).toBeLessThanOrEqual(127 - 1.6);
    }
  });

  // GS1 prefixes: 978 books, 040 to 049 restricted circulation; an indicator 1 to 8: a grouping (General Specifications 1.4, 2.1).
  it.each([
    ['9780306406157', 'begins with 978'],
    ['0412345678903', 'restricted circulation'],
    ['20614141000412', 'is that of a case, and stands on a pack'],
  ])('tells what the number %s is for', async (gtin, told) => {
    const folder = workshop();
    const record = demoWith(['gtin: "0614141000418"', `gtin: "${gtin}"`]);
    const { err } = await inProcess(label, [put(folder, 'p.yaml', record), '--out', join(folder, 'made')]);
    expect(err).toContain(told);
  });

  it('of a refusal names outlines that hold the label, in the unit of the record', async () => {
    const { status, json, err } = await jsonOf('{width: 3 in, height: 2 in, corner-radius: 0.125 in}');
    expect(status).toBe(1);
    expect(json).toMatchObject({ file: null, texts: [], barCode: null });
    const refusal = json.findings.find(({ outlines }: { outlines?: unknown }) => outlines !== undefined);
    expect(refusal.outlines.length).toBeGreaterThan(0);
    expect(err).toMatch(/a label of 3 x 2 in does not hold/);
    expect(err).toMatch(/would hold it: 3 x [\d.]+ in/);
    expect(err).not.toMatch(/\.\d{4,} (?:mm|in)/);
    for (const { width, height, panels } of refusal.outlines) {
      const die = `{width: ${width / panels} mm, height: ${height} mm, corner-radius: 0.125 in, panels: ${panels}}`;
      expect(await jsonOf(die)).toMatchObject({ status: 0 });
    }
  });

  it.each([
    ['{width: 3 in, height: 2 in, corner-radius: 1.1 in}', 'more than half the short side'],
    ['{width: 1e30 mm, height: 2 in}', 'not the side of a label'],
    ['{width: 100 mm, height: 9 mm}', 'not the side of a label'],
    ['{width: 100 mm, height: 90 mm, corner-radius: 3 mm, shape: oval}', 'an oval has no corner radius'],
  ])('takes %s for a wrong input', async (die, message) => {
    const { status, err } = await jsonOf(die);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });
});
