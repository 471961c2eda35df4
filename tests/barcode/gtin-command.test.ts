import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/commands/gtin.ts';
import { nodeFiles } from '../../src/cli/files.ts';
import type { Io } from '../../src/cli/io.ts';

const call = async (args: string[], input = '') => {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: async () => input,
    lines: () => {
      throw new Error('the whole input is read at once');
    },
    files: nodeFiles,
    today: '2026-11-25',
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
  };
  return { status: await run(args, io), out, err };
};

describe('gtin', () => {
  it('accepts a right number', async () => {
    const { status, out, err } = await call(['614141000418']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('0614141000418');
    expect(out).toContain('UPC-A');
  });

  it('says what is wrong with a wrong one, and both ways to read it', async () => {
    const { status, out, err } = await call(['614141000481']);
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain('should be 7');
    expect(err).toContain('614141000418');
    expect(err).toContain('6141410004814');
  });

  it.each([[['12x']], [['']], [['12345']]])('refuses %j', async args => {
    const { status, out, err } = await call(args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).not.toBe('');
  });

  it('reads standard input and writes JSON', async () => {
    const { status, out } = await call(['-', '--json'], '96385074\n\n629104150021\r\n');
    expect(status).toBe(1);
    const { schema, numbers } = JSON.parse(out);
    expect(schema).toBe('labelwright/gtin/1');
    expect(numbers.map(({ problem }: { problem: string | null }) => problem)).toEqual([null, 'check-digit']);
  });

  it('completes on request', async () => {
    const { status, out } = await call(['--complete', '629104150021']);
    expect(status).toBe(0);
    expect(out).toContain('6291041500213');
  });
});
