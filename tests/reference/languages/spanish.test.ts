import { describe, expect, it } from 'vitest';
import spanish from '../../../hazard-data/languages/es/statements.json' with { type: 'json' };
import { fillStatement } from '../../../src/labelling/statement-text.ts';
import type { BasisId } from '../../../src/reference/basis.ts';
import { loadLabelData } from '../../../src/reference/label-data/load-label-data.ts';
import { loadSpoken } from '../../../src/reference/label-data/load-spoken.ts';
import { readHow, spokenLabelData } from '../../../src/reference/label-data/spoken.ts';
import type { StatementFile, StatementText } from '../../../src/reference/label-data/statements.ts';
import second from './spanish-second-reading.json' with { type: 'json' };

// Sources: the extract of 02008R1272-20250901 (EUR-Lex) that the data name, and a second reading beside this test.

const spoken = (await loadSpoken('es'))!;
const bases: readonly BasisId[] = ['eu-clp', 'un-ghs', 'us-hcs'];

const textsOf = ({ hazard, supplemental, precautionary }: StatementFile): [string, StatementText][] =>
  Object.entries({ ...hazard, ...supplemental, ...precautionary });

/** A text without full stops and with the alternatives of the law between slashes, as lists print them. */
const bare = (text: string): string => text.replace(/\.$/u, '').replaceAll(/\s+/gu, ' ').trim();

/** Alternatives of the law as it prints them. */
const printed: Readonly<Record<string, string>> = {
  '{air}': 'el polvo/el humo/el gas/la niebla/los vapores/el aerosol',
  '{equipment}': 'guantes/prendas/gafas/máscara de protección',
  '{ventilation}': '[En caso de ventilación insuficiente,] ',
  '{effect}': '',
  '{route}': '',
  '{organs}': 'los órganos',
  '{sensitizer}': '',
  '{parts} ': '',
  '{shower}': ' o ducharse',
};

const asPrinted = (code: string): string => {
  const { text } = { ...spanish.hazard, ...spanish.supplemental, ...spanish.precautionary }[code] as {
    text: string;
  };
  const effect = (spanish.fieldsOf as Record<string, { effect: { options: { both: string } } }>)[code]
    ?.effect;
  const whole = effect ? text.replace('{effect}', effect.options.both) : text;
  return Object.entries(printed).reduce((sofar, [field, words]) => sofar.replace(field, words), whole);
};

describe('Spanish statements', () => {
  it.each(Object.entries(second.texts))(
    '%s, read twice, says the same in the second reading',
    (code, text) => {
      expect(bare(asPrinted(code)).replaceAll('Contiene .', 'Contiene.')).toBe(
        bare(text).replaceAll('Contiene .', 'Contiene.'),
      );
    },
  );

  it('say twice of none that has no second reading', () => {
    const twice = Object.entries({ ...spanish.hazard, ...spanish.supplemental, ...spanish.precautionary })
      .filter(([, { read }]) => read === 'twice')
      .map(([code]) => code);
    expect(twice.sort()).toEqual(Object.keys(second.texts).sort());
  });

  it.each(bases)('of %s are read, from memory or not held, each named here', async basis => {
    const { statements } = await loadLabelData(basis);
    const of = (how: string): readonly string[] =>
      textsOf(statements)
        .map(([code]) => code)
        .filter(code => readHow(code, basis, spoken) === how)
        .sort();
    expect({ memory: of('memory'), none: of('none') }).toMatchSnapshot();
    expect(of('twice').length + of('once').length).toBeGreaterThan(200 - of('none').length);
  });

  it.each(bases)('of %s fill every place that the English fills', async basis => {
    const data = await loadLabelData(basis);
    const said = spokenLabelData(data, spoken, ',');
    for (const [code, text] of textsOf(said.statements)) {
      const english = fillStatement(textsOf(data.statements).find(([each]) => each === code)![1]);
      const filled = fillStatement(text);
      expect('text' in filled, code).toBe('text' in english);
      if (!('text' in filled) || text.language) continue;
      expect(filled.text, code).not.toMatch(/[{}]|\b(?:the|and|with|for|of)\b/u);
    }
  });

  it('put e before internacional, and y elsewhere', async () => {
    const { statements } = spokenLabelData(await loadLabelData('eu-clp'), spoken, ',');
    const p501 = statements.precautionary.P501!;
    expect(fillStatement(p501)).toEqual({
      text: 'Eliminar el contenido y el recipiente conforme a la normativa local, regional, nacional e internacional.',
    });
    expect(fillStatement(p501, { rules: ['local', 'national'] })).toEqual({
      text: 'Eliminar el contenido y el recipiente conforme a la normativa local y nacional.',
    });
  });

  it('name organs, and keep one that the language does not know', async () => {
    const { statements } = spokenLabelData(await loadLabelData('eu-clp'), spoken, ',');
    expect(fillStatement(statements.hazard.H373!, { organs: ['kidneys', 'liver'] })).toEqual({
      text: 'Puede provocar daños en el hígado y los riñones tras exposiciones prolongadas o repetidas.',
    });
    expect(fillStatement(statements.hazard.H370!, { organs: ['harderian gland'] })).toEqual({
      text: 'Provoca daños en harderian gland.',
    });
  });

  it('stay English, marked, where another text of the basis says something else', async () => {
    const un = spokenLabelData(await loadLabelData('un-ghs'), spoken, ',').statements;
    expect(un.precautionary.P230).toMatchObject({ text: 'Keep diluted with {wet}.', language: 'en' });
    expect(un.precautionary.P316).toMatchObject({ language: 'en' });
  });
});
