import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { run as label } from '../../src/cli/commands/label.ts';
import { run as sds } from '../../src/cli/commands/sds.ts';
import { inProcess, workshop } from './_command.ts';

const degreaser = readFileSync('templates/demo/degreaser.yaml', 'utf8');
const withWords = (words: string): string => degreaser.replace(/statements:\n(?: {2}.*\n)+/, () => words);

// 29 CFR 1910.1200 App. C, C.4: "Use … to extinguish" leaves the agent to the maker.
describe('a statement whose words are the maker’s', () => {
  it('stops the label with exit 1 and the key to fill in, and lets the classification and the sheet work', async () => {
    const folder = workshop();
    const path = join(folder, 'degreaser.yaml');
    writeFileSync(path, withWords(''));
    const out = join(folder, 'out');
    const refused = await inProcess(label, [path, '--out', out]);
    expect(refused.status).toBe(1);
    expect(refused.err).toContain('statements.words.P370+P378');
    expect(refused.err).toContain('statements: {words: {P370+P378: …}}');
    expect(existsSync(join(out, 'label-bottle-500.pdf'))).toBe(false);
    const classified = await inProcess(classify, [path, '--json']);
    expect(classified.status).toBe(0);
    expect(JSON.parse(classified.out).missing).toMatchObject([{ what: 'P370+P378' }]);
    const sheet = await inProcess(sds, [path, '--out', out]);
    expect(sheet.status).toBe(0);
    expect(sheet.err).toContain('P370+P378');
  });

  it('is printed with the words of the record', async () => {
    const folder = workshop();
    const path = join(folder, 'degreaser.yaml');
    writeFileSync(path, withWords('statements: {words: {P370+P378: dry sand}}\n'));
    const found = await inProcess(classify, [path, '--json']);
    expect(found.out).toContain('In case of fire: Use dry sand to extinguish.');
    expect((await inProcess(label, [path, '--out', join(folder, 'out')])).status).toBe(0);
  });

  it('does not tell to use what the sheet calls unsuitable', async () => {
    const folder = workshop();
    const path = join(folder, 'degreaser.yaml');
    writeFileSync(path, withWords('statements: {words: {P370+P378: full water jet}}\n'));
    const refused = await inProcess(label, [path, '--out', join(folder, 'out')]);
    expect(refused.status).toBe(1);
    expect(refused.err).toContain('sds.fire.unsuitable-media');
  });
});

describe('what check asks of the words on the label', () => {
  it('asks each open condition once, with the key that answers it', async () => {
    const { out } = await inProcess(check, ['templates/demo/degreaser.yaml']);
    expect(out.match(/statements\.conditions\.volatile/g)).toHaveLength(1);
    const folder = workshop();
    const path = join(folder, 'degreaser.yaml');
    writeFileSync(
      path,
      degreaser.replace('statements:\n', () => 'statements:\n  conditions: {volatile: false}\n'),
    );
    const answered = await inProcess(check, [path]);
    expect(answered.out).not.toContain('statements.conditions.volatile');
    const { precautionaryStatements } = JSON.parse((await inProcess(classify, [path, '--json'])).out);
    const codes = precautionaryStatements.map(({ code }: { code: string }) => code);
    expect(codes).not.toContain('P240');
  });

  // 40 CFR 152.15(a); the words are marked and never rewritten.
  it('marks claims of the maker with line and column', async () => {
    const path = join(workshop(), 'degreaser.yaml');
    const text = `${degreaser.trimEnd()}\ncopy: {tagline: Lifts algae from stone}\n`.replace(
      /\ncopy:\n(?: {2}.*\n)+/,
      '\n',
    );
    writeFileSync(path, text);
    const { out, err, status } = await inProcess(check, [path]);
    const line = text.split('\n').findIndex(each => each.includes('Lifts algae'));
    expect(out + err).toContain(`${path}:${line + 1}:17: warning: "Lifts algae"`);
    expect(status).toBe(0);
  });
});
