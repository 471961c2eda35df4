import { describe, expect, it } from 'vitest';
import { screened, verdictOf } from './_screen.ts';

type Sourced = readonly (readonly [text: string, source: string])[];

const from = (source: string, texts: readonly string[]): Sourced =>
  texts.map(text => [text, source] as const);

const NOTICE =
  'EPA PR Notice 2000-1, IV.A, claims that lead to registration (read in a quotation of the list)';
const SHEET =
  'EPA, Determining If a Cleaning Product Is a Pesticide Under FIFRA, claims considered to be pesticidal (list of 2011 read in a quotation; the words around the subject of each item are ours)';
const TRAINING =
  'EPA, Label Review Training, module 3, page 37 (read): never acceptable without registration';
const RELEASE_2024 = 'EPA press release of 2024-09-18 on unregistered cleaners (read)';
const RELEASE_2010 = 'EPA press release of 2010-05-06 (read in a journal)';
const DPR = 'California DPR, Notice 2012-03 (read)';
const DEFINITION =
  '40 CFR 152.3, pesticide (read): preventing, destroying, repelling, or mitigating any pest';

const claims: Sourced = [
  ...from(NOTICE, [
    'Antibacterial.',
    'Bactericidal.',
    'Germicidal.',
    'Kills pathogenic bacteria.',
    'Effective against E. coli and Staphylococcus.',
    'Reduces the risk of food-borne illness from bacteria.',
    'Provides a germ-resistant surface.',
    'Provides a bacteria-resistant surface.',
    'Surface kills common gram positive and negative bacteria.',
    'Surface controls both gram positive and negative bacteria.',
    'Surface minimizes the growth of both gram positive and negative bacteria.',
    'Reduces risk of cross-contamination from bacteria.',
    'Controls allergy causing microorganisms.',
    'Improves indoor air quality through the reduction of microorganisms.',
  ]),
  ...from(SHEET, [
    'Washes away roaches.',
    'Cleans away mildew.',
    'Removes mold from shower walls.',
    'Cleans away biofilm.',
    'Removes scum.',
    'Washes away scum and slime from drains.',
    'Removes allergens.',
    'Washes away allergens from floors.',
    'Cleans away dust mite allergens.',
    'Removes cockroach allergens.',
    'Removes pests by suffocating them.',
    'Drowns ants on contact.',
    'Removes pest habitats.',
    'Removes the breeding sites of mosquitoes.',
    'Removes matter that provides food for pests.',
    'Precipitates nutrients that provide habitat for pests.',
    'Removes nutrients from areas where insect larvae may mature.',
    'Reduces sludge where pests feed.',
    'Removes the scum where pests breed.',
    'Removes scum where flies live.',
    'Outcompetes the bacteria for nutrition.',
    'Displaces bacteria for nutrition.',
    'Removes the habitat where microorganisms can thrive.',
    'Cleans the grout where germs hide.',
    'Blocks bacteria that cause odors.',
    'Neutralizes odor-causing bacteria.',
    'Controls bacteria that cause odors.',
    'Sanitizes.',
    'Disinfects in ten minutes.',
    'Sterilizes hard surfaces.',
  ]),
  ...from(TRAINING, ['Prevents infection.', 'Controls infection.', 'Prevents cross infection.']),
  ...from(RELEASE_2024, ['Sterilization of hard surfaces.', 'Cleaner and sanitizer in one.']),
  ...from(RELEASE_2010, ['Antimicrobial protection.', 'Prevents the spread of bacteria, mold and mildew.']),
  ...from(DPR, [
    'Controls mildew on siding.',
    'Prevents mold stains.',
    'Prevents algae stains all season.',
    'Cleans and removes algae.',
  ]),
  ...from(DEFINITION, [
    'Repels ants and spiders.',
    'Destroys viruses.',
    'Mitigates fungus on siding.',
    'Deters rodents.',
    'Wards off spiders.',
    'Keeps mold away.',
    'Keeps algae from coming back.',
    "Algae won't return.",
    'Inhibits regrowth of algae.',
    'Stays mildew-free for months.',
  ]),
];

const STAINS = `${DPR}; EPA fact sheet of 2011 as that notice gives it: cleaning or removing stains of organisms`;
// Read: what is claimed solely as a deodorizer or as a cleansing agent is no pesticide. 40 CFR 152.10(a) says the like of
// deodorizers, bleaches and cleaning agents (from memory).
const CLEANSING = '3 CCR 6205 (read); 40 CFR 152.10(a) (from memory)';
const OTHER_ALLERGENS =
  'EPA fact sheet of 2011: allergens that are of no pest, such as pollen and dander (from memory)';
const NO_PEST = '40 CFR 152.3 (read): soil, scale, rust and odor are no pest';

const cleaning: Sourced = [
  ...from(STAINS, [
    'Cleans or removes stains from algae, mold, mildew or other non-public health organisms.',
    'Cleans, eliminates and removes mold stains.',
    'Removes mildew stains.',
    'Eliminates algae stains from stone.',
    'Removes fungal stains.',
    'Removes stains left by mildew.',
    'Removes stains caused by mold.',
    'Product does not control mold, mildew, fungus or algae, only removes stains.',
  ]),
  ...from(CLEANSING, [
    'Cleans, deodorizes and brightens.',
    'Bleaches tea and coffee stains.',
    'Removes soap scum and lime scale.',
    'Cuts grease with orange oil.',
    'Lifts traffic film from stone.',
    'Removes rust and hard water deposits.',
    'Cleans where dirt hides.',
    'Deodorizes trash cans.',
    'Eliminates odors from drains.',
    'Dissolves lime and hard water deposits.',
    'Removes food soils from worktops.',
    'Removes insect residues from windshields.',
    'Removes pesticide residues from spray tanks.',
    'Cleans keyboards and mice.',
  ]),
  ...from(OTHER_ALLERGENS, ['Removes pollen allergens.', 'Removes dust, pollen and pet dander.']),
  ...from(NO_PEST, [
    'Prevents scale.',
    'Prevents rust.',
    'Controls dust.',
    'Protects stone from stains.',
    'Neutralizes odors.',
    'Fights grease.',
    'Keeps dust away.',
    'Blocks stains.',
    "Streaks won't return.",
    'Not a disinfectant.',
    'This product is not a disinfectant or sanitizer.',
    'Does not kill germs.',
  ]),
];

// 40 CFR 152.15(a): "claims, states, or implies": the words alone do not decide.
const doubtful: Sourced = from('40 CFR 152.15(a), implies', [
  'A bug cleaner for windshields.',
  'Kills odors.',
  'Mold formula.',
  'For hygienic kitchens.',
  'Cleans fly screens.',
  'Removes slime.',
  'Use before disinfecting.',
  'Clean the surface before you sanitize it.',
]);

describe('wording that makes a cleaner a pesticide (40 CFR 152.15)', () => {
  it('has at least 30 texts of either kind', () => {
    expect(new Set(claims.map(([text]) => text)).size).toBeGreaterThanOrEqual(30);
    expect(new Set(cleaning.map(([text]) => text)).size).toBeGreaterThanOrEqual(30);
  });
  it.each(claims)('claim: %s (%s)', text => {
    expect(verdictOf(text, 'pesticide')).toBe('claim');
  });
  it.each(cleaning)('no claim: %s (%s)', text => {
    expect(screened(text, 'pesticide')).toEqual([]);
  });
  it.each(doubtful)('asks: %s (%s)', text => {
    expect(verdictOf(text, 'pesticide')).toBe('ask');
  });

  // A denial covers what it denies and no more.
  it.each(['Not a disinfectant, yet kills germs.', 'Does not harm stone and kills mold.'])(
    'claim in spite of a denial: %s',
    text => {
      expect(verdictOf(text, 'pesticide')).toBe('claim');
    },
  );

  it('marks the words and nothing else', () => {
    expect(
      screened('Lifts algae and traffic film from stone', 'pesticide').map(({ words }) => words),
    ).toEqual(['Lifts algae']);
  });
});
