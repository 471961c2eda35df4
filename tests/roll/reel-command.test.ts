import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { run } from '../../src/cli/commands/reel.ts';
import { demo, inProcess, put, workshop } from '../cli/_command.ts';
import { openPdf } from '../support/render.ts';

const folder = workshop();
const record = join(folder, 'patio-cleaner.yaml');

describe('reel', () => {
  it('answers in words and draws the roll', async () => {
    const { status, out, err } = await inProcess(run, [
      record,
      '--labels',
      '5000',
      '--speed',
      '40',
      '--out',
      folder,
    ]);
    expect(status).toBe(0);
    expect(out).toMatch(/circumference 276\.5 mm \(10\.88 in\)/);
    expect(out).toMatch(/a full roll of 250 mm .*labels/);
    expect(out).toMatch(/common practice, no source/);
    expect(err).toMatch(/--leading-edge/);
    const svg = readFileSync(join(folder, 'reel-bottle-946.svg'));
    const image = await loadImage(svg);
    expect(image.width).toBeGreaterThan(100);
    const canvas = createCanvas(400, 400);
    canvas.getContext('2d').drawImage(image, 0, 0, 400, 400);
    const { data } = canvas.getContext('2d').getImageData(0, 0, 400, 400);
    expect(data.some((value, at) => at % 4 === 0 && value < 100)).toBe(true);
    expect(svg.toString().match(/>TOP</g)).toHaveLength(3);
  });

  it('turns the picture with the edge that leads and then warns no more', async () => {
    const { err } = await inProcess(run, [
      record,
      '--labels',
      '50',
      '--leading-edge',
      'top',
      '--out',
      folder,
    ]);
    expect(err).toBe('');
    expect(readFileSync(join(folder, 'reel-bottle-946.svg'), 'utf8')).toContain('rotate(90)');
  });

  it.each([
    // Where the signal word of the upright label, in its upper half, must be found on the web.
    ['right', 0],
    ['left', 180],
    ['top', 90],
    ['bottom', 270],
  ] as const)('places the label on the web with its %s first', async (edge, turn) => {
    const labels = await inProcess(label, [record, '--out', folder]);
    expect(labels.status).toBe(0);
    const { status } = await inProcess(run, [
      record,
      '--labels',
      '50',
      '--leading-edge',
      edge,
      '--label',
      join(folder, 'label-bottle-946.pdf'),
      '--out',
      folder,
    ]);
    expect(status).toBe(0);
    const bytes = new Uint8Array(readFileSync(join(folder, 'reel-bottle-946.pdf')));
    const pdf = await openPdf(bytes);
    const { items } = await (await pdf.getPage(1)).getTextContent();
    const danger = items.flatMap(item => ('str' in item && /^danger$/i.test(item.str.trim()) ? [item] : []));
    expect(danger).toHaveLength(3);
    // The text runs along the direction of its matrix: clockwise from the web's way, top leading means downwards.
    const angles = danger.map(({ transform: [a, b] }) => Math.round((Math.atan2(b, a) * 180) / Math.PI));
    for (const angle of angles) expect((angle + turn + 360) % 360).toBe(0);
    await pdf.loadingTask.destroy();
  });

  it('refuses a file that is cut to another size, and one that is no PDF', async () => {
    const path = put(folder, 'other-die.yaml', demo.replace('width: 130 mm', 'width: 120 mm'));
    const args = ['--labels', '5', '--label', join(folder, 'label-bottle-946.pdf'), '--out', folder];
    const other = await inProcess(run, [path, ...args]);
    expect(other.status).toBe(1);
    expect(other.err).toContain('130 mm (5.12 in)');
    const none = await inProcess(run, [record, '--labels', '5', '--label', record, '--out', folder]);
    expect(none.status).toBe(2);
    const missing = await inProcess(run, [record, '--labels', '5', '--label', 'none.pdf']);
    expect(missing.status).toBe(2);
  });

  it('gives JSON alone', async () => {
    const { out, status } = await inProcess(run, [record, '--labels', '5000', '--json', '--out', folder]);
    const answer = JSON.parse(out);
    expect(status).toBe(0);
    expect(answer).toMatchObject({ schema: 'labelwright/reel/1', pack: 'bottle-946' });
    expect(answer.roll.order.labels).toBeGreaterThan(5150);
  });

  it('says what a pack without a roll lacks', async () => {
    const path = put(folder, 'no-roll.yaml', demo.replace(/ +roll: .*\n/, ''));
    const { status, err } = await inProcess(run, [path, '--labels', '10', '--out', folder]);
    expect(status).toBe(1);
    expect(err).toContain('max-diameter');
  });

  it.each([
    ['--labels', '0'],
    ['--labels', '1.5'],
    ['--speed', 'x'],
    ['--gap', '5'],
  ])('refuses %s %s', async (option, value) => {
    expect((await inProcess(run, [record, option, value])).status).toBe(2);
  });
});
