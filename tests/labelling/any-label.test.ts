import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelElements } from '../../src/labelling/elements.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import { basisIds } from '../../src/reference/basis.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { en } from '../../src/words/en/index.ts';
import { classified } from './_classified.ts';

const form = fc.constantFrom('liquid', 'solid', 'gas', 'aerosol');
const fact = fc.constantFrom(true, false, null, undefined);
const product = fc.record({ form, volatile: fact, inhalable: fact, consumer: fc.boolean() });

describe.each(basisIds)('any label of %s', async basis => {
  const data = await loadLabelData(basis);
  const hazards = data.allocation.rows.map(({ hazard }) => hazard).filter(hazard => parseHazard(hazard).ok);
  const some = fc.uniqueArray(fc.constantFrom(...hazards), { minLength: 1, maxLength: 6 });
  const runs = { numRuns: 150 };

  it('reads most rows in the notation of the classification', () => {
    expect(hazards.length).toBeGreaterThan(data.allocation.rows.length - 3);
  });

  it('repeats no statement and leaves no field open', () => {
    fc.assert(
      fc.property(some, product, (chosen, given) => {
        const found = labelElements(classified(basis, chosen), data, given);
        const all = [...found.hazardStatements, ...found.precautionaryStatements, ...found.supplemental];
        const texts = all.map(({ text }) => text);
        expect(new Set(texts).size).toBe(texts.length);
        for (const text of texts) expect(text).not.toMatch(/[{}<>[\]]|\.\.|…| {2}|undefined| \.|: *$/);
        for (const text of texts) expect(text).toMatch(/^[A-Z]/);
        // An action may be said for two routes or two hazards; the rest of a statement not.
        const repeatable = /^(Get|Call|Use .* extinguish|Immediately (call|rinse))/;
        const said = found.precautionaryStatements
          .flatMap(({ text }) => text.split(/(?<=[.:]) /))
          .filter(sentence => !sentence.endsWith(':') && !repeatable.test(sentence));
        expect(said.filter((sentence, index) => said.indexOf(sentence) !== index)).toEqual([]);
      }),
      runs,
    );
  });

  it('does not depend on the order of the hazards', () => {
    fc.assert(
      fc.property(some, product, fc.nat(), (chosen, given, turn) => {
        const at = turn % chosen.length;
        const turned = [...chosen.slice(at), ...chosen.slice(0, at)].reverse();
        expect(labelElements(classified(basis, turned), data, given)).toEqual(
          labelElements(classified(basis, chosen), data, given),
        );
      }),
      runs,
    );
  });

  it('has one signal word, each pictogram once, and a reason for all that it leaves off', () => {
    fc.assert(
      fc.property(some, product, (chosen, given) => {
        const found = labelElements(classified(basis, chosen), data, given);
        const rows = data.allocation.rows.filter(({ hazard }) => chosen.includes(hazard));
        const danger = rows.some(({ signalWord }) => signalWord === 'Danger');
        const warning = rows.some(({ signalWord }) => signalWord === 'Warning');
        expect(found.signalWord).toBe(danger ? 'Danger' : warning ? 'Warning' : null);
        expect(new Set(found.pictograms).size).toBe(found.pictograms.length);
        const noted = found.omitted.map(({ what }) => what).join('\n');
        for (const code of new Set(rows.flatMap(row => row.pictograms)))
          if (!(found.pictograms as readonly string[]).includes(code)) expect(noted).toContain(`${code} for`);
        for (const { what, why, cite } of [...found.omitted, ...found.missing]) {
          expect(what).not.toBe('');
          expect(en.statements.why(why).length).toBeGreaterThan(10);
          expect(cite).toMatch(/C\.[234]|Article|Annex|GHS|1272/);
        }
      }),
      runs,
    );
  });

  // 29 CFR 1910.1200 App. C, C.2: every statement of C.4 appears except as C.2.1 to C.2.4 provide.
  it('shows, combines or explains every statement that a row calls for', () => {
    fc.assert(
      fc.property(some, product, (chosen, given) => {
        const found = labelElements(classified(basis, chosen), data, given);
        const parts = found.precautionaryStatements.flatMap(({ code }) => code.split('+'));
        // "On skin" and "on skin (or hair)" are one route.
        const shown = new Set([...parts, ...parts.map(part => data.precautions.medical.sameRoute[part])]);
        const noted = new Set([...found.omitted, ...found.missing].flatMap(({ what }) => what.split('+')));
        const rows = data.allocation.rows.filter(({ hazard }) => chosen.includes(hazard));
        for (const { precautions } of rows)
          for (const { code } of Object.values(precautions).flat())
            for (const part of code.replace('[+', '+').replace(']', '').split('+'))
              expect(shown.has(part) || noted.has(part), `${part} of ${chosen.join('; ')}`).toBe(true);
      }),
      runs,
    );
  });

  it('calls for medical help at one urgency only, but for symptoms', () => {
    const levels = data.precautions.medical.levels.flat();
    fc.assert(
      fc.property(some, product, (chosen, given) => {
        const found = labelElements(classified(basis, chosen), data, given);
        const calls = found.precautionaryStatements.filter(({ code }) => {
          const parts = code.split('+');
          return (
            parts.some(part => levels.includes(part)) && !/P33[237]|P342|P336/.test(code) && parts.length > 1
          );
        });
        // "If swallowed: call. Do NOT induce vomiting." of the aspiration hazard stays whole beside the call for others.
        const ofRoutes = calls.filter(({ code }) => !(code.startsWith('P301+') && code.includes('P331')));
        expect(ofRoutes.length).toBeLessThan(2);
        expect(calls.length).toBeLessThan(3);
        const urgencies = calls.map(({ code }) => levels.find(level => code.split('+').includes(level)));
        expect(new Set(urgencies).size).toBeLessThan(2);
      }),
      runs,
    );
  });
});
