import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { demoWith, inProcess, put, workshop } from '../cli/_command.ts';

const folder = workshop();
let count = 0;
const duties = async (...changes: readonly (readonly [string, string])[]) => {
  count += 1;
  const path = put(folder, `record-${count}.yaml`, demoWith(...changes));
  const { out, err, status } = await inProcess(check, [path, '--json']);
  if (status === 2) throw new Error(err);
  return JSON.parse(out).products[0].duties as Record<string, unknown>[];
};
const only = (all: Record<string, unknown>[], id: string) => all.filter(duty => duty.id === id);
const sold = ['form: liquid', 'form: liquid\nsold-to: {users: [consumers], markets: [us]}'] as const;

describe('duties of a record', () => {
  // 16 CFR 1700.14(a)(5): 2 percent or more of free sodium or potassium hydroxide.
  it.each([
    ['percent: 1.6', 'open'],
    ['percent: 1.7', 'due'],
  ])('child-resistant packaging at %s on top of what the bleach brings', async (percent, state) => {
    const all = await duties(
      sold,
      ['percent: 1.5', percent],
      ['child-resistant: true', 'child-resistant: false'],
    );
    const [found] = only(all, 'child-resistant').filter(duty => duty.rule === 'hydroxide');
    expect(found).toMatchObject({ state, cite: '16 CFR 1700.14(a)(5)' });
  });

  it('is met where the pack has it, and not asked where no consumer buys', async () => {
    const met = await duties(sold, ['percent: 1.5', 'percent: 3']);
    expect(only(met, 'child-resistant')[0]).toMatchObject({ state: 'met' });
    const trade = await duties(['form: liquid', 'form: liquid\nsold-to: {users: workplace, markets: [us]}']);
    expect(only(trade, 'child-resistant-none')).toHaveLength(1);
    expect(only(trade, 'voc-none')).toHaveLength(1);
  });

  // 16 CFR 1700.14(a)(2), (7), (15) and (31) all turn on the use of one distillate.
  it('rules that depend on the use of one substance are one line, each paragraph beside its use', async () => {
    const { out } = await inProcess(check, ['templates/demo/degreaser.yaml']);
    const lines = out.split('\n').filter(line => line.includes('child-resistant packaging'));
    expect(lines).toHaveLength(1);
    for (const paragraph of ['(a)(2)', '(a)(7)', '(a)(15)', '(a)(31)']) expect(lines[0]).toContain(paragraph);
  });

  it('takes category and counting of the record for VOC', async () => {
    const voc =
      'form: liquid\nvoc: {category: bathroom-and-tile-cleaner, counted: [{of: builder blend, as: not-organic, source: supplier}]}';
    const [found] = only(await duties(['form: liquid', voc]), 'voc');
    expect(found).toMatchObject({
      outcome: 'within',
      category: 'bathroom-and-tile-cleaner',
      sure: 0,
      atMost: 2,
    });
  });

  it('names a category that is none, with its place', async () => {
    const path = put(
      folder,
      'wrong.yaml',
      demoWith(['form: liquid', 'form: liquid\nvoc: {category: glas-cleaner}']),
    );
    const { status, err } = await inProcess(check, [path]);
    expect(status).toBe(2);
    expect(err).toMatch(/wrong\.yaml:\d+:\d+/);
    expect(err).toContain('glass-cleaner');
  });

  // Methanol, CAS 67-56-1, developmental toxicity (list of OEHHA, hazard-data/sources/prop65.csv).
  it('finds state listings by number', async () => {
    const all = await duties([
      '- name: builder blend\n    percent: 3',
      '- name: methyl alcohol\n    cas: 67-56-1\n    percent: 3',
    ]);
    expect(only(all, 'state-warning')[0]).toMatchObject({ by: 'cas', toxicity: ['developmental'] });
  });

  it('says what a marketplace asks and the record lacks', async () => {
    const all = await duties(['revised: 2026-10-30\n', '']);
    expect(only(all, 'listing').filter(duty => duty.state === 'due')).toMatchObject([{ item: 'sheet-date' }]);
  });

  it('stands in the packet: file, index and review list', async () => {
    const out = join(folder, 'out');
    const { status } = await inProcess(packet, [join(folder, 'patio-cleaner.yaml'), '--out', out]);
    expect(status).toBe(0);
    const file = JSON.parse(readFileSync(join(out, 'duties.json'), 'utf8'));
    expect(file).toMatchObject({ schema: 'labelwright/duties/1', copy: 'review' });
    const index = readFileSync(join(out, 'index.html'), 'utf8');
    expect(index).toContain('Duties around the label');
    expect(index.match(/16 CFR 1700\.14\(a\)\(5\)/g)!.length).toBeGreaterThan(0);
  });
});
