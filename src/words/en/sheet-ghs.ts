/** Sentences of the sheets beyond 29 CFR 1910.1200: of the European Union and of the GHS itself. */
export const ghs = {
  compiledOn: 'Date of compilation {date}',
  revisedOn: 'Revision: {date}',
  withRole: '{name} ({role})',
  body: '{body}: {telephone}. Hours: {hours}',
  bodyOfCountry: '{country}, {body}: {telephone}. Hours: {hours}',
  basis:
    'Classification under {basis}. Statement codes are written out in section 16 or under the label elements.',
  notClassified: 'The mixture does not meet the criteria for classification in any class examined.',
  effects: 'Most important effects: {texts}.',
  noSupplemental: 'The calculation gives no supplemental statement.',
  noLabelSubstances:
    'The mixture is in none of the classes for which the label names substances (Regulation (EC) No 1272/2008, Article 18(3)(b)).',
  labelSubstancesOpen:
    'The class rests on a test of the mixture, which names no substance: the reviewer names those that cause it (Regulation (EC) No 1272/2008, Article 18(3)(b)).',
  labelSubstancesProposed:
    'A class rests on a test of the mixture, which names no substance: those that are in that class by themselves are named, and the reviewer says which of them cause it (Regulation (EC) No 1272/2008, Article 18(3)(b)).',
  fourNames:
    'As a rule {count} names suffice on the label; the reviewer chooses those that account for the most severe hazards.',
  columns: {
    name: 'Substance',
    numbers: 'Numbers',
    byWeight: '% by weight',
    byVolume: '% by volume',
    classification: 'Classification',
  },
  numbers: {
    ec: 'EC {number}',
    cas: 'CAS {number}',
    index: 'Index {number}',
    registration: 'Registration {number}',
    open: 'not yet searched',
    withheld: 'Not given: alternative name',
  },
  openNumbers: { ec: 'EC number: {names}', registration: 'REACH registration number: {names}' },
  unclassified: 'Listed by the maker',
  listedFor: {
    pbt: 'Listed as PBT, vPvB, PMT or vPvM substance',
    endocrine: 'Listed for endocrine disrupting properties',
    'candidate-list': 'Listed as substance of the list of Article 59(1)',
    'union-limit': 'Listed as substance with a Union workplace exposure limit',
    own: 'Listed by the maker',
  },
  noneListed: 'As far as data go, no substance has to be indicated.',
  statementsBelow: 'Statement codes are written out in section 16 or on the label.',
  unjudged:
    'Substances without any data on hazards, so that it is not known whether they must be indicated: {names}.',
  valueColumns: ['Substance', 'Specific concentration limits', 'M-factor', 'Acute toxicity estimate'],
  factors: { acute: 'M = {value} (acute)', chronic: 'M = {value} (chronic)' },
  estimate: '{route}: {value}',
  noValues:
    'Neither the record nor Annex VI of Regulation (EC) No 1272/2008 gives any for the substances above.',
  rangeShown: 'The range is wider than the formula, by the choice of the maker: {names}.',
  alternative:
    '{name} is an alternative chemical name under Article 24 of Regulation (EC) No 1272/2008 ({approval}).',
  confidential:
    'The identity of {name} is withheld as confidential business information; the rules of the competent authority of each country apply (GHS, 1.4.8).',
  noAlternative: 'No alternative chemical name is used.',
  limitsNote:
    'Limits are those of the record. The lists of the Union (Directives 2000/39/EC, 2004/37/EC and those that follow) and of Member States are not held and were not looked up.',
  keepOut:
    'Keep the product and the water used to flush it out of drains, surface water, ground water and soil. Tell the authorities where it gets there.',
  undiluted:
    'Do not let the undiluted product reach drains, surface water, ground water or soil; measures after a spill stand in section 6, disposal in section 13.',
  noThermalHazard: 'No thermal hazard follows from the physical form.',
  directions: 'Directions for use on the label: {text}',
  training:
    'Those who work with the product are informed of its hazards (section 2) and trained in the measures of sections 4 to 8 (Directive 98/24/EC, Article 8).',
  references:
    'Protective equipment: section 8. Disposal of what was collected: section 13. Emergency telephone: section 1.',
  notApplicableTo: 'Not applicable: the property is not one of a {form}.',
  noPhysicalClass: 'No physical hazard class applies to this physical form.',
  outcomes: {
    'not-classified': 'Based on available data, the classification criteria are not met',
    'insufficient-data': 'Not enough data to decide',
    'not-applicable': 'Not applicable to this mixture',
  },
  met: 'Classified',
  effectColumns: ['Hazard class', 'Result', 'Reason and paragraph'],
  estimatesNote: 'Calculated with the additivity formula; not measured on the mixture.',
  calculated:
    'The classification was derived by calculation from the ingredients, not from tests of the mixture, except where a reason above says otherwise.',
  harmonised:
    'Where the record gives no data of its own, substances are classified with their harmonised entry in Annex VI of Regulation (EC) No 1272/2008.',
  toxicityColumns: ['Substance', 'Data'],
  classOutcome: '{title}: {outcome}',
  wasteUnion:
    'Dispose of the product, its residues and its packaging as waste under Directive 2008/98/EC and national rules. Do not discharge into drains.',
  waste:
    'Dispose of the product, its residues and its packaging under the rules of the country. Do not discharge into drains.',
  wasteCodes:
    'The code of the European list of wastes depends on the use: whoever produces the waste assigns it.',
  carriage:
    'The rules of carriage of ADR, RID, ADN, the IMDG Code and the ICAO Technical Instructions are not held. An answer under the rules of the United States is not shown in their place.',
  carriageShared:
    'Number, name, class and packing group are worked out by the table of hazardous materials of the United States (its section 172.101), from an entry that it does not mark as domestic; such entries have their numbers from the list of dangerous goods of the UN Model Regulations, which ADR, RID, ADN, the IMDG Code and the ICAO Technical Instructions share. Those texts were not read: classification code, transport category, tunnel restriction code, special provisions, limited and excepted quantities and the mark for environmentally hazardous substances are not looked up. The shipper checks the current text.',
  actsToLookUp:
    'To be looked up: Regulation (EC) No 648/2004 (detergents), Regulation (EU) No 528/2012 (biocidal products), Regulation (EC) No 1907/2006, Annexes XIV and XVII and the list of Article 59(1), Directive 2012/18/EU (major accidents), Directive 2004/42/EC (volatile organic compounds), Regulation (EU) 2019/1148 (explosives precursors), national rules of each market.',
  compiled: 'Date of compilation: {date}.',
  revised: 'Revision: {date}.',
  noFormerRevision: 'The record names no revision before this one.',
  methodColumns: ['Classification', 'Method', 'Paragraph'],
  methods: {
    test: 'On basis of test data',
    bridging: 'Bridging principle',
    reserve: 'Acid or alkali reserve',
  },
  noMethod: 'No class was assigned.',
  noCodes: 'No statement code is used above.',
  headingsUnion:
    'Sections and sub-sections: Regulation (EC) No 1907/2006, Annex II, as replaced by Regulation (EU) 2020/878.',
  headings: 'Sections and items: GHS, Table 1.5.2 and Annex 4.',
  /** Sentences of advice that name a rule of the United States, said without it. */
  advice: {
    'respiratory-limits':
      'Where ventilation does not keep the air below the limits of this section, a respirator chosen for the contaminant and its concentration under the rules at the place of work.',
  },
  abbreviations: [
    [
      'ADN',
      'European Agreement concerning the International Carriage of Dangerous Goods by Inland Waterways',
    ],
    ['ADR', 'Agreement concerning the International Carriage of Dangerous Goods by Road'],
    ['ATE', 'acute toxicity estimate'],
    ['CAS', 'Chemical Abstracts Service'],
    ['CLP', 'Regulation (EC) No 1272/2008 on classification, labelling and packaging'],
    ['DNEL', 'derived no-effect level'],
    ['EC', 'European Community'],
    ['GHS', 'Globally Harmonized System of Classification and Labelling of Chemicals'],
    ['GTIN', 'Global Trade Item Number'],
    ['ICAO', 'International Civil Aviation Organization'],
    ['IMDG', 'International Maritime Dangerous Goods'],
    ['IMO', 'International Maritime Organization'],
    ['PBT', 'persistent, bioaccumulative and toxic'],
    ['PMT', 'persistent, mobile and toxic'],
    ['PNEC', 'predicted no-effect concentration'],
    ['RID', 'Regulations concerning the International Carriage of Dangerous Goods by Rail'],
    ['STOT', 'specific target organ toxicity'],
    ['UFI', 'unique formula identifier'],
    ['UN', 'United Nations'],
    ['ppmV', 'parts per million, by volume'],
    ['vPvB', 'very persistent and very bioaccumulative'],
    ['vPvM', 'very persistent and very mobile'],
  ] as readonly (readonly [string, string])[],
} as const;
