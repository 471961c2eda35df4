import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument, PDFName, PDFString } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { demoWith, inProcess, put, workshop } from './_command.ts';

// The rules: 29 CFR 1910.1200(f)(2), (f)(10) and (g)(2); CLP Article 17(2). The rest is this program's own form.

const SUPPLIED = `maker:
  name: Tallow Lane Batch Works
  address: [48 Tallow Lane]
  telephone: +1 216 555 0142
  emergency: {telephone: +1 216 555 0199, hours: 24 hours}
  eu-supplier: {name: Example Import Ltd, address: [1 Sample Street, Dublin], telephone: +353 1 555 0100}
ufi: N1QV-R02N-J00M-WQD5
translations:
  es: {use: Limpiador de patios}`;

const DIE = '{width: 130 mm, height: 120 mm, corner-radius: 3 mm}';

/** A demo record with a supplier in the Union and a large label. */
function record(...changes: readonly (readonly [string, string])[]) {
  const folder = workshop();
  const large = [DIE, '{width: 180 mm, height: 160 mm, corner-radius: 3 mm}'] as const;
  return {
    folder,
    file: put(folder, 'p.yaml', demoWith(['maker: maker.yaml', SUPPLIED], large, ...changes)),
  };
}

async function labelFor(purpose: string, language: string) {
  const { folder, file } = record();
  const out = join(folder, 'made');
  const call = [file, '--for', purpose, '--language', language, '--out', out, '--json'];
  const { status, out: said, err } = await inProcess(label, call);
  const json = JSON.parse(said);
  const text = (json.texts ?? []).map((each: { text: string }) => each.text).join('\n') as string;
  return { status, err, text, files: existsSync(out) ? readdirSync(out) : [] };
}

describe('--language es', () => {
  it('makes a sheet of the Union in Spanish, in files of its own', async () => {
    const { folder, file } = record();
    const out = join(folder, 'made');
    const { status, err } = await inProcess(sds, [
      file,
      '--basis',
      'eu-clp',
      '--language',
      'es',
      '--out',
      out,
    ]);
    expect(status, err).toBe(0);
    expect(readdirSync(out)).toEqual(
      expect.arrayContaining(['sds-eu-es.html', 'sds-eu-es.json', 'sds-eu-es.pdf']),
    );
    const sheet = JSON.parse(readFileSync(join(out, 'sds-eu-es.json'), 'utf8'));
    expect(sheet.language).toBe('es');
    expect(JSON.stringify(sheet)).toContain('Limpiador de patios');
    const html = readFileSync(join(out, 'sds-eu-es.html'), 'utf8');
    expect(html).toContain('<html lang="es"');
    // What the record does not say in Spanish is marked, and told.
    expect(html).toContain('lang="en"');
    expect(err).toMatch(/untranslated-text|appearance/u);
    const { catalog } = await PDFDocument.load(readFileSync(join(out, 'sds-eu-es.pdf')));
    expect(catalog.lookup(PDFName.of('Lang'), PDFString).decodeText()).toBe('es');
  });

  it('calls a sheet of the United States a translation, over which English prevails', async () => {
    const { folder, file } = record();
    const out = join(folder, 'made');
    await inProcess(sds, [file, '--language', 'es', '--out', out]);
    const html = readFileSync(join(out, 'sds-es.html'), 'utf8');
    expect(html).toContain('1910.1200(g)(2)');
    expect(html).toMatch(/prevalece/u);
  });

  it('gives the label of the Union alone or beside English', async () => {
    const alone = await labelFor('eu-supply', 'es');
    expect(alone.status, alone.err).toBe(0);
    expect(alone.text).toMatch(/Peligro/u);
    expect(alone.text).not.toMatch(/Danger/u);
    const both = await labelFor('eu-supply', 'en+es');
    expect(both.text).toMatch(/Danger[\s\S]*Peligro/u);
  }, 60_000);

  it('lets Spanish only be added to the label of a workplace in the United States', async () => {
    const { status, text, err, files } = await labelFor('us-workplace', 'es');
    expect(status, err).toBe(0);
    expect(text).toMatch(/Danger[\s\S]*Peligro/u);
    expect(err).toContain('29 CFR 1910.1200(f)(2)');
    expect(files.some(name => name.endsWith('-es.pdf'))).toBe(true);
  }, 60_000);

  it.each(['us-consumer', 'tank'])('is refused for %s', async purpose => {
    const { status, err, files } = await labelFor(purpose, 'es');
    expect(status).toBe(1);
    expect(err).toContain('error');
    expect(files).toEqual([]);
  });

  it('makes the packet in the languages of the market', async () => {
    const sold = '\nsold-to: {users: [workplace], markets: [us, eu], languages: [en, es]}';
    const { folder, file } = record([SUPPLIED.slice(0, 6), `${sold}\n${SUPPLIED.slice(0, 6)}`]);
    const out = join(folder, 'made');
    const { err } = await inProcess(packet, [file, '--out', out]);
    const names = readdirSync(out);
    for (const name of ['sds.pdf', 'sds-es.pdf', 'sds-eu.pdf', 'sds-eu-es.pdf'])
      expect(names, `${name}\n${err}`).toContain(name);
  }, 120_000);
});
