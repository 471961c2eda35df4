import { spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { demoWith, inProcess, labelwright, main, put, TODAY, workshop } from './_command.ts';

const findings = z.object({
  schema: z.literal('labelwright/findings/1'),
  findings: z
    .array(
      z.looseObject({
        code: z.string().regex(/^[a-z-]+$/),
        severity: z.enum(['error', 'warning', 'note']),
        message: z.string().min(1),
        file: z.string().optional(),
        line: z.number().int().positive().optional(),
        column: z.number().int().positive().optional(),
      }),
    )
    .min(1),
});

let cwd: string;
beforeAll(() => {
  cwd = workshop();
  put(cwd, 'bad.yaml', demoWith(['form: liquid', 'form: Liquid'], ['percent: 1.5', 'percent: 1,5']));
  put(cwd, 'no-maker.yaml', demoWith(['maker: maker.yaml\n', '']));
  put(cwd, 'small.yaml', demoWith(['width: 130 mm, height: 120 mm', 'width: 60 mm, height: 40 mm']));
  put(cwd, 'bad-maker.yaml', demoWith(['maker: maker.yaml', 'maker: other-maker.yaml']));
  put(cwd, 'other-maker.yaml', 'labelwright: maker/1\nname: Kerbstone Works\nadress: nowhere\n');
});

describe('a failure with --json', () => {
  it.each([
    ['check bad.yaml', 2, 'bad.yaml', 6],
    ['classify bad.yaml', 2, 'bad.yaml', 6],
    ['headroom bad.yaml --of water', 2, 'bad.yaml', 6],
    ['label bad.yaml', 2, 'bad.yaml', 6],
    ['sds bad.yaml', 2, 'bad.yaml', 6],
    ['packet bad.yaml', 2, 'bad.yaml', 6],
    ['classify bad-maker.yaml', 2, 'other-maker.yaml', 1],
    ['sds no-maker.yaml', 1, 'no-maker.yaml', undefined],
    ['check nothere.yaml', 2, 'nothere.yaml', undefined],
    ['headroom descaler.yaml --of water-glass', 2, 'descaler.yaml', undefined],
    ['classify descaler.yaml --as-of 2001-01-01', 2, undefined, undefined],
    ['classify descaler.yaml --bais us-hcs', 2, undefined, undefined],
    ['label descaler.yaml --pack drum', 2, undefined, undefined],
    ['sds descaler.yaml --out maker.yaml', 2, undefined, undefined],
    ['clasify descaler.yaml', 2, undefined, undefined],
  ] as const)(
    '%s: one document on standard output, each finding with its file',
    (call, status, file, line) => {
      const ran = labelwright([...call.split(' '), '--json'], { cwd });
      expect(ran.status).toBe(status);
      const [first] = findings.parse(JSON.parse(ran.out)).findings;
      expect([first!.file, first!.line]).toEqual([file, line]);
      // People still read it on standard error.
      expect(ran.err).toContain(first!.message.split('\n')[0]);
    },
  );

  it('says all findings of a record', () => {
    const { out } = labelwright(['check', 'bad.yaml', '--json'], { cwd });
    const found = findings.parse(JSON.parse(out)).findings;
    expect(found.map(({ line }) => line)).toEqual([6, 22]);
  });

  it('without --json leaves standard output empty', () => {
    const { out } = labelwright(['check', 'bad.yaml', '--', '--json'], { cwd });
    expect(out).toBe('');
  });
});

describe('several records of which one is bad', () => {
  it('give a list of as many, in order', () => {
    const call = ['classify', 'descaler.yaml', 'bad.yaml', 'degreaser.yaml', '--json', '--as-of', TODAY];
    const { status, out } = labelwright(call, { cwd });
    expect(status).toBe(2);
    const [one, two, three, ...more] = JSON.parse(out);
    expect(more).toEqual([]);
    expect([one.product.code, three.product.code]).toEqual(['LD-1000', 'CD-500']);
    expect(findings.extend({ file: z.literal('bad.yaml') }).parse(two).findings).toHaveLength(2);
  });

  it('stay a list where only one is good', () => {
    const { out } = labelwright(['classify', 'bad.yaml', 'descaler.yaml', '--json'], { cwd });
    expect(JSON.parse(out)).toHaveLength(2);
  });
});

describe('a defect', () => {
  it('says so, with --json too, and is 70', async () => {
    const { status, out, err } = await inProcess(() => {
      throw new TypeError('x is not a function');
    }, ['--json']);
    expect(status).toBe(70);
    expect(err).toMatch(/^a defect in labelwright: TypeError: x is not a function\n +at /);
    expect(findings.parse(JSON.parse(out)).findings).toEqual([
      { code: 'defect', severity: 'error', message: 'x is not a function' },
    ]);
  });
});

describe('a disk that is full', () => {
  // /dev/full refuses every write with ENOSPC: full(4) of Linux, on which the tests run.
  it.each(['classify patio-cleaner.yaml', 'check patio-cleaner.yaml --json', 'gtin 614141000418', '--help'])(
    '%s: one sentence, and 2',
    call => {
      const script = `"${process.execPath}" "${main}" ${call} > /dev/full`;
      const { status, stderr } = spawnSync('sh', ['-c', script], { cwd, encoding: 'utf8' });
      expect({ status, stderr }).toEqual({
        status: 2,
        stderr: 'cannot write to standard output: the disk is full\n',
      });
    },
  );
});
