import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Classification } from '../../src/classify/classification.ts';
import { classifyLines, type PublishedExample, publishedFiles } from '../support/cases.ts';

const files = publishedFiles(join(import.meta.dirname, '../cases/published'));

/** Hazards as the examples write them: code, with the route in brackets where there is one. */
const written = ({ hazards }: Classification): string[] =>
  hazards.map(
    ({ code, route, effect }) =>
      `${code}${effect ? ` (${effect})` : route && code.startsWith('Acute') ? ` (${route})` : ''}`,
  );

const bare = (hazard: string): string =>
  hazard.replace(/^(\S+ (?:Corr|Irrit|Dam|Sens|Tox|Liq|SE|RE)\.?).*?( \(.*\))?$/, '$1$2');

/** Whether a hazard falls under an expectation: an exact code, or a class name alone. */
const matches = (hazard: string, expectation: string): boolean =>
  hazard === expectation ||
  hazard.replace(/ \d[A-C]?(?= |$)/, '') === expectation ||
  bare(hazard) === expectation;

const simplified = (hazard: string): string =>
  hazard.replace(/^(Acute Tox\. \d) \(inhalation.*\)$/, '$1 (inhalation)');

for (const { file, source, examples } of files) {
  describe(`${source.title} (${file})`, () => {
    for (const example of examples)
      for (const basis of [example.basis, ...(example.alsoBasis ?? [])])
        it(`${example.id}: ${example.title} [${basis}; ${example.rule}]`, () => check(example, basis));
  });
}

async function check(example: PublishedExample, basis: PublishedExample['basis']): Promise<void> {
  const { formula, form, properties, expected } = example;
  const classification = await classifyLines(formula, basis, { form, ...(properties ? { properties } : {}) });
  const found = written(classification);
  for (const hazard of expected.hazards ?? [])
    expect(found.map(simplified), `has ${hazard}`).toContain(simplified(hazard));
  for (const hazard of expected.notHazards ?? [])
    expect(
      found.filter(each => matches(each, simplified(hazard))),
      `lacks ${hazard}`,
    ).toEqual([]);
  const classes = classification.hazards.map(({ hazardClass }) => hazardClass);
  for (const each of expected.classes ?? []) expect(classes, `has a category of ${each}`).toContain(each);
  for (const each of expected.notClasses ?? [])
    expect(classes, `has no category of ${each}`).not.toContain(each);
  const codes = classification.supplemental.map(({ code }) => code);
  for (const code of expected.supplemental ?? []) expect(codes, `bears ${code}`).toContain(code);
  for (const code of expected.notSupplemental ?? [])
    expect(codes, `does not bear ${code}`).not.toContain(code);
  for (const [key, ate] of Object.entries(expected.ateMix ?? {})) {
    const printed = expected.printedTo?.[key] ?? 0.01 * ate;
    const value = classification.ateMix[key as keyof Classification['ateMix']];
    expect(value, `ATEmix ${key}`).not.toBeNull();
    expect(Math.abs(value! - ate), `ATEmix ${key}: ${value} for ${ate}`).toBeLessThanOrEqual(printed);
  }
  for (const [route, percent] of Object.entries(expected.unknownAcuteToxicity ?? {}))
    expect(classification.unknownAcuteToxicity[route as 'oral'], `unknown ${route}`).toBeCloseTo(percent, 6);
}
