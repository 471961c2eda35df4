import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { demoWith, inProcess, put, workshop } from './_command.ts';

const revised = 'revision: 1\nrevised: 2026-10-30';

// 29 CFR 1910.1200 App. D, Table D.1, 16: the date of preparation or the last change; Annex II, 16 (a): where changes
// were made to the previous version.
describe('the revisions of a data sheet', () => {
  const made = async (folder: string, text: string, asOf = '2026-11-25') => {
    const path = put(folder, 'patio-cleaner.yaml', text);
    const out = join(folder, 'made');
    const { err } = await inProcess(sds, [path, '--out', out, '--as-of', asOf]);
    return { err, path, out, sheet: JSON.parse(readFileSync(join(out, 'sds.json'), 'utf8')) };
  };
  const codesOf = async (path: string, out: string) => {
    const { out: said } = await inProcess(check, [path, '--out', out, '--json']);
    const { findings } = JSON.parse(said) as { findings: { code: string; message: string }[] };
    return findings.map(({ code }) => code).filter(code => code.startsWith('revision'));
  };

  it('a change of content without a new revision is told, a run on another day is not', async () => {
    const folder = workshop();
    const { path, out } = await made(folder, demoWith());
    expect(await codesOf(path, out)).toEqual([]);
    const later = await made(folder, demoWith(), '2026-12-24');
    expect(later.err).not.toContain('its content is another');
    expect(later.sheet.date).toBe('2026-10-30');
    put(folder, 'patio-cleaner.yaml', demoWith(['pH: {value: 12.6', 'pH: {value: 12.9']));
    expect(await codesOf(path, out)).toEqual(['revision-not-raised']);
    const again = await made(folder, demoWith(['pH: {value: 12.6', 'pH: {value: 12.9']));
    expect(again.err).toContain('revision 1 of 2026-10-30, and its content is another');
  });

  it('section 16 tells the revision that is superseded and what changed, and JSON has it apart', async () => {
    const folder = workshop();
    const history = `revision: 2
revised: 2026-11-20
revisions:
  - {revision: 1, date: 2026-10-30, changes: First sheet.}
  - {revision: 2, date: 2026-11-20, changes: pH measured again.}`;
    await made(folder, demoWith());
    const changed: [string, string] = ['pH: {value: 12.6', 'pH: {value: 12.9'];
    const silent = await made(folder, demoWith(changed, [revised, 'revision: 2\nrevised: 2026-10-30']));
    expect(silent.err).toContain('revision 2 has the date 2026-10-30');
    expect(silent.err).toContain('revision 1 of 2026-10-30 stands there, and the record does not list it');
    await made(folder, demoWith());
    const { err, sheet, out } = await made(folder, demoWith(changed, [revised, history]));
    expect(err).not.toMatch(/revision/);
    expect(sheet.supersedes).toEqual({ revision: '1', date: '2026-10-30' });
    const html = readFileSync(join(out, 'sds.html'), 'utf8');
    expect(html).toContain('Supersedes revision 1 of 2026-10-30.');
    expect(html).toContain('Revision 2, 2026-11-20: pH measured again.');
  });

  it.each([
    ['revisions: [{revision: 1, date: 2026-10-01}]', 'gives the same revision another date'],
    ['revisions: [{revision: 0, date: 2026-11-01}]', 'lies behind 2026-10-30'],
    ['revisions: [{revision: 0, date: 2026-01-01}, {revision: 0, date: 2026-02-01}]', 'stands twice'],
    [
      'revisions: [{revision: a, date: 2026-02-01}, {revision: b, date: 2026-01-01}]',
      'lies before 2026-02-01',
    ],
  ])('that contradict each other are errors: %s', async (written, message) => {
    const path = put(workshop(), 'patio-cleaner.yaml', demoWith([revised, `${revised}\n${written}`]));
    const { err, status } = await inProcess(check, [path]);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });
});
