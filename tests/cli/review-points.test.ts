import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { inProcess, workshop } from './_command.ts';

// Contract: standard output is for programs, messages go to standard error.
describe('the review points of a packet', () => {
  it('are said on standard error, and standard output has the names of the files alone', async () => {
    const folder = workshop();
    const out = join(folder, 'made');
    const { out: said, err } = await inProcess(packet, [join(folder, 'patio-cleaner.yaml'), '--out', out]);
    for (const line of said.trimEnd().split('\n')) expect(line.startsWith(out), line).toBe(true);
    const points = err.split('\n').filter(line => line.startsWith('  - '));
    const [, count, page] = /worst first \((\d+) points\).* in (\S+review\.html)/.exec(err)!;
    expect(points).toHaveLength(Number(count));
    expect(points[0]).toContain('not decided for want of data');
    expect(readFileSync(page!, 'utf8')).toContain('for the reviewer');
    const { warnings } = JSON.parse(readFileSync(join(out, 'classification.json'), 'utf8'));
    for (const { text } of warnings) expect(points.join('\n')).toContain(text);
  });

  it('stand in the JSON document', async () => {
    const folder = workshop();
    const call = [join(folder, 'descaler.yaml'), '--out', join(folder, 'made'), '--json'];
    const { out } = await inProcess(packet, call);
    const { schema, review, files } = JSON.parse(out);
    expect(schema).toBe('labelwright/files/1');
    expect(files.some((path: string) => path.endsWith('review.html'))).toBe(true);
    expect(review.join('\n')).toContain('dye solution');
  });
});
