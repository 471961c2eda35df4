import { describe, expect, it } from 'vitest';
import { run as ship } from '../../src/cli/commands/ship.ts';
import { makePacket } from '../../src/draft/packet.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { en } from '../../src/words/en/index.ts';
import { classified } from '../golden/_products.ts';
import { inProcess, labelwright, TODAY } from './_command.ts';

const demo = (name: string) => `templates/demo/${name}.yaml`;

/** The keys of section 6 of the JSON form, in order. */
const keys = [
  'schema',
  'product',
  'pack',
  'rules',
  'asOf',
  'answer',
  'description',
  'un',
  'name',
  'technical',
  'class',
  'subsidiary',
  'packingGroup',
  'marinePollutant',
  'limitedQuantity',
  'hazardLabels',
  'hazardousSubstances',
  'because',
  'missing',
  'alternatives',
];

describe('ship', () => {
  // Rows of 49 CFR 172.101; packing groups by 173.121 and 173.137.
  it.each([
    ['patio-cleaner', 'bottle-946', 'UN1791, Hypochlorite solutions, 8, II', '1 L', '49 CFR 173.154(b)(1)'],
    ['degreaser', 'bottle-500', 'UN2052, Dipentene solution, 3, III', '5 L', '49 CFR 173.150(b)(3)'],
    ['descaler', 'bottle-1l', 'UN1805, Phosphoric acid solution, 8, III', '5 L', '49 CFR 173.154(b)(2)'],
  ])('%s in JSON', async (name, pack, description, innerLimit, cite) => {
    const { status, out, err } = await inProcess(ship, [demo(name), '--pack', pack, '--json']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const answer = JSON.parse(out);
    expect(Object.keys(answer)).toEqual(keys);
    expect(answer).toMatchObject({
      schema: 'labelwright/transport/1',
      pack,
      rules: '49 CFR 171-180',
      answer: 'regulated',
      description,
      limitedQuantity: { allowed: true, innerLimit, grossLimit: '30 kg', cite },
    });
    const [un, shown, hazard, group] = description.split(', ');
    expect([answer.un, answer.name, answer.class, answer.packingGroup]).toEqual([un, shown, hazard, group]);
    for (const { cite: source, working } of answer.because) {
      expect(source).toMatch(/^49 CFR 17[123]\./);
      expect(working).not.toMatch(/undefined|\[object/);
    }
    for (const alternative of answer.alternatives) expect(alternative.when).not.toBe('');
  });

  it('stands in the packet as transport.json, a review copy', async () => {
    const product = await classified(demo('degreaser'), 'us-hcs');
    const { files } = await makePacket(product, TODAY, await loadFonts(), en);
    const file = files.find(({ name }) => name === 'transport.json')!;
    expect(file.kind).toBe('review');
    const { copy, fingerprint, ...answer } = JSON.parse(file.bytes as string);
    const { out } = await inProcess(ship, [
      demo('degreaser'),
      '--pack',
      product.record.packs[0]!.id,
      '--json',
      '--as-of',
      TODAY,
    ]);
    expect(answer).toEqual(JSON.parse(out));
    expect([copy, typeof fingerprint]).toEqual(['review', 'string']);
    const index = files.find(({ name }) => name === 'index.html')!.bytes as string;
    expect(index).toContain('href="transport.json"');
  });

  it('in words, as a draft for the shipper to check', async () => {
    const { status, out } = await inProcess(ship, [demo('descaler')]);
    expect(status).toBe(0);
    expect(out).toMatch(
      /^Limewright Descaler \(LD-1000\), bottle-1l: UN1805, Phosphoric acid solution, 8, III\n/,
    );
    expect(out).toContain('limited quantity: allowed; inner packagings up to 5 L, package up to 30 kg');
    expect(out).toContain('Draft for qualified review');
    expect(out).toContain('checks the current text');
  });

  it('from the built command', () => {
    const { status, out, err } = labelwright(['ship', demo('degreaser'), '--pack', 'bottle-500']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('UN2052, Dipentene solution, 3, III');
  });

  it.each([
    [[], 'no record given'],
    [[demo('degreaser'), '--pack', 'bottle-501'], 'there is no pack bottle-501; did you mean bottle-500?'],
    [[demo('degreaser'), '--pak', 'x'], 'did you mean --pack?'],
  ])('%j is a wrong call', async (args, said) => {
    const { status, out, err } = await inProcess(ship, args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(said);
  });
});
