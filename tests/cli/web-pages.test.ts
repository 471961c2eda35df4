import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run as batch } from '../../src/cli/commands/batch.ts';
import { run as catalog } from '../../src/cli/commands/catalog.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { accessibilityFaults, markupFaults } from '../support/web-page.ts';
import { filesBelow, inProcess, workshop } from './_command.ts';

const pages: Record<string, string> = {};

beforeAll(async () => {
  const folder = workshop();
  const out = join(folder, 'made');
  const record = (name: string) => join(folder, `${name}.yaml`);
  const made = async (run: typeof sds, ...args: string[]) => {
    const { status, err } = await inProcess(run, args);
    expect([0, 1], err).toContain(status);
  };
  await made(catalog, folder, '--out', out);
  await made(packet, record('patio-cleaner'), '--language', 'es', '--out', join(out, 'spanish'));
  await made(batch, record('patio-cleaner'), '--size', '3 drums', '--out', join(out, 'batch'));
  for (const basis of ['us-hcs', 'eu-clp', 'un-ghs'])
    for (const language of ['en', 'es'])
      await made(
        sds,
        record('degreaser'),
        '--basis',
        basis,
        '--language',
        language,
        '--out',
        join(out, basis),
      );
  for (const file of filesBelow(out))
    if (file.endsWith('.html')) pages[file] = readFileSync(join(out, file), 'utf8');
}, 120_000);

describe('every web page that is written', () => {
  it('is among those that are looked at', () => {
    expect([...new Set(Object.keys(pages).map(file => basename(file)))].sort()).toEqual([
      'batch-ticket.html',
      'catalog.html',
      'index.html',
      'review.html',
      'sds-es.html',
      'sds-eu-es.html',
      'sds-eu.html',
      'sds-un-es.html',
      'sds-un.html',
      'sds.html',
    ]);
  });

  it('is valid HTML', async () => {
    for (const [file, html] of Object.entries(pages)) expect(await markupFaults(html), file).toEqual([]);
  });

  // The sheet of the United States is asked in tests/document/sheet, the reviewer's page in tests/review.
  it.each(['catalog.html', 'index.html', 'batch-ticket.html', 'sds-eu.html', 'sds-es.html'])(
    'has no fault of accessibility: %s',
    async name => {
      const [file] = Object.keys(pages).filter(page => basename(page) === name);
      expect(await accessibilityFaults(pages[file!]!)).toEqual([]);
    },
  );

  it('is checked in earnest', async () => {
    const wrong =
      '<!DOCTYPE html>\n<html lang="en"><head><title>x</title></head><body><main><h1>x</h1><p><table><tr><td id="a">x</td></tr></table></p><p id="a">x <img src="a.png"></p></main></body></html>\n';
    const rules = (await markupFaults(wrong)).map(fault => fault.split(' ')[1]);
    expect(rules).toEqual(expect.arrayContaining(['no-dup-id:', 'wcag/h37:', 'close-order:']));
    const faults = (await accessibilityFaults(wrong.replace('<title>x</title>', ''))).map(
      fault => fault.split(':')[0],
    );
    expect(faults).toEqual(expect.arrayContaining(['document-title', 'image-alt']));
  });
});
