import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deliver } from '../../src/store/deliver.ts';
import { examine } from '../../src/store/examine.ts';
import { markOutOfDate } from '../../src/store/mark-out-of-date.ts';
import { putOnce } from '../../src/store/put-once.ts';
import { alone, delivery, documentsIn, Killed, killedAt, product, shop, standing } from './_packets.ts';
import { documentsOf, inputsFor, type Variant } from './_variants.ts';

const examined = (folder: string, record: string, variant: Variant) =>
  examine(alone.files, folder, inputsFor(record, variant), { file: record, code: product.code });

interface Written {
  state: string;
  reason: string | null;
  fingerprint: string;
  files: { name: string; kind: string; fingerprint: string }[];
}
const manifestOf = (folder: string) =>
  JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8')) as Written;

async function delivered(variant: Variant = 'bottle') {
  const place = shop();
  await deliver(delivery(place.folder, place.record, variant), alone);
  return place;
}

describe('a file that a person changed', () => {
  it.each(['sds.html', 'label-bottle.pdf'])(
    '%s is refused by name and stays, with all others',
    async name => {
      const { folder, record } = await delivered();
      writeFileSync(join(folder, name), 'my own words');
      const { refused, written } = await deliver(delivery(folder, record, 'flask'), alone);
      expect(refused).toEqual([{ id: 'file-changed', name }]);
      expect(written).toEqual([]);
      expect(documentsIn(folder)).toEqual({ ...standing('bottle'), [name]: 'my own words' });
      expect(manifestOf(folder)).toMatchObject({
        state: 'out-of-date',
        reason: `changed by hand and not replaced: ${name}`,
      });
      expect(examined(folder, record, 'bottle').map(({ id }) => id)).toEqual(['file-changed', 'out-of-date']);
    },
  );

  it('is moved aside under a dated name where that is asked for, as often as it is', async () => {
    const { folder, record } = await delivered();
    for (const [words, to] of [
      ['first', 'sds.2026-11-26.html'],
      ['second', 'sds.2026-11-26-2.html'],
    ] as const) {
      writeFileSync(join(folder, 'sds.html'), words);
      const { refused, told } = await deliver(delivery(folder, record, 'flask', { replace: true }), alone);
      expect(refused).toEqual([]);
      expect(told).toContainEqual({ id: 'moved-aside', name: 'sds.html', to });
      expect(readFileSync(join(folder, to), 'utf8')).toBe(words);
    }
    expect(documentsIn(folder)).toEqual({
      ...standing('flask'),
      'sds.2026-11-26.html': 'first',
      'sds.2026-11-26-2.html': 'second',
    });
    expect(examined(folder, record, 'flask')).toEqual([]);
  });

  it('is moved aside also where it is no longer current', async () => {
    const { folder, record } = await delivered();
    writeFileSync(join(folder, 'label-bottle.pdf'), 'notes on the old label');
    await deliver(delivery(folder, record, 'flask', { replace: true }), alone);
    expect(documentsIn(folder)).toEqual({
      ...standing('flask'),
      'label-bottle.2026-11-26.pdf': 'notes on the old label',
    });
  });

  it('outlives a kill at any moment of a run that moves it aside', async () => {
    for (let moment = 1, ended = false; !ended; moment++) {
      const { folder, record } = await delivered();
      writeFileSync(join(folder, 'sds.html'), 'mine');
      try {
        await deliver(delivery(folder, record, 'flask', { replace: true }), killedAt(moment));
        ended = true;
      } catch (error) {
        expect(error).toBeInstanceOf(Killed);
      }
      expect(Object.values(documentsIn(folder)), `moment ${moment}`).toContain('mine');
      const { refused } = await deliver(delivery(folder, record, 'flask', { replace: true }), alone);
      expect(refused).toEqual([]);
      expect(documentsIn(folder)).toEqual({ ...standing('flask'), 'sds.2026-11-26.html': 'mine' });
    }
  });

  it('stays where a person changes it while a switch stands still', async () => {
    for (let moment = 1, ended = false; !ended; moment++) {
      const { folder, record } = await delivered();
      try {
        await deliver(delivery(folder, record, 'flask'), killedAt(moment));
        ended = true;
      } catch {
        writeFileSync(join(folder, 'sds.html'), 'mine');
        const { refused } = await deliver(delivery(folder, record, 'flask'), alone);
        expect(refused, `moment ${moment}`).toEqual([{ id: 'file-changed', name: 'sds.html' }]);
        expect(readFileSync(join(folder, 'sds.html'), 'utf8')).toBe('mine');
      }
    }
  });

  it('is made again where a person removed it', async () => {
    const { folder, record } = await delivered();
    rmSync(join(folder, 'sds.html'));
    expect(examined(folder, record, 'bottle')).toEqual([{ id: 'file-missing', name: 'sds.html' }]);
    await deliver(delivery(folder, record, 'bottle'), alone);
    expect(documentsIn(folder)).toEqual(standing('bottle'));
  });

  it('may be one that no run made: it is not overwritten', async () => {
    const { folder, record } = shop();
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'sds.pdf'), 'from the supplier');
    writeFileSync(join(folder, 'notes.txt'), 'keep');
    const { refused } = await deliver(delivery(folder, record, 'flask'), alone);
    expect(refused).toEqual([{ id: 'file-in-the-way', name: 'sds.pdf' }]);
    expect(documentsIn(folder)).toEqual({ 'sds.pdf': 'from the supplier', 'notes.txt': 'keep' });
    await deliver(delivery(folder, record, 'flask', { replace: true }), alone);
    expect(documentsIn(folder)).toEqual({
      ...standing('flask'),
      'sds.2026-11-26.pdf': 'from the supplier',
      'notes.txt': 'keep',
    });
  });

  it('may be the manifest itself', async () => {
    const { folder, record } = await delivered();
    writeFileSync(join(folder, 'manifest.json'), '{"mine": true}');
    expect(examined(folder, record, 'bottle')).toEqual([{ id: 'manifest-unreadable' }]);
    const { refused } = await deliver(delivery(folder, record, 'bottle'), alone);
    expect(refused).toEqual([{ id: 'file-changed', name: 'manifest.json' }]);
    expect(readFileSync(join(folder, 'manifest.json'), 'utf8')).toBe('{"mine": true}');
    await deliver(delivery(folder, record, 'bottle', { replace: true }), alone);
    expect(readFileSync(join(folder, 'manifest.2026-11-26.json'), 'utf8')).toBe('{"mine": true}');
    expect(examined(folder, record, 'bottle')).toEqual([]);
  });
});

describe('what is ours and no longer current', () => {
  it('goes: the label of a pack under its old name', async () => {
    const { folder, record } = await delivered();
    const { told } = await deliver(delivery(folder, record, 'flask'), alone);
    expect(told).toEqual([{ id: 'removed', name: 'label-bottle.pdf' }]);
    expect(documentsIn(folder)).toEqual(standing('flask'));
  });

  it('goes where its successor cannot be made, and the manifest says why', async () => {
    const { folder, record } = await delivered();
    const files = documentsOf('bottle').filter(({ name }) => name !== 'label-bottle.pdf');
    const missing = [{ name: 'label-bottle.pdf', reason: 'does not fit' }];
    await deliver(delivery(folder, record, 'bottle', { files, missing }), alone);
    expect(existsSync(join(folder, 'label-bottle.pdf'))).toBe(false);
    expect(examined(folder, record, 'bottle')).toEqual([
      { id: 'not-made', name: 'label-bottle.pdf', reason: 'does not fit' },
    ]);
    // Made by itself later, it is no longer missing.
    const label = documentsOf('bottle').filter(({ name }) => name === 'label-bottle.pdf');
    await deliver(delivery(folder, record, 'bottle', { files: label, whole: false }), alone);
    expect(examined(folder, record, 'bottle')).toEqual([]);
  });

  it('stays where it was made by itself from the same inputs', async () => {
    const { folder, record } = await delivered();
    const chart = { name: 'headroom.svg', kind: 'review', bytes: 'chart' } as const;
    await deliver(delivery(folder, record, 'bottle', { files: [chart], whole: false }), alone);
    await deliver(delivery(folder, record, 'bottle'), alone);
    expect(documentsIn(folder)).toEqual({ ...standing('bottle'), 'headroom.svg': 'chart' });
    await deliver(delivery(folder, record, 'flask'), alone);
    expect(documentsIn(folder)).toEqual(standing('flask'));
  });
});

describe('a mixture shows', () => {
  it('where one document is made by itself from a changed record', async () => {
    const { folder, record } = await delivered();
    const files = documentsOf('flask').filter(({ name }) => name === 'sds.html');
    await deliver(delivery(folder, record, 'flask', { files, whole: false }), alone);
    expect(manifestOf(folder).state).toBe('out-of-date');
    const mixed = examined(folder, record, 'flask').filter(({ id }) => id === 'mixture');
    expect(mixed.map(fact => 'name' in fact && fact.name)).toEqual([
      'index.html',
      'label-bottle.pdf',
      'sds.json',
      'sds.pdf',
    ]);
  });

  it('where a document of another packet is put among the files', async () => {
    const { folder, record } = await delivered();
    const [label] = documentsOf('flask');
    writeFileSync(join(folder, label!.name), label!.bytes);
    writeFileSync(join(folder, 'notes.txt'), 'a file of a person is no document');
    expect(examined(folder, record, 'bottle')).toEqual([{ id: 'stray', name: 'label-flask.pdf' }]);
  });

  it('where any input is another: record, maker, law, program', async () => {
    const { folder, record } = await delivered();
    const now = inputsFor(record, 'bottle');
    const other = '0'.repeat(64);
    const against = (inputs: typeof now) =>
      examine(alone.files, folder, inputs, { file: record, code: product.code });
    expect(against(now)).toEqual([]);
    expect(against({ ...now, record: { path: record, sha256: other } })).toEqual([{ id: 'record-changed' }]);
    expect(against({ ...now, included: [{ path: 'maker.yaml', sha256: other }] })).toEqual([
      { id: 'include-changed', path: 'maker.yaml' },
    ]);
    expect(against({ ...now, included: [{ path: 'other.yaml', sha256: other }] })).toEqual([
      { id: 'include-new', path: 'other.yaml' },
      { id: 'include-gone', path: 'maker.yaml' },
    ]);
    expect(against({ ...now, law: { ...now.law, since: '2027-01-01' } })).toEqual([{ id: 'law-changed' }]);
    expect(against({ ...now, law: { ...now.law, sha256: other } })).toEqual([{ id: 'law-changed' }]);
    expect(against({ ...now, program: { ...now.program, version: '9.9.9' } })).toEqual([
      { id: 'program-changed', made: '0.1.0', now: '9.9.9' },
    ]);
  });
});

describe('a folder of another record', () => {
  it('is refused, and stays as it is', async () => {
    const { folder, record, root } = await delivered();
    const other = join(root, 'second.yaml');
    writeFileSync(other, 'labelwright: product/1\n');
    const before = readFileSync(join(folder, 'manifest.json'), 'utf8');
    const { refused } = await deliver(delivery(folder, other, 'flask', { replace: true }), alone);
    expect(refused).toEqual([
      { id: 'other-record', record: join(folder, '../../product.yaml'), code: 'KP-946' },
    ]);
    expect(documentsIn(folder)).toEqual(standing('bottle'));
    expect(readFileSync(join(folder, 'manifest.json'), 'utf8')).toBe(before);
    expect(examined(folder, other, 'bottle').map(({ id }) => id)).toEqual(['other-record']);
    expect(await markOutOfDate(folder, other, 'no', alone)).toBe(false);
    expect(await markOutOfDate(folder, record, 'yes', alone)).toBe(true);
    expect(manifestOf(folder)).toMatchObject({ state: 'out-of-date', reason: 'yes' });
  });

  it('is one of another code, too', async () => {
    const { folder, record } = await delivered();
    const renamed = { name: product.name, code: 'KP-947' };
    const { refused } = await deliver(delivery(folder, record, 'flask', { product: renamed }), alone);
    expect(refused.map(({ id }) => id)).toEqual(['other-record']);
  });

  it('is not one whose record was moved, alone or with all', async () => {
    const { folder, record, root } = await delivered();
    const moved = join(root, 'renamed.yaml');
    renameSync(record, moved);
    expect((await deliver(delivery(folder, moved, 'bottle'), alone)).refused).toEqual([]);
    const elsewhere = shop().root;
    renameSync(root, join(elsewhere, 'shop'));
    const [there, its] = ['out/KP-946', 'renamed.yaml'].map(path => join(elsewhere, 'shop', path));
    expect(examined(there!, its!, 'bottle')).toEqual([]);
  });
});

describe('a file that is a person’s from the start', () => {
  it('is written once, and never again', () => {
    const { root } = shop();
    const form = join(root, 'product.review.yaml');
    expect(putOnce(form, 'empty', alone)).toBe(true);
    writeFileSync(form, 'filled in');
    expect(putOnce(form, 'empty', alone)).toBe(false);
    expect(readFileSync(form, 'utf8')).toBe('filled in');
  });

  it('is whole or absent after a kill at any moment, and what is left goes', () => {
    for (let moment = 1, ended = false; !ended; moment++) {
      const { root } = shop();
      const form = join(root, 'product.review.yaml');
      try {
        putOnce(form, 'empty form', killedAt(moment));
        ended = true;
      } catch {
        if (existsSync(form)) expect(readFileSync(form, 'utf8')).toBe('empty form');
      }
      putOnce(form, 'empty form', alone);
      expect(readFileSync(form, 'utf8')).toBe('empty form');
      expect(documentsIn(root)).toEqual({
        'product.yaml': 'labelwright: product/1\n',
        'product.review.yaml': 'empty form',
      });
    }
  });
});
