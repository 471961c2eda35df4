/** A place where the law leaves a choice, and what is taken. */
export interface ReadingEntry {
  readonly id: string;
  /** Paragraphs, US first. */
  readonly cite: string;
  readonly question: string;
  /** What can be taken; the first is the default. */
  readonly options: Readonly<Record<string, string>>;
}

const entry = (
  id: string,
  cite: string,
  question: string,
  options: Record<string, string>,
): ReadingEntry => ({
  id,
  cite,
  question,
  options,
});

/** Every reading that the rules depend on. The options after the first can be chosen in the record with a reason. */
export const readings = {
  'us-specific-limits': entry(
    'us-specific-limits',
    '29 CFR 1910.1200 App. A, A.0.4.3.2, A.0.4.3.3',
    'Is a harmonised specific concentration limit information that a hazard is evident below the cut-off?',
    {
      ignore:
        'specific concentration limits of EU law are not used; a warning says where one would be more severe',
      use: 'specific concentration limits of EU law are used in place of the cut-offs',
    },
  ),
  'range-end': entry(
    'range-end',
    '29 CFR 1910.1200(i); CLP Article 6',
    'Which end of a concentration range is classified?',
    {
      'worst-end': 'for each hazard the end of the range that gives the more severe result',
    },
  ),
  'below-cut-off': entry(
    'below-cut-off',
    'A.1.3.3(a), A.2.3.3.1, A.3.3.3.1; CLP 3.1.3.3(a), 3.2.3.3.1, 3.3.3.3.1',
    'Do ingredients below the cut-off for relevant ingredients count?',
    {
      'record-says':
        'only where the record marks the ingredient as relevant, and Acute Tox. 1 and 2 under us-hcs',
    },
  ),
  'ate-above-category-4': entry(
    'ate-above-category-4',
    'A.1.3.6.1(a)',
    'What dose by inhalation is equivalent to an LD50 of 2000 to 5000 mg/kg?',
    { 'two-and-a-half-times': '2.5 times the upper limit of Category 4' },
  ),
  'same-category': entry(
    'same-category',
    'A.1.3.3(c); CLP 3.1.3.3(c)',
    'When do ingredients of one category decide without the formula?',
    {
      'every-ingredient':
        'only when every ingredient has an estimate for the route and all were converted from one category',
    },
  ),
  'unknown-correction': entry(
    'unknown-correction',
    'A.1.3.6.2.4; CLP 3.1.3.6.2.3',
    'Which unknown ingredients make up the 10 %?',
    { 'relevant-only': 'those present at 1 % or more; exactly 10 % is not corrected' },
  ),
  'no-entry-for-route': entry(
    'no-entry-for-route',
    'A.1.3.6.1(b), A.1.3.6.2.3; CLP 3.1.3.6.1',
    'Is an ingredient with data, but none for a route, unknown by that route?',
    { 'not-toxic': 'it is presumed not toxic by that route unless the record names it unknown' },
  ),
  'inhalation-form': entry(
    'inhalation-form',
    'Tables A.1.1, A.1.2; CLP Tables 3.1.1, 3.1.2',
    'In which form is an inhalation category judged that names none?',
    {
      'by-state': 'gases as gas, solids and aerosols as dust or mist, other liquids as vapour',
      mist: 'dust or mist',
      vapour: 'vapour',
    },
  ),
  'inhalation-forms-apart': entry(
    'inhalation-forms-apart',
    'A.1.3.6.1; CLP 3.1.3.6.1',
    'Are gas, vapour and dust or mist added up?',
    { apart: 'each form has a sum of its own; the most severe form gives the category of the route' },
  ),
  'minimum-category': entry(
    'minimum-category',
    'CLP Annex VI 1.2.1',
    'What is a minimum classification (*) converted from?',
    {
      'as-listed': 'the listed category',
    },
  ),
  'unsubcategorised-corrosive': entry(
    'unsubcategorised-corrosive',
    'Note to Table A.2.3; CLP Table 3.2.3',
    'Does one corrosive ingredient without sub-category set the mixture to Category 1?',
    { 'category-1': 'yes, where it is relevant, whatever the sums of 1A, 1B and 1C' },
  ),
  'show-sub-category': entry(
    'show-sub-category',
    'A.2.2(a), A.2.2.2.1.2',
    'Is the sub-category 1A, 1B or 1C shown?',
    { show: 'shown where it follows', hide: 'Category 1 without sub-category' },
  ),
  'extreme-ph': entry(
    'extreme-ph',
    'A.2.3.1.3, A.3.3.1.2; CLP 3.2.3.1.2, 3.3.3.1.2',
    'Are ingredient classifications "other information" beside an extreme pH?',
    {
      decides:
        'no: pH 2 or less, or 11.5 or more, gives Category 1 unless evidence on reserve or a test is given',
    },
  ),
  'moderate-ph': entry('moderate-ph', 'A.2.3.3.4; CLP 3.2.3.3.4', 'Does a moderate pH override a sum?', {
    'never-lowers': 'no, it never lowers a class',
  }),
  'not-additive': entry(
    'not-additive',
    'A.2.3.3.4, A.3.3.3.4; CLP 3.2.3.3.4, 3.3.3.3.4',
    'Which ingredients are judged outside the sums?',
    { 'as-marked': 'those the record marks as not additive; judged alone, at 1 % and 3 %' },
  ),
  'corrosive-implies-eye': entry(
    'corrosive-implies-eye',
    'Table A.3.3, Figure A.3.1; CLP 3.3.2',
    'Is a mixture that is corrosive to skin also classified for serious eye damage?',
    { yes: 'yes, Category 1' },
  ),
  'eye-2b': entry('eye-2b', 'Table A.3.3, Note b', 'When is a mixture Category 2B?', {
    'all-2b':
      'when every relevant ingredient that is classified for the eye is 2B; an unsplit Category 2 counts as 2A',
  }),
  'limit-ratio': entry(
    'limit-ratio',
    'CLP 1.1.2.2.2, Guidance on CLP 1.6.3',
    'How do specific limits enter a sum?',
    { ratio: 'each concentration is divided by its own limit, and the sum of ratios is compared with 1' },
  ),
  'limit-sub-category': entry(
    'limit-sub-category',
    'CLP Table 3.2.3',
    'Which limit enters the ratio for a sub-category?',
    {
      'that-or-worse': 'the lowest specific limit of that or a more severe sub-category',
    },
  ),
  'eye-from-irritant-range': entry(
    'eye-from-irritant-range',
    'CLP Annex VI, entries with Eye Irrit. 2 ranges only',
    'From what concentration is eye damage taken where only a range for Eye Irrit. 2 is listed?',
    { 'upper-end': 'from the upper end of that range' },
  ),
  'limit-upper-end': entry(
    'limit-upper-end',
    'CLP Article 10, Annex VI',
    'Does the upper end of a specific range count?',
    {
      'stot-se-3-only': 'for STOT SE 3 only; elsewhere the more severe category takes over',
    },
  ),
  'sensitizer-category': entry(
    'sensitizer-category',
    'Table A.4.5; CLP Table 3.4.5',
    'Is a mixture 1A or 1B?',
    {
      'category-1': 'Category 1; the sub-categories of the triggering ingredients are named beside it',
    },
  ),
  'carcinogen-2-label': entry(
    'carcinogen-2-label',
    'Note to Table A.6.1',
    'Is Carc. 2 below 1 % shown on the label?',
    {
      show: 'classified from 0.1 % and shown; below 1 % the label warning is optional',
      'sheet-only':
        'classified from 0.1 %; the label warning is left off while every such ingredient is below 1 %',
    },
  ),
  'stot-se-3-sum': entry('stot-se-3-sum', 'A.8.3.4.5; CLP 3.8.3.4.5', 'At what sum is STOT SE 3 given?', {
    'twenty-percent': 'exactly 20 %, each effect by itself',
  }),
  'stot-1-below-ten': entry(
    'stot-1-below-ten',
    'Tables A.8.2, A.9.3',
    'What does a STOT 1 ingredient from 1 to below 10 % give?',
    {
      table: 'Category 1, as the table says',
    },
  ),
  'aspiration-viscosity': entry(
    'aspiration-viscosity',
    'A.10.3.3.2.1; CLP 3.10.3.3.1.2',
    'What if viscosity is unknown?',
    {
      'insufficient-data': 'not classified, reported as insufficient data',
    },
  ),
  'boiling-point-missing': entry(
    'boiling-point-missing',
    'Table B.6.1; CLP Table 2.6.1',
    'Flash point below 23 C and no boiling point?',
    {
      'category-2': 'Category 2, with a warning that Category 1 is not excluded',
    },
  ),
  'm-factor-missing': entry('m-factor-missing', 'CLP 4.1.3.5.5.5', 'Which M-factor where none is set?', {
    one: '1',
  }),
  'reproductive-effects': entry(
    'reproductive-effects',
    'CLP 3.7.3, Annex VI 1.1.2.1.2',
    'Are fertility and development judged apart?',
    {
      apart: 'each effect has a limit of its own; letters of the ingredient carry over',
    },
  ),
  'case-by-case': entry(
    'case-by-case',
    'A.5.3.2, A.6.3.2, A.7.3.2; CLP Article 6(3)',
    'May a test on the mixture replace the cut-offs for CMR?',
    { 'with-reason': 'only where the record gives a reason; under eu-clp only upwards' },
  ),
  'euh-entry-limit': entry(
    'euh-entry-limit',
    'CLP Annex II 1.2.1 to 1.2.3',
    'From what percent does EUH029, EUH031 or EUH032 of an entry without a limit pass to the mixture?',
    {
      'lowest-listed': 'from 1 %, the lowest limit that Annex VI lists for EUH031 and EUH032',
      ask: 'never by itself; a warning asks for evidence',
    },
  ),
  'euh066-share': entry(
    'euh066-share',
    'CLP Annex II 1.2.4',
    'How much of substances with EUH066 gives it to the mixture?',
    {
      'one-fifth': 'from 20 % together (common practice); from 1 % a warning asks for evidence',
      ask: 'no share by itself; a warning asks for evidence',
    },
  ),
  'elicitation-specific-limit': entry(
    'elicitation-specific-limit',
    'CLP Table 3.4.6 Note 1, Annex II 2.10',
    'From what percent may a sensitizer with a specific limit provoke a reaction?',
    { 'one-tenth': 'from one tenth of its specific limit, be it above or below the generic one' },
  ),
  'euh208-other-kind': entry(
    'euh208-other-kind',
    'CLP Annex II 2.8',
    'Does a mixture classified for one kind of sensitization bear EUH208 for the other?',
    { 'either-kind': 'no; the sensitizers are named on its label instead' },
  ),
  'euh210-scope': entry(
    'euh210-scope',
    'CLP Annex II 2.10',
    'Which mixtures are not classified as hazardous?',
    {
      'all-classes':
        'those without any class, physical ones included, unless the record says they are sold to the general public',
    },
  ),
  'titanium-dioxide': entry(
    'titanium-dioxide',
    'CLP Annex II 2.12; judgments T-279/20, C-71/23 P',
    'Do EUH211 and EUH212 outlive the annulled classification of titanium dioxide?',
    { annulled: 'no; a warning names the statement', apply: 'yes' },
  ),
  'building-block-acute-5': entry(
    'building-block-acute-5',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Acute Tox. 5?',
    {
      on: 'Acute Tox. 5 is used',
      off: 'Acute Tox. 5 is left out',
    },
  ),
  'building-block-skin-3': entry(
    'building-block-skin-3',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Skin Irrit. 3?',
    {
      on: 'Skin Irrit. 3 is used',
      off: 'Skin Irrit. 3 is left out',
    },
  ),
  'building-block-eye-2b': entry(
    'building-block-eye-2b',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Eye Irrit. 2B?',
    {
      on: 'Eye Irrit. 2B is used',
      off: 'Eye Irrit. 2B is left out',
    },
  ),
  'building-block-asp-2': entry(
    'building-block-asp-2',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Asp. Tox. 2?',
    {
      on: 'Asp. Tox. 2 is used',
      off: 'Asp. Tox. 2 is left out',
    },
  ),
  'building-block-aquatic-acute-2-3': entry(
    'building-block-aquatic-acute-2-3',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Aquatic Acute 2 and 3?',
    {
      on: 'Aquatic Acute 2 and 3 is used',
      off: 'Aquatic Acute 2 and 3 is left out',
    },
  ),
  'building-block-flam-liq-4': entry(
    'building-block-flam-liq-4',
    'UN GHS 1.1.3.1.5.4 (from memory)',
    'Does the authority use Flam. Liq. 4?',
    {
      on: 'Flam. Liq. 4 is used',
      off: 'Flam. Liq. 4 is left out',
    },
  ),
} as const satisfies Record<string, ReadingEntry>;

export type ReadingId = keyof typeof readings;

const defaults = new Map(
  Object.values(readings).map(({ id, options }) => [id as ReadingId, Object.keys(options)[0]!]),
);

/** What is taken when the record makes no choice: the first option. */
export const defaultOf = (id: ReadingId): string => defaults.get(id)!;
