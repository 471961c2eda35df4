import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/reel.ts';
import { demo, inProcess, put, workshop } from '../cli/_command.ts';

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
