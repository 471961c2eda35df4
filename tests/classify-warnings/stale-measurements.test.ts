import { describe, expect, it } from 'vitest';
import { staleMeasurements } from '../../src/classify/warnings/stale-measurements.ts';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { inProcess, put, workshop } from '../cli/_command.ts';
import { readRecord, recordAround } from '../support/cases.ts';

const told = (measuredOn: string, more: Record<string, unknown>) =>
  staleMeasurements(
    readRecord(
      recordAround({
        formula: [{ name: 'water', percent: 100 }],
        properties: {
          'flash-point': { value: '40 C', 'measured-on': measuredOn },
          pH: { value: 7, 'measured-on': measuredOn },
        },
        ...more,
      }),
    ),
  );

// 29 CFR 1910.1200(g)(5); that a measurement belongs to its formula: common practice, no source.
it('a flash point of the formula before is told, in one line', () => {
  expect(told('revision 2', { revision: '3' })).toHaveLength(1);
  expect(told('2026-01-05', { revised: '2026-02-11' })).toMatchObject([
    { properties: [{ property: 'pH' }, { property: 'flash-point' }] },
  ]);
});

it('and that of this formula is not', () => {
  expect(told('revision 3', { revision: '3' })).toEqual([]);
  expect(told('2026-02-12', { revised: '2026-02-11' })).toEqual([]);
  expect(told('revision 3', {})).toEqual([]);
});

// The flash point of ethanol in water falls with its share (handbooks); that twice the alcohol is another liquid needs no
// figure.
describe('a formula that moves away from what was measured', () => {
  const warnings = async (measuredOn: string, ethanol: number, more = '') => {
    const path = put(
      workshop(),
      'p.yaml',
      `labelwright: product/1
name: Window Wash
code: W-2
form: liquid
properties:
  flash-point: {value: 24 C, method: closed cup, measured-on: ${measuredOn}}
formula:
  - {name: ethanol, cas: 64-17-5, percent: ${ethanol}}
  - {name: dye, percent: 0.05, hazards: [], source: supplier sheet}
${more}  - {name: water, amount: balance}
`,
    );
    const { out } = await inProcess(classify, [path, '--json']);
    return (JSON.parse(out) as { warnings: { id: string; text: string }[] }).warnings
      .filter(({ id }) => id === 'stale-measurement')
      .map(({ text }) => text);
  };

  it('is told with the constituent that moved, by how much', async () => {
    const [text] = await warnings('{64-17-5: 40}', 80);
    expect(text).toContain('flash-point (ethanol was 40 %, is 80 %)');
    expect(await warnings('{ethanol: 40}', 40)).toEqual([]);
    expect(await warnings('{64-17-5: 38-42}', 41)).toEqual([]);
  });

  it('is told of what was not in it and what is gone', async () => {
    const acetone = '  - {name: acetone, cas: 67-64-1, percent: 2}\n';
    expect((await warnings('{64-17-5: 40}', 40, acetone))[0]).toContain('acetone was not in it, is 2 %');
    expect((await warnings('{64-17-5: 40, 67-63-0: 3}', 40))[0]).toContain('67-63-0 was 3 %, is gone');
  });

  it('is not told of what does not bear on it', async () => {
    expect(
      await warnings(
        '{64-17-5: 40}',
        40,
        '  - {name: sodium chloride, cas: 7647-14-5, percent: 5, hazards: [], source: handbook}\n',
      ),
    ).toEqual([]);
  });

  it('and `check` says what to write', async () => {
    const path = put(
      workshop(),
      'p.yaml',
      'labelwright: product/1\nname: W\ncode: W-3\nform: liquid\nproperties: {flash-point: 24 C}\nformula:\n  - {name: ethanol, cas: 64-17-5, percent: 40}\n  - {name: water, amount: balance}\n',
    );
    const { out } = await inProcess(check, [path]);
    expect(out).toContain('keep `measured-on: {64-17-5: 40}` beside its value');
  });
});
