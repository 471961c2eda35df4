import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { inProcess } from '../cli/_command.ts';
import { houseWash } from './_products.ts';
import { correct, shop } from './_week.ts';

const folder = shop();
afterAll(() => rmSync(folder, { recursive: true, force: true }));
correct(folder, houseWash.first);
const record = join(folder, houseWash.file);
const out = join(folder, 'out');

// A reviewer compares the record with the sheet it was typed from; the sheet itself is the supplier's and goes nowhere.
it("a supplier's sheet beside its raw material is missed, counted among the inputs, shown to the reviewer, attached to nothing", async () => {
  expect((await inProcess(check, [record])).err).toContain("the supplier's sheet `bleach.pdf` is not there");
  writeFileSync(join(folder, 'drums', 'bleach.pdf'), 'words of the supplier alone');
  expect((await inProcess(check, [record])).err).not.toContain('bleach.pdf');
  const { out: written } = await inProcess(packet, [record, '--out', out, '--pictures', 'svg']);
  const { inputs } = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8'));
  expect(inputs.included.map(({ path }: { path: string }) => path)).toContain('drums/bleach.pdf');
  const review = readFileSync(join(out, 'review.html'), 'utf8');
  expect(review).toMatch(/drums\/bleach\.pdf \(SHA-256 [0-9a-f]{16}…\)/);
  for (const path of written.trimEnd().split('\n'))
    expect(readFileSync(path, 'latin1'), path).not.toContain('words of the supplier alone');
  writeFileSync(join(folder, 'drums', 'bleach.pdf'), 'another sheet');
  const { err, status } = await inProcess(check, [record, '--out', out, '--outputs']);
  expect(status).toBe(1);
  expect(err).toContain('drums/bleach.pdf');
}, 60_000);

it('a picture of each label for listings is asked for, and goes where it is no longer asked for', async () => {
  const svg = readFileSync(join(out, 'label-jug-gal.svg'), 'utf8');
  expect(svg).toContain('<svg');
  await inProcess(packet, [record, '--out', out]);
  const { files } = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8'));
  expect(files.map(({ name }: { name: string }) => name)).not.toContain('label-jug-gal.svg');
}, 60_000);

// 29 CFR 1910.1200 App. D, Table D.1, 11(f): what the customer reads is the list, not how the draft was made.
it('how a list was read stands on the page of the reviewer and not on the sheet', () => {
  expect(readFileSync(join(out, 'review.html'), 'utf8')).toContain('the others assigned from memory');
  for (const name of ['sds.html', 'sds.json'])
    expect(readFileSync(join(out, name), 'utf8')).not.toContain('from memory');
});
