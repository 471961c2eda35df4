import type { ReadingEntry } from './entry.ts';

/** Supplemental statements of CLP Annex II. */
export const supplemental = {
  'euh-entry-limit': {
    cite: 'CLP Annex II 1.2.1 to 1.2.3',
    question:
      'From what percent does EUH029, EUH031 or EUH032 of an entry without a limit pass to the mixture?',
    options: {
      'lowest-listed': 'from 1 %, the lowest limit that Annex VI lists for EUH031 and EUH032',
      ask: 'never by itself; a warning asks for evidence',
    },
  },
  'euh-asked-by-entry': {
    cite: 'CLP Annex II 1.1.1, 1.1.3, 1.1.4',
    question: 'Do EUH014, EUH019 and EUH044 of an entry pass to the mixture?',
    options: {
      ask: 'never by themselves; from 1 % of such an entry (common practice) a warning asks for evidence',
    },
  },
  'euh066-share': {
    cite: 'CLP Annex II 1.2.4',
    question: 'How much of substances with EUH066 gives it to the mixture?',
    options: {
      'one-fifth': 'from 20 % together (common practice); from 1 % a warning asks for evidence',
      ask: 'no share by itself; a warning asks for evidence',
    },
  },
  'euh071-entry': {
    cite: 'CLP Annex II 1.2.6',
    question: 'From what percent does EUH071 of an entry pass to the mixture?',
    options: {
      'one-percent':
        'from 1 %, the cut-off for relevant ingredients, where the mixture is corrosive to skin or toxic by inhalation',
    },
  },
  'euh202-share': {
    cite: 'CLP Annex II 2.2',
    question: 'How much cyanoacrylate makes an adhesive based on it?',
    options: {
      'one-percent': 'from 1 % (common practice) a warning asks',
    },
  },
  'elicitation-specific-limit': {
    cite: 'CLP Table 3.4.6 Note 1, Annex II 2.10',
    question: 'From what percent may a sensitizer with a specific limit provoke a reaction?',
    options: {
      'one-tenth': 'from one tenth of its specific limit, be it above or below the generic one',
    },
  },
  'euh208-other-kind': {
    cite: 'CLP Annex II 2.8',
    question: 'Does a mixture classified for one kind of sensitization bear EUH208 for the other?',
    options: {
      'either-kind': 'no; the sensitizers are named on its label instead',
    },
  },
  'euh210-scope': {
    cite: 'CLP Annex II 2.10',
    question: 'Which mixtures are not classified as hazardous?',
    options: {
      'all-classes':
        'those without any class, physical ones included, unless the record says they are sold to the general public',
    },
  },
  'titanium-dioxide': {
    cite: 'CLP Annex II 2.12; judgments T-279/20, C-71/23 P',
    question: 'Do EUH211 and EUH212 outlive the annulled classification of titanium dioxide?',
    options: {
      annulled: 'no; a warning names the statement',
      apply: 'yes',
    },
  },
} as const satisfies Readonly<Record<string, ReadingEntry>>;
