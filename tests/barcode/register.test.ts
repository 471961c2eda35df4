import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { prefixFit } from '../../src/barcode/company-prefix.ts';
import { gtinRegister, type NumberUse } from '../../src/barcode/register.ts';
import { run } from '../../src/cli/commands/gtin.ts';
import { demoWith, inProcess, put, workshop } from '../cli/_command.ts';

const use = (gtin: string, level: NumberUse['level'] = 'pack', pack = 'a'): NumberUse => ({
  gtin,
  level,
  product: { name: 'Example', code: 'EX' },
  pack,
  file: 'x.yaml',
  line: 1,
});

describe('a register', () => {
  it('knows a number in every length', () => {
    const { entries, clashes } = gtinRegister([use('614141000418'), use('0614141000418', 'pack', 'b')], null);
    expect(entries).toHaveLength(1);
    expect(clashes).toHaveLength(1);
  });

  it('finds free numbers under the prefix of GS1’s example company', () => {
    const { free } = gtinRegister([use('0614141000005'), use('0614141000418')], '0614141');
    // Five digits of item reference below a prefix of seven: 0614141 00001 takes check digit 2 (weights 3 and 1).
    expect(free).toMatchObject({ capacity: 100_000, used: 2 });
    expect(free!.next[0]).toBe('0614141000012');
  });

  it('names the next case number', () => {
    const { cases } = gtinRegister([use('0614141000418'), use('10614141000415', 'case')], null);
    // 20614141000412 is the same item with indicator 2 (weights 3 and 1).
    expect(cases).toEqual([{ unit: '00614141000418', used: [1], next: '20614141000412' }]);
  });

  it('has none left where the prefix has twelve digits', () => {
    expect(gtinRegister([use('0614141000418')], '061414100041').free).toMatchObject({
      capacity: 1,
      used: 1,
      next: [],
    });
  });
});

describe('gtin --register', () => {
  it('lists a folder', async () => {
    const { status, out, err } = await inProcess(run, [
      '--register',
      workshop(),
      '--company-prefix',
      '0614141',
    ]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('0614141000418');
    expect(out).toContain('case of bottle-946');
    expect(out).toMatch(/next free: 0614141/);
  });

  it('sees that the zero of the company prefix is missing', async () => {
    // 614141 is the U.P.C. company prefix of GS1's example company, 0614141 its GS1 company prefix.
    expect(prefixFit('614141', ['614141000418'])).toBe('zero-missing');
    expect(prefixFit('0614141', ['614141000418', '10614141000415'])).toBe('fits');
    expect(prefixFit('952', ['614141000418'])).toBe('other');
    expect(prefixFit('952', ['96385074'])).toBe('nothing-to-compare');
    const { status, err } = await inProcess(run, ['--register', workshop(), '--company-prefix', '614141']);
    expect(status).toBe(1);
    expect(err).toContain('--company-prefix 0614141');
  });

  it('refuses one number on two products', async () => {
    const folder = workshop();
    mkdirSync(join(folder, 'more'));
    put(folder, 'other.yaml', demoWith(['code: KP-946', 'code: KP-947']));
    const { status, err } = await inProcess(run, ['--register', folder]);
    expect(status).toBe(1);
    expect(err).toMatch(/other\.yaml|patio-cleaner\.yaml/);
    expect(err).toMatch(/GTIN 0614141000418 stands for KP-94[67]/);
    expect(err).toContain('10614141000415');
  });

  it('says which record could not be read', async () => {
    const folder = workshop();
    put(folder, 'broken.yaml', demoWith(['form: liquid', 'form: liqid']));
    const { status, err, out } = await inProcess(run, ['--register', folder, '--json']);
    expect(status).toBe(2);
    expect(err).toContain('broken.yaml are not in the register');
    expect(JSON.parse(out).notRead).toHaveLength(1);
  });

  it.each([
    [['--register', '/nowhere/at/all']],
    [['--register', '.', '614141000418']],
    [['--company-prefix', '0614141']],
    [['--register', '.', '--company-prefix', '06']],
    [[]],
  ])('takes %j for a wrong call', async args => {
    expect((await inProcess(run, args)).status).toBe(2);
  });
});
