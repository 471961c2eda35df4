import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakLines, textWidth } from '../../src/text/break-lines.ts';
import { loadFonts } from '../../src/text/font-library.ts';
import { keepTogether } from '../../src/text/keep-together.ts';

const fonts = await loadFonts();
const lines = (text: string, width: number) =>
  breakLines([{ text, face: 'regular' }], width, { fonts, size: 8 });
const texts = (text: string, width: number) => lines(text, width).map(line => line.text);
const justUnder = (text: string) => textWidth(fonts, text, 'regular', 8) * 0.999;

const STATEMENT =
  'IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water or shower.';

describe('breakLines', () => {
  it('keeps every word, in order, and no line wider than the column', () => {
    for (let width = 18; width < 90; width += 3.7) {
      const broken = lines(STATEMENT, width);
      expect(broken.map(({ text }) => text).join(' ')).toBe(STATEMENT);
      for (const line of broken) {
        expect(line.width).toBeLessThanOrEqual(width + 1e-6);
        expect(line.width).toBeCloseTo(textWidth(fonts, line.text, 'regular', 8), 9);
        expect(line.forced).toBe(false);
      }
    }
  });

  it('fills lines greedily: the next word would not have fitted', () => {
    const broken = lines(STATEMENT, 40);
    for (const [index, line] of broken.slice(0, -1).entries()) {
      const word = broken[index + 1]!.text.split(' ')[0]!;
      expect(textWidth(fonts, `${line.text} ${word}`, 'regular', 8)).toBeGreaterThan(40);
    }
  });

  it('accepts a text that fits exactly', () => {
    expect(texts(STATEMENT, textWidth(fonts, STATEMENT, 'regular', 8))).toEqual([STATEMENT]);
    expect(texts(STATEMENT, justUnder(STATEMENT))).toHaveLength(2);
  });

  it('breaks after hyphens and slashes between words (UAX #14 classes HY and SY)', () => {
    expect(texts('a non-sparking', justUnder('a non-sparking'))).toEqual(['a non-', 'sparking']);
    expect(texts('gloves/clothing', justUnder('gloves/clothing'))).toEqual(['gloves/', 'clothing']);
  });

  it.each(['7647-14-5', 'mg/L', 'X-ray', 'UN 1760', '946 mL', '12.5 %', '≥ 5 %', '32 fl oz', '4400 mg/kg'])(
    'does not part %s',
    code => {
      const text = `holds ${code}`;
      expect(texts(text, justUnder(text))).toEqual(['holds', code]);
    },
  );

  it('forces a word apart only where no line can hold it, after a sign where there is one', () => {
    const [first, second] = lines('P305+P351+P338', justUnder('P305+P351+P338'));
    expect([first!.text, first!.forced]).toEqual(['P305+P351+', true]);
    expect([second!.text, second!.forced, second!.last]).toEqual(['P338', false, true]);
    expect(texts('methylisothiazolinone', 12).join('')).toBe('methylisothiazolinone');
  });

  it('shows a soft hyphen only at the end of a line', () => {
    expect(texts('iso\u00ADthiazolinone', 60)).toEqual(['isothiazolinone']);
    expect(texts('iso\u00ADthiazolinone', 14)).toEqual(['iso-', 'thiazolinone']);
  });

  it('carries faces across a line and places runs one after the other', () => {
    const spans = [
      { text: 'DANGER ', face: 'bold' },
      { text: 'Causes burns.', face: 'regular' },
    ] as const;
    const [line, ...more] = breakLines(spans, 80, { fonts, size: 8, firstIndent: 2 });
    expect(more).toEqual([]);
    expect(line!.runs.map(({ span, run }) => [span, run.face, run.text])).toEqual([
      [0, 'bold', 'DANGER '],
      [1, 'regular', 'Causes burns.'],
    ]);
    expect(line!.runs[0]!.x).toBe(2);
    expect(line!.runs[1]!.x).toBeCloseTo(2 + textWidth(fonts, 'DANGER ', 'bold', 8), 9);
  });

  it('loses and invents no character, whatever the width and the faces', () => {
    const word = fc.stringMatching(/^[A-Za-z0-9%+/.,-]{1,18}$/u);
    const face = fc.constantFrom('regular' as const, 'bold' as const, 'italic' as const);
    const span = fc.record({
      text: fc.array(word, { minLength: 1, maxLength: 8 }).map(words => `${words.join(' ')} `),
      face,
    });
    const paragraph = fc.array(span, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(paragraph, fc.integer({ min: 3, max: 80 }), (spans, width) => {
        const broken = breakLines(spans, width, { fonts, size: 7 });
        const strip = (text: string) => text.replace(/\s/gu, '');
        expect(strip(broken.map(({ text }) => text).join(''))).toBe(
          strip(spans.map(({ text }) => text).join('')),
        );
        for (const line of broken) expect(line.width).toBeLessThanOrEqual(width + 1e-6);
        expect(broken.map(({ last }) => last)).toEqual(broken.map((_, index) => index === broken.length - 1));
      }),
      { numRuns: 60 },
    );
  });

  it('ends lines at line feeds and keeps blank ones', () => {
    expect(texts('one\n\ntwo', 50)).toEqual(['one', '', 'two']);
    expect(texts(' ', 50)).toEqual([]);
  });
});

describe('keepTogether', () => {
  it('ties numbers to units and leaves words alone', () => {
    expect(keepTogether('1.09 g/mL at 20 °C')).toBe('1.09\u00A0g/mL at 20\u00A0°C');
    expect(keepTogether('2 large bottles, 3 men')).toBe('2 large bottles, 3 men');
  });
});
