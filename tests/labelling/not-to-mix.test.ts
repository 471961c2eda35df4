import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { inProcess, put, workshop } from '../cli/_command.ts';

const record = (more: string) => `labelwright: product/1
name: Quarrygate Wash
code: W-1
form: liquid
properties: {pH: 12, density: 1.02 g/mL, flash-point: none}
formula:
  - {name: sodium hypochlorite, cas: 7681-52-9, percent: 3}
  - {name: water, amount: balance}
${more}`;

interface Json {
  supplemental: { code: string; text: string }[];
  omitted: { what: string; why: string }[];
}
const classified = async (more: string, basis = 'us-hcs') => {
  const path = put(workshop(), 'p.yaml', record(more));
  const { out } = await inProcess(classify, [path, '--json', '--basis', basis]);
  return JSON.parse(out) as Json;
};
const LINE = {
  code: 'not-to-mix',
  text: 'Do not mix with acids, ammonia or other cleaners: toxic gas may form.',
};

// 29 CFR 1910.1200(d)(1)(ii): use that can be foreseen; App. C, C.3.1: supplemental information. The warning about acids
// and ammonia: National Fire Protection Association, note of 13 April 2020 on mixing household chemicals.
describe('a bottle of bleach says what it must not be mixed with', () => {
  it('on the label, until the record leaves it out with a reason', async () => {
    expect((await classified('')).supplemental).toContainEqual(LINE);
    const without = await classified(
      'statements: {omit: [{code: not-to-mix, reason: dosed by a closed pump}]}\n',
    );
    expect(without.supplemental.map(({ code }) => code)).not.toContain('not-to-mix');
    expect(without.omitted).toContainEqual(
      expect.objectContaining({ what: 'not-to-mix', why: expect.stringContaining('closed pump') }),
    );
  });

  it('is asked for until the record keeps it or leaves it out', async () => {
    const asked = async (more: string) => {
      const { out } = await inProcess(check, [put(workshop(), 'p.yaml', record(more))]);
      return out.includes('proposed for the label');
    };
    expect(await asked('')).toBe(true);
    expect(await asked('statements: {keep: [not-to-mix]}\n')).toBe(false);
    expect(await asked('statements: {omit: [{code: not-to-mix, reason: dosed}]}\n')).toBe(false);
  });

  it('stands back where CLP prescribes a line of its own', async () => {
    const prescribed = await classified('statements: {add: [EUH206]}\n', 'eu-clp');
    expect(prescribed.supplemental.map(({ code }) => code)).toContain('EUH206');
    expect(prescribed.supplemental.map(({ code }) => code)).not.toContain('not-to-mix');
  });
});
