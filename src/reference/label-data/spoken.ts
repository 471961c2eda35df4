import type { LabelData } from './load-label-data.ts';
import type { LabelRules } from './rules.ts';
import type { StatementField, StatementFile, StatementText } from './statements.ts';

/** How a text of a language was read: in two readings that agree, in one copy, or not at all. */
export type ReadHow = 'twice' | 'once' | 'memory';

interface SpokenField {
  readonly options: Readonly<Record<string, string>>;
  readonly between?: string;
  readonly last?: string;
  readonly lastBefore?: Readonly<Record<string, string>>;
  readonly named?: string;
}

type SpokenTexts = Readonly<Record<string, { readonly text: string; readonly read: ReadHow }>>;

/** Statements of the law in another language: `hazard-data/languages/<language>/statements.json`. */
export interface SpokenStatements {
  /** BCP 47 */
  readonly language: string;
  /** Statements of a basis that say something else there, so that the text does not hold for it. */
  readonly notIn: Readonly<Record<string, readonly string[]>>;
  readonly signalWords: Readonly<Record<string, string>>;
  readonly hazard: SpokenTexts;
  readonly supplemental: SpokenTexts;
  readonly precautionary: SpokenTexts;
  readonly fields: Readonly<Record<string, SpokenField>>;
  /** Fields whose words differ by the statement they stand in, by its code. */
  readonly fieldsOf: Readonly<Record<string, Readonly<Record<string, SpokenField>>>>;
  readonly medical: { readonly lead: string; readonly between: string; readonly last: string };
  /** Lines that a basis words outside its lists of statements. */
  readonly lines: {
    readonly routes: Readonly<Record<string, string>>;
    readonly unknownAcuteToxicity: {
      readonly one: string;
      readonly several: string;
      readonly between: string;
      readonly all: string;
    };
    readonly unknownAquatic: string;
    readonly notToMix: { readonly text: string; readonly terms: Readonly<Record<string, string>> };
  };
}

/** What is told of a statement in a language: how its text was read; `none` where it stays in English. */
export function readHow(code: string, basis: string, spoken: SpokenStatements): ReadHow | 'none' {
  if (spoken.notIn[basis]?.includes(code)) return 'none';
  const found = spoken.hazard[code] ?? spoken.supplemental[code] ?? spoken.precautionary[code];
  return found?.read ?? 'none';
}

/**
 * The label data with the statements of a language; one that the language lacks keeps its English text, marked.
 * @param decimalMark of the language, for the percents of its lines
 */
export function spokenLabelData(data: LabelData, spoken: SpokenStatements, decimalMark: string): LabelData {
  const { statements, rules, precautions, basis } = data;
  const not = new Set(spoken.notIn[basis] ?? []);
  const spoke = (texts: Readonly<Record<string, StatementText>>, found: SpokenTexts) =>
    Object.fromEntries(
      Object.entries(texts).map(([code, text]): [string, StatementText] => {
        const own = not.has(code) ? undefined : found[code];
        return [code, own ? worded(text, own.text, code, spoken) : { ...text, language: 'en' }];
      }),
    );
  const said: StatementFile = {
    ...statements,
    hazard: spoke(statements.hazard, { ...spoken.supplemental, ...spoken.hazard }),
    ...(statements.supplemental && {
      supplemental: spoke(statements.supplemental, { ...spoken.hazard, ...spoken.supplemental }),
    }),
    precautionary: spoke(statements.precautionary, spoken.precautionary),
  };
  return {
    ...data,
    statements: said,
    rules: { ...rules, ...lines(rules, spoken), decimalMark },
    precautions: { ...precautions, medical: { ...precautions.medical, ...spoken.medical } },
  };
}

function worded(
  original: StatementText,
  text: string,
  code: string,
  { fields: shared, fieldsOf }: SpokenStatements,
): StatementText {
  if (!original.fields) return { ...original, text };
  const fields = Object.fromEntries(
    Object.entries(original.fields).map(([name, field]): [string, StatementField] => {
      const own = fieldsOf[code]?.[name] ?? shared[name];
      if (!own) return [name, field];
      const { options, ...rest } = own;
      const known = field.options.map(option => ({ ...option, text: options[option.key] ?? option.text }));
      const keys = new Set(known.map(({ key }) => key));
      // Words of the record that the language knows, such as organs, are options too.
      const more = Object.entries(options).flatMap(([key, said]) =>
        keys.has(key) ? [] : { key, text: said },
      );
      return [
        name,
        {
          ...field,
          ...rest,
          ...(rest.named && !field.named && { named: undefined }),
          options: [...known, ...more],
        },
      ];
    }),
  );
  return { ...original, text, fields };
}

const lines = (
  { unknownAcuteToxicity, unknownAquatic, notToMix }: LabelRules,
  { lines: said }: SpokenStatements,
): Partial<LabelRules> => ({
  unknownAcuteToxicity: {
    code: unknownAcuteToxicity.code,
    cite: unknownAcuteToxicity.cite,
    one: said.unknownAcuteToxicity.one,
    ...(unknownAcuteToxicity.several && {
      several: said.unknownAcuteToxicity.several,
      between: said.unknownAcuteToxicity.between,
    }),
    ...(unknownAcuteToxicity.all && { all: said.unknownAcuteToxicity.all }),
    routes: said.routes,
  },
  ...(unknownAquatic && { unknownAquatic: { ...unknownAquatic, text: said.unknownAquatic } }),
  notToMix: { ...notToMix, ...said.notToMix },
});
