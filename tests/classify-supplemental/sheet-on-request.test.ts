import { describe, expect, it } from 'vitest';
import { codes, supplementalOf } from './_context.ts';

const part = (hazard: string, percent: number, limits: string[] = []) => ({
  name: `part ${hazard}`,
  percent,
  hazards: [hazard],
  ...(limits.length > 0 ? { limits } : {}),
  source: 'test',
});

const has = async (line: ReturnType<typeof part>, more: Record<string, unknown> = {}): Promise<boolean> =>
  codes(await supplementalOf([line], more)).includes('EUH210');

describe('EUH210 (CLP Annex II 2.10, consolidated text of 1 September 2025)', () => {
  it.each([
    ['Skin Sens. 1', 0.1],
    ['Skin Sens. 1B', 0.1],
    ['Resp. Sens. 1', 0.1],
    ['Resp. Sens. 1B', 0.1],
    ['Carc. 2', 0.1],
    ['Skin Sens. 1A', 0.01],
    ['Resp. Sens. 1A', 0.01],
    ['Repr. 1A', 0.1],
    ['Repr. 1B', 0.1],
    ['Repr. 2', 0.1],
    ['Lact.', 0.1],
    ['ED HH 2', 0.1],
    ['ED ENV 2', 0.1],
    ['Skin Irrit. 2', 1],
    ['Aquatic Chronic 2', 1],
    ['STOT RE 2', 1],
  ])('%s from %s percent', async (hazard, from) => {
    expect(await has(part(hazard, from))).toBe(true);
    expect(await has(part(hazard, from * 0.99))).toBe(false);
  });

  it('one tenth of the specific limit of a sensitizer', async () => {
    expect(await has(part('Skin Sens. 1', 0.5, ['Skin Sens. 1; C >= 5']))).toBe(true);
    expect(await has(part('Skin Sens. 1', 0.0036, ['Skin Sens. 1; C >= 0.036']))).toBe(true);
    expect(await has(part('Skin Sens. 1', 0.0035, ['Skin Sens. 1; C >= 0.036']))).toBe(false);
  });

  it('0.2 % by volume in gases', async () => {
    expect(await has(part('STOT RE 2', 0.2), { form: 'gas' })).toBe(true);
    expect(await has(part('STOT RE 2', 0.19), { form: 'gas' })).toBe(false);
  });

  it('physical hazards of an ingredient are no other health or environmental hazards', async () => {
    expect(await has(part('Met. Corr. 1', 2))).toBe(false);
  });

  it('not on a classified mixture, nor on one for the general public', async () => {
    expect(await has(part('Skin Sens. 1', 1))).toBe(false);
    expect(await has(part('Skin Sens. 1', 0.1), { soldAs: { generalPublic: true } })).toBe(false);
  });
});
