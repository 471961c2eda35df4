import type { Answer, AnswerWords, AskedSection, OpenCause, Wanted } from '../answer-words.ts';

const inBrackets = (of: string | null): string => (of === null ? '' : ` (${of})`);

function cause(found: OpenCause, names: (constituent: number) => string): string {
  switch (found.kind) {
    case 'flash-point':
      return 'because the flash point is not given';
    case 'viscosity':
      return 'because the viscosity is not given';
    case 'test':
      return 'because only a test of the product decides';
    case 'data':
      return `because data are missing on ${found.constituents.map(names).join(' and ')}`;
    case 'other':
      return 'for the reason given below';
  }
}

function lines({ signalWord, hazards, open }: Answer, names: (constituent: number) => string): string[] {
  const undecided = open.map(
    each =>
      `${each.classes.map(({ class: name, of }) => `${name}${inBrackets(of)}`).join(', ')} ${cause(each.cause, names)}`,
  );
  const told = undecided.length > 0 ? `not decided: ${undecided.join('; ')}` : null;
  if (hazards.length === 0) return [told === null ? 'Not classified' : `Not classified; ${told}`];
  const given = hazards.map(({ code, of }) => `${code}${inBrackets(of)}`).join(', ');
  return [
    `${signalWord ?? 'No signal word'}: ${given}`,
    ...(told === null ? [] : [`${told[0]!.toUpperCase()}${told.slice(1)}`]),
  ];
}

const sections: Readonly<Record<AskedSection, string>> = {
  2: 'section 2, classification',
  3: 'section 3, composition',
  9: 'section 9, physical properties',
  11: 'section 11, toxicology',
  12: 'section 12, ecology',
};

function wanted(wants: Wanted, ofProduct: boolean): string {
  switch (wants.kind) {
    case 'classification':
      return 'every class with its category, or the statement that there is none';
    case 'minimum':
      return `the category that the data give for ${wants.codes.join(', ')}, which the list has as the least`;
    case 'organs':
      return `the target organs of ${wants.codes.join(', ')}`;
    case 'composition':
      return 'the constituents with their percents';
    case 'identity':
      return 'the CAS number';
    case 'limits':
      return 'specific concentration limits, if any';
    case 'peroxygen':
      return 'peroxygen groups in a molecule and molar mass';
    case 'flash-point':
      return 'the flash point (closed cup)';
    case 'boiling-point':
      return 'the initial boiling point';
    case 'pH':
      return ofProduct ? 'the pH' : 'the pH, and the strength at which it was measured';
    case 'viscosity':
      return 'the kinematic viscosity at 40 C';
    case 'acute':
      return `ATE or LD50 and LC50, ${wants.routes.join(', ')}`;
    case 'inhalation-form':
      return `whether ${wants.codes.join(', ')} by inhalation is of vapor, of dust and mist, or of gas`;
    case 'aquatic':
      return 'toxicity to fish, crustacea and algae, degradability, bioaccumulation';
    case 'm-factor':
      return `the M-factor, ${wants.of.join(' and ')}`;
  }
}

/** The answer in short, and what to ask a supplier for. */
export const answer: AnswerWords = {
  lines,
  ask: {
    title: 'Ask your supplier for',
    head: ['raw material or ingredient', 'what is missing, by section of the sheet'],
  },
  subject: (through, name) => (through.length > 0 ? through.join('; ') : (name ?? 'the product: measure it')),
  question: (wants, ofProduct, name) =>
    name === null ? wanted(wants, ofProduct) : `${name}: ${wanted(wants, ofProduct)}`,
  section: (section, ofProduct, questions) =>
    ofProduct ? questions.join('; ') : `${sections[section]}: ${questions.join('; ')}`,
};
