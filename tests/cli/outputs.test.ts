import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDict, PDFDocument, PDFName, PDFString } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as headroom } from '../../src/cli/commands/headroom.ts';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { openPdf } from '../support/render.ts';
import { demoWith, filesBelow, inProcess, labelwright, main, put, TODAY, workshop } from './_command.ts';

interface Manifest {
  readonly state: string;
  readonly reason: string | null;
  readonly fingerprint: string;
  readonly files: readonly { readonly name: string; readonly kind: string; readonly fingerprint: string }[];
}
const manifestIn = (folder: string) =>
  JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8')) as Manifest;

/** A shop with the demo records, and the packet of one product in a folder that is named. */
async function made() {
  const folder = workshop();
  const record = join(folder, 'patio-cleaner.yaml');
  const out = join(folder, 'made');
  const { status, err } = await inProcess(packet, [record, '--out', out]);
  expect({ status, err: err.split('\n').filter(line => line.includes('error')) }).toEqual({
    status: 0,
    err: [],
  });
  return { folder, record, out };
}

const outputs = (record: string, out: string) => inProcess(check, [record, '--outputs', '--out', out]);

describe('every document of a packet', () => {
  it('says who may read it, and from which inputs it was made', async () => {
    const { record, out } = await made();
    expect(
      (await inProcess(headroom, [record, '--of', '1310-73-2', '--out', out, '--as-of', TODAY])).status,
    ).toBe(0);
    const { fingerprint, files } = manifestIn(out);
    expect(fingerprint).toMatch(/^[0-9a-f]{64}$/);
    // Kinds: section 4 of the contract, "Copies".
    const kinds: Record<string, string> = {
      'classification.json': 'review',
      'headroom-1310-73-2.svg': 'review',
      'duties.json': 'review',
      'index.html': 'review',
      'review.html': 'review',
      'label-bottle-946.pdf': 'distribution',
      'case-bottle-946.pdf': 'distribution',
      'limited-quantity-bottle-946.pdf': 'distribution',
      'arrows-bottle-946.pdf': 'distribution',
      'pallet-bottle-946.svg': 'distribution',
      'sds.html': 'distribution',
      'sds.json': 'distribution',
      'sds.pdf': 'distribution',
      'transport.json': 'review',
      'work-sheet.md': 'review',
    };
    expect(Object.fromEntries(files.map(({ name, kind }) => [name, kind]))).toEqual(kinds);
    expect(filesBelow(out)).toEqual([...Object.keys(kinds), 'manifest.json'].sort());
    for (const [name, kind] of Object.entries(kinds)) {
      const bytes = readFileSync(join(out, name));
      const text = bytes.toString('latin1');
      if (name.endsWith('.pdf')) {
        // Info dictionary (ISO 32000-1 14.3.3) with one reader of PDF, XMP (ISO 16684-1) with another.
        const pdf = await PDFDocument.load(bytes);
        const info = pdf.context.lookup(pdf.context.trailerInfo.Info, PDFDict);
        const entry = (key: string) => info.lookup(PDFName.of(key), PDFString).asString();
        expect([entry('LabelwrightCopy'), entry('LabelwrightFingerprint')]).toEqual([kind, fingerprint]);
        const opened = await openPdf(new Uint8Array(bytes));
        const { metadata } = await opened.getMetadata();
        expect(metadata.get('lw:copy')).toBe(kind);
        expect(metadata.get('lw:fingerprint')).toBe(fingerprint);
        await opened.loadingTask.destroy();
      } else if (name.endsWith('.html')) {
        expect(text).toContain(`<meta name="labelwright:copy" content="${kind}">`);
        expect(text).toContain(`<meta name="labelwright:fingerprint" content="${fingerprint}">`);
      } else if (name.endsWith('.json')) {
        expect(JSON.parse(text)).toMatchObject({ copy: kind, fingerprint });
      } else {
        expect(text).toContain(`<!-- labelwright copy: ${kind}; fingerprint: ${fingerprint} -->`);
      }
    }
  });
});

describe('check --outputs', () => {
  it('says whether the files belong together and to the record as it is now', async () => {
    const { record, out, folder } = await made();
    const good = await outputs(record, out);
    expect(good).toMatchObject({ status: 0, err: '' });
    expect(good.out).toContain('the files belong together and to the record as it is now');

    writeFileSync(join(folder, 'maker.yaml'), `${readFileSync(join(folder, 'maker.yaml'), 'utf8')}\n`);
    const other = await outputs(record, out);
    expect(other.status).toBe(1);
    expect(other.err).toContain('maker.yaml has changed since the packet was made');

    writeFileSync(record, demoWith(['bottle-946', 'flask-946']));
    const json = await inProcess(check, [record, '--outputs', '--out', out, '--json']);
    expect(json.status).toBe(1);
    const { products } = JSON.parse(json.out) as {
      products: { outputs: { folder: string; current: boolean; findings: { code: string }[] } }[];
    };
    expect(products[0]!.outputs).toMatchObject({ folder: out, current: false });
    expect(products[0]!.outputs.findings.map(({ code }) => code)).toEqual([
      'record-changed',
      'include-changed',
    ]);

    // Made again, no label of the old name stands beside the new sheet.
    const again = await inProcess(packet, [record, '--out', out]);
    expect(again.status).toBe(0);
    expect(again.err).toContain('label-bottle-946.pdf was no longer current and is gone');
    expect(filesBelow(out).filter(name => name.startsWith('label-'))).toEqual(['label-flask-946.pdf']);
    expect((await outputs(record, out)).status).toBe(0);
  });

  it('tells of a document made by itself from a changed record', async () => {
    const { record, out } = await made();
    writeFileSync(record, demoWith(['tagline: Lifts grime', 'tagline: Takes algae']));
    expect((await inProcess(sds, [record, '--out', out])).status).toBe(0);
    const { status, err } = await outputs(record, out);
    expect(status).toBe(1);
    expect(err).toContain('label-bottle-946.pdf was made from other inputs than the rest');
    expect(err).not.toContain('sds.pdf was made from other inputs');
    expect(manifestIn(out).state).toBe('out-of-date');
    // The label too, and what is left of the old packet still shows.
    expect((await inProcess(label, [record, '--out', out])).status).toBe(0);
    expect((await outputs(record, out)).err).toContain('index.html was made from other inputs');
  });

  it('says where there is no packet', async () => {
    const folder = workshop();
    const { status, err } = await outputs(join(folder, 'descaler.yaml'), join(folder, 'none'));
    expect(status).toBe(1);
    expect(err).toContain('no packet stands there');
    expect(existsSync(join(folder, 'none'))).toBe(false);
  });
});

describe('a file that a person changed', () => {
  it('is refused by name by every command that would write it; --replace moves it aside', async () => {
    const { record, out } = await made();
    writeFileSync(join(out, 'sds.html'), 'my own words');
    for (const run of [packet, sds]) {
      const { status, out: said, err } = await inProcess(run, [record, '--out', out]);
      expect({ status, said }).toEqual({ status: 1, said: '' });
      expect(err).toContain('sds.html was changed by hand and is not overwritten');
      expect(readFileSync(join(out, 'sds.html'), 'utf8')).toBe('my own words');
    }
    const { status, err } = await inProcess(packet, [record, '--out', out, '--replace']);
    expect(status).toBe(0);
    const [, aside] = /sds\.html was changed by hand; it is now (\S+)/.exec(err)!;
    expect(readFileSync(join(out, aside!), 'utf8')).toBe('my own words');
    expect((await outputs(record, out)).status).toBe(0);
  });
});

describe('the form for the review', () => {
  it('stands beside the record, is written once, and is the person’s', async () => {
    const { folder, record, out } = await made();
    const form = join(folder, 'patio-cleaner.review.yaml');
    expect(readFileSync(form, 'utf8')).toMatch(/^labelwright: review\/1$/m);
    writeFileSync(form, 'reviewed-by: A. Reviewer\n');
    for (const more of [[], ['--replace']])
      expect((await inProcess(packet, [record, '--out', out, ...more])).status).toBe(0);
    expect(readFileSync(form, 'utf8')).toBe('reviewed-by: A. Reviewer\n');
    expect(filesBelow(out).join()).not.toContain('review.yaml');
  });
});

describe('two products with one code', () => {
  it('do not share a folder', async () => {
    const cwd = workshop();
    put(cwd, 'second.yaml', demoWith(['name: Kerbstone Patio Cleaner', 'name: Kerbstone Step Cleaner']));
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(0);
    const before = readFileSync(join(cwd, 'out/KP-946/manifest.json'), 'utf8');
    for (const args of [['packet'], ['packet', '--replace'], ['sds'], ['label']]) {
      const { status, out, err } = labelwright([args[0]!, 'second.yaml', ...args.slice(1)], { cwd });
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(err).toContain('the folder belongs to another record: patio-cleaner.yaml, code KP-946');
    }
    expect(readFileSync(join(cwd, 'out/KP-946/manifest.json'), 'utf8')).toBe(before);
    expect(labelwright(['packet', 'second.yaml', '--out', 'step'], { cwd }).status).toBe(0);
  });
});

describe('a run that is refused', () => {
  it('marks the packet that it leaves behind as out of date, wherever that stands below out', () => {
    const cwd = workshop();
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(0);
    const out = join(cwd, 'out/KP-946');
    expect(manifestIn(out)).toMatchObject({ state: 'current', reason: null });
    // The record is no record any more: not even its code can be read.
    put(cwd, 'patio-cleaner.yaml', 'labelwright: product/1\nname: [\n');
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(2);
    expect(manifestIn(out)).toMatchObject({
      state: 'out-of-date',
      reason: 'the last run was refused: the record cannot be used',
    });
    // A wrong call says nothing about the packet.
    put(cwd, 'patio-cleaner.yaml', demoWith());
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(0);
    expect(labelwright(['packet', 'patio-cleaner.yaml', '--as-of', '2001-01-01'], { cwd }).status).toBe(2);
    expect(manifestIn(out).state).toBe('current');
    put(cwd, 'patio-cleaner.yaml', demoWith(['maker: maker.yaml\n', '']));
    expect(labelwright(['label', 'patio-cleaner.yaml'], { cwd }).status).toBe(1);
    expect(manifestIn(out).reason).toBe('the last run was refused: the label of bottle-946 cannot be made');
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(1);
    expect(manifestIn(out).reason).toBe('the last run was refused: the data sheet cannot be made');
    // Another code has another folder; the old one does not pass for current.
    put(cwd, 'patio-cleaner.yaml', demoWith(['code: KP-946', 'code: KP-947']));
    expect(labelwright(['packet', 'patio-cleaner.yaml'], { cwd }).status).toBe(0);
    expect(manifestIn(join(cwd, 'out/KP-947')).state).toBe('current');
    expect(manifestIn(out)).toMatchObject({
      state: 'out-of-date',
      reason: 'a newer packet of this record is in out/KP-947',
    });
  });

  it('for one label takes the old label away and makes the rest', async () => {
    const { record, out } = await made();
    writeFileSync(record, demoWith(['width: 130 mm, height: 120 mm', 'width: 60 mm, height: 40 mm']));
    const { status, err } = await inProcess(packet, [record, '--out', out]);
    expect(status).toBe(1);
    expect(err).toContain('does not hold its text');
    expect(filesBelow(out)).not.toContain('label-bottle-946.pdf');
    const now = await outputs(record, out);
    expect(now.status).toBe(1);
    expect(now.err).toContain('label-bottle-946.pdf could not be made: a label of 60 x 40 mm');
    expect(now.err.match(/error/g)).toHaveLength(1);
  });
});

describe('two packets at once', () => {
  it('give one whole packet of either record, and no leftovers', async () => {
    const cwd = workshop();
    const started = [1, 2, 3].map(
      () =>
        new Promise(resolve =>
          spawn(process.execPath, [main, 'packet', 'patio-cleaner.yaml', '--as-of', TODAY], { cwd }).on(
            'close',
            resolve,
          ),
        ),
    );
    expect(await Promise.all(started)).toEqual([0, 0, 0]);
    expect(labelwright(['check', 'patio-cleaner.yaml', '--outputs'], { cwd }).status).toBe(0);
    expect(filesBelow(cwd).filter(name => name.includes('.labelwright'))).toEqual([]);
  });
});
