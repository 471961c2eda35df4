import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classTitle } from '../../../src/document/sheet/hazards.ts';
import { sheetJson } from '../../../src/document/sheet.ts';
import { openOnDocuments } from '../../../src/labelling/open-on-documents.ts';
import { listedClass } from '../../../src/notation/listed-class.ts';
import { en } from '../../../src/words/en/index.ts';
import { parts } from '../../classify/random-records.ts';
import { inputAround } from './sheet-input.ts';

// 29 CFR 1910.1200(d)(2) and (f)(2): a label without a class reads as if the product did not have it.
describe('a class that is left open although an ingredient has it', () => {
  it('is a warning, stands in the notice of the label and in section 2', async () => {
    let open = 0;
    await fc.assert(
      fc.asyncProperty(parts, async record => {
        const input = await inputAround(record);
        const { classification } = input;
        const warned = classification.warnings.flatMap(found =>
          found.id === 'undecided-with-cause' ? [found] : [],
        );
        const shown = openOnDocuments(classification).undecided;
        const [notice] = en.draftNotices(openOnDocuments(classification));
        const section = JSON.stringify(sheetJson(input).sections[1]);
        for (const result of classification.otherClasses) {
          if (result.outcome !== 'insufficient-data') continue;
          const { class: name, route } = result;
          const transient = /STOT SE 3 \((.+)\)/u.exec(name)?.[1];
          const positive = classification.constituents.flatMap(({ data }, place) =>
            data.hazards.some(hazard =>
              transient
                ? hazard.hazardClass === 'STOT SE' && hazard.category === '3' && hazard.effect === transient
                : listedClass(hazard.hazardClass) === name &&
                  !(name === 'STOT SE' && hazard.category === '3') &&
                  (!route || hazard.route === route),
            )
              ? [place]
              : [],
          );
          if (positive.length === 0) continue;
          open++;
          const said = route ? `${name} (${route})` : name;
          const telling = warned.filter(({ classes }) => classes.includes(said));
          expect(telling, said).toHaveLength(1);
          for (const place of positive) expect(telling[0]!.constituents, said).toContain(place);
          expect(shown, said).toContain(said);
          expect(notice, said).toContain(said);
          expect(section, said).toContain(classTitle(result, en.sheet));
        }
      }),
      { numRuns: 150, seed: 5 },
    );
    expect(open).toBeGreaterThan(100);
  });

  it('shows kerosine without a flash point on label and sheet', async () => {
    const input = await inputAround({
      properties: { 'kinematic-viscosity-40C': '1.5 mm2/s' },
      formula: [{ name: 'kerosine', cas: '8008-20-6', percent: 100 }],
    });
    expect(openOnDocuments(input.classification).undecided).toEqual(['Flam. Liq.']);
    const [warning] = input.classification.warnings.filter(({ id }) => id === 'undecided-with-cause');
    expect(warning).toMatchObject({ constituents: [0], needs: 'flash-point' });
    expect(JSON.stringify(sheetJson(input).sections[1])).toContain('Flammable liquids');
  });
});
