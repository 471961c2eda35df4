import { describe, expect, it } from 'vitest';
import { classifyLines } from '../support/cases.ts';

const water = { name: 'water', amount: 'balance' };
const warningsOf = async (id: string, ...lines: Record<string, unknown>[]) =>
  (await classifyLines([...lines, water], 'us-hcs')).warnings
    .filter(warning => warning.id === id)
    .map(({ text }) => text);

// 29 CFR 1910.1200 App. A, Table A.1.1: 20 mg/kg by mouth is Category 2 (above 5, up to 50 mg/kg).
describe('an acute toxicity estimate', () => {
  const told = (oral: string) =>
    warningsOf('ate-contradicts-category', {
      name: 'a',
      percent: 10,
      hazards: ['Acute Tox. 4 (oral)'],
      ate: { oral },
    });

  it('in another category than the one listed is told', async () => {
    const [text] = await told('20 mg/kg');
    expect(text).toContain('20 mg/kg lies in Category 2, and Category 4 is listed');
  });

  it.each(['301 mg/kg', '500 mg/kg', '2000 mg/kg'])('in the one listed is not (%s)', async oral => {
    expect(await told(oral)).toEqual([]);
  });
});

// 29 CFR 1910.1200 App. A, A.9.3.4.1: "the specific organ(s)".
describe('organs of STOT RE', () => {
  const liver = { name: 'a', percent: 12, hazards: ['STOT RE 1 (liver)'] };
  const kidney = { name: 'b', percent: 12, hazards: ['STOT RE 2 (kidney)'] };

  it('of Category 2 are told where the record chooses Category 1 alone', async () => {
    const told = async (line: typeof kidney) =>
      (
        await classifyLines([liver, line, water], 'us-hcs', {
          choices: [{ reading: 'stot-worst-category', take: 'worst-alone', reason: 'test' }],
        })
      ).warnings
        .filter(({ id }) => id === 'stot-other-organ')
        .map(({ text }) => text);
    expect((await told(kidney))[0]).toContain('12 % b gives Category 2 for kidney');
    expect(await told({ ...kidney, percent: 0.9 })).toEqual([]);
    expect(await told({ ...kidney, hazards: ['STOT RE 2 (liver)'] })).toEqual([]);
    expect(await warningsOf('stot-other-organ', liver, kidney)).toEqual([]);
  });

  it('that an ingredient leaves open are told where another names its own', async () => {
    const [text] = await warningsOf('stot-organ-missing', liver, {
      ...liver,
      name: 'c',
      hazards: ['STOT RE 1'],
    });
    expect(text).toContain('no organ is known for c');
    expect(await warningsOf('stot-organ-missing', liver)).toEqual([]);
  });
});
