import type { ReadingWords } from '../../words.ts';

/** Supplemental statements of CLP Annex II. */
export const supplemental = {
  'euh-entry-limit': {
    question:
      'From what percent does EUH029, EUH031 or EUH032 of an entry without a limit pass to the mixture?',
    options: {
      'lowest-listed': 'from 1 %, the lowest limit that Annex VI lists for EUH031 and EUH032',
      ask: 'never by itself; a warning asks for evidence',
    },
  },
  'euh-asked-by-entry': {
    question: 'Do EUH014, EUH019 and EUH044 of an entry pass to the mixture?',
    options: {
      ask: 'never by themselves; from 1 % of such an entry (common practice) a warning asks for evidence',
    },
  },
  'euh066-share': {
    question: 'How much of substances with EUH066 gives it to the mixture?',
    options: {
      'one-fifth': 'from 20 % together (common practice); from 1 % a warning asks for evidence',
      ask: 'no share by itself; a warning asks for evidence',
    },
  },
  'euh071-entry': {
    question: 'From what percent does EUH071 of an entry pass to the mixture?',
    options: {
      'one-percent':
        'from 1 %, the cut-off for relevant ingredients, where the mixture is corrosive to skin or toxic by inhalation',
    },
  },
  'euh202-share': {
    question: 'How much cyanoacrylate makes an adhesive based on it?',
    options: {
      'one-percent': 'from 1 % (common practice) a warning asks',
    },
  },
  'elicitation-specific-limit': {
    question: 'From what percent may a sensitizer with a specific limit provoke a reaction?',
    options: {
      'one-tenth': 'from one tenth of its specific limit, be it above or below the generic one',
    },
  },
  'euh208-other-kind': {
    question: 'Does a mixture classified for one kind of sensitization bear EUH208 for the other?',
    options: {
      'either-kind': 'no; the sensitizers are named on its label instead',
    },
  },
  'euh210-scope': {
    question: 'Which mixtures are not classified as hazardous?',
    options: {
      'all-classes':
        'those without any class, physical ones included, unless the record says they are sold to the general public',
    },
  },
  'titanium-dioxide': {
    question: 'Do EUH211 and EUH212 outlive the annulled classification of titanium dioxide?',
    options: {
      annulled: 'no; a warning names the statement',
      apply: 'yes',
    },
  },
} as const satisfies Readonly<Record<string, ReadingWords>>;
