import { describe, expect, it } from 'vitest';
import { screened, verdictOf } from './_screen.ts';

// EPA PR Notice 2000-1, IV.A: claims that lead to a requirement to register (read in a quotation of the list).
const prNotice = [
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
];

// EPA, Determining If a Cleaning Product Is a Pesticide Under FIFRA, as summarized in 2010 (read in an excerpt):
// removal of breeding sites and habitats, of nutrients where larvae mature, direct removal of the pest, scum where
// pests breed, out-competing the pest.
const factSheet = [
  'Removes the breeding sites of mosquitoes.',
  'Removes pest habitats.',
  'Removes nutrients from areas where insect larvae may mature.',
  'Removes mold from shower walls.',
  'Removes the scum where pests breed.',
  'Outcompetes the bacteria for nutrition.',
];

// EPA, Label Review Training, module 3, page 37 (read): never acceptable without registration.
const training = ['Prevents infection.', 'Controls infection.', 'Prevents cross infection.'];

// EPA, press release of 2024-09-18 on unregistered cleaners (read): "sterilization", "sanitizer", "antibacterial";
// press release of 2010-05-06 (read in a journal): "antimicrobial protection", "prevents the spread of bacteria, mold
// and mildew".
const enforced = [
  'Sterilization of hard surfaces.',
  'Cleaner and sanitizer in one.',
  'Antimicrobial protection.',
  'Prevents the spread of bacteria, mold and mildew.',
];

// California DPR, Notice 2012-03 (read): to control or prevent the organism, or its stains; to clean or remove it.
const dpr = [
  'Controls mildew on siding.',
  'Prevents mold stains.',
  'Prevents algae stains all season.',
  'Cleans and removes algae.',
];

// The same notice and EPA's fact sheet of 2011: cleaning or removing stains of organisms is no pesticidal claim.
const stains = [
  'Cleans or removes stains from algae, mold, mildew or other non-public health organisms.',
  'Cleans, eliminates and removes mold stains.',
  'Removes mildew stains.',
  'Eliminates algae stains from stone.',
  'Removes fungal stains.',
  'Product does not control mold, mildew, fungus or algae, only removes stains.',
];

// 40 CFR 152.10(a) (from memory): deodorizers, bleaches and cleaning agents for which no pesticidal claim is made.
const cleaners = [
  'Cleans, deodorizes and brightens.',
  'Bleaches tea and coffee stains.',
  'Removes soap scum and lime scale.',
  'Cuts grease with orange oil.',
  'Lifts traffic film from stone.',
  'Removes rust and hard water deposits.',
];

describe('wording that makes a cleaner a pesticide (40 CFR 152.15)', () => {
  const claims = [...prNotice, ...factSheet, ...training, ...enforced, ...dpr];
  it('has at least 30 texts of agencies', () => {
    expect(claims.length).toBeGreaterThanOrEqual(30);
  });
  it.each(claims)('claim: %s', text => {
    expect(verdictOf(text, 'pesticide')).toBe('claim');
  });
  it.each([...stains, ...cleaners])('no claim: %s', text => {
    expect(screened(text, 'pesticide')).toEqual([]);
  });

  // 40 CFR 152.15(a): "claims, states, or implies".
  it.each(['A bug cleaner for windshields.', 'Kills odors.', 'Mold formula.', 'For hygienic kitchens.'])(
    'asks: %s',
    text => {
      expect(verdictOf(text, 'pesticide')).toBe('ask');
    },
  );

  it('marks the words and nothing else', () => {
    expect(
      screened('Lifts algae and traffic film from stone', 'pesticide').map(({ words }) => words),
    ).toEqual(['Lifts algae']);
  });
});
