import { execFileSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { tryLabel } from '../../../src/layout/label/layout-label.ts';
import { writePdf } from '../../../src/pdf/write.ts';
import { loadFonts } from '../../../src/text/font-library.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';
import { extentOf, inkPoints } from './ink.ts';
import { sampleModel, sampleStock } from './sample.ts';
import { CONTENTS, DIES } from './trials.ts';

let fonts: FontLibrary;
beforeAll(async () => {
  fonts = await loadFonts();
});

const laid = async (content: string, die: string) =>
  (
    await tryLabel(await sampleModel(CONTENTS[content]!), fonts, {
      ...(await sampleStock(DIES[die]!.width, DIES[die]!.height)),
      die: DIES[die]!,
    })
  ).layout!;

/** pdftotext of Poppler, which orders text by its place on the page alone; where a machine has it. */
const reader = (() => {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

describe('reading order', () => {
  it('has the signal word beside its pictogram, where text stands in a column at the right', async () => {
    const { document } = await laid('one hazard', '130x120');
    const items = document.frames[0]!.items.flatMap(item => (item.kind === 'text' ? [item] : []));
    const word = items.find(({ run }) => run.text.startsWith('Warning'))!;
    const column = items.find(({ run }) => run.text.startsWith('Prevention'))!;
    const sign = extentOf(
      document.frames[0]!.items.flatMap(item =>
        item.kind === 'path' && item.fill === 'red' ? inkPoints(item, fonts) : [],
      ),
    );
    expect(column.x).toBeGreaterThan(word.x);
    expect(word.x).toBeGreaterThan(sign.right);
    expect(word.y).toBeLessThan((sign.top + sign.bottom) / 2);
  });

  it
    .runIf(reader)
    .each(
      ['one hazard', 'corrosive', 'flammable', 'nine statements'].flatMap(content =>
        ['110x125', '150x250', 'square corners 120x100', 'wrap 276x90'].map(die => [content, die]),
      ),
    )('%s on %s is found by a reader that knows places alone', async (content, die) => {
    const { document } = await laid(content!, die!);
    const bytes = await writePdf(document, fonts, { kind: 'label', version: '0' });
    const text = execFileSync('pdftotext', ['-', '-'], { input: bytes, encoding: 'utf8' });
    expect(text.replace(/\s+/g, ' ')).toMatch(
      /DRAFT.*(?:Kerbstone|Brightline|Solvent).*(?:Danger|Warning).*Prevention.*Response.*IF IN EYES.*Directions.*Rinse well/,
    );
  });
});
