import { describe, expect, it } from 'vitest';
import { screenClaims } from '../../src/duties/claims.ts';
import { en } from '../../src/words/en/index.ts';
import { verdictOf } from './_screen.ts';

// 29 CFR 1910.1200 App. C, C.3.1 (read): supplementary information does not contradict or cast doubt on the
// standardized hazard information. 16 CFR 1500.122 gives "Harmless" and "Safe around pets" (from memory).
describe('words that contradict the hazard statements', () => {
  it.each([
    ['Safe on skin', ['H314'], 'contradicts'],
    ['Gentle on hands', ['H315'], 'contradicts'],
    ['Safe on skin', ['H226'], 'substantiate'],
    ['Harmless', ['H319'], 'contradicts'],
    ['Safe around pets', ['H302'], 'contradicts'],
    ['Non-toxic', ['H301'], 'contradicts'],
    ['Non-toxic', ['H411'], 'contradicts'],
    ['Non-flammable', ['H225'], 'contradicts'],
    ['Non-corrosive', ['H290'], 'contradicts'],
    ['Safe for the environment', ['H410'], 'contradicts'],
    ['Harmless', [], 'substantiate'],
    ['Rinse well with water', ['H314'], 'none'],
  ] as const)('%s beside %j: %s', (text, statements, verdict) => {
    expect(verdictOf(text, 'safety', statements)).toBe(verdict);
  });

  it('name the statements that they contradict', () => {
    const [claim] = screenClaims(
      [{ path: 'copy.tagline', text: 'Strong, yet safe on skin', places: [], file: 'x.yaml' }],
      ['H290', 'H314'],
    );
    expect(claim).toMatchObject({ words: 'safe on skin', against: ['H314'] });
    expect(en.claim(claim!)).toBe('"safe on skin" contradicts H314 on the same label');
  });
});
