import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/classify/classification.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classified } from './_classified.ts';

// The words that C.4 leaves to the maker: agents of the sample label of OSHA below.
const words = { 'P370+P378': { media: ['dry chemical', 'CO2'] } };
const label = async (basis: BasisId, hazards: string[]) =>
  labelElements(classified(basis, hazards), await loadLabelData(basis), { form: 'liquid', words });

// OSHA Quick Card "Hazard Communication Standard Labels" (osha.gov/Publications/HazComm_QuickCard_Labels.html): its
// sample label of a flammable liquid, Category 2, that can damage liver and kidney. It shows the wording of 2012; each
// of its statements is listed with the code that says the same in the 2024 table.
describe('sample label of OSHA', () => {
  const sample: Readonly<Record<string, string>> = {
    'Keep container tightly closed': 'P233',
    'Store in a cool, well-ventilated place': 'P403+P235',
    'that is locked': 'P405',
    'Keep away from heat/sparks/open flame. No smoking': 'P210',
    'Only use non-sparking tools': 'P242',
    'Use explosion-proof electrical equipment': 'P241',
    'Take precautionary measure against static discharge': 'P243',
    'Ground and bond container and receiving equipment': 'P240',
    'Do not breathe vapors': 'P260',
    'Wear protective gloves': 'P280',
    'Do not eat, drink or smoke when using this product': 'P270',
    'Wash hands thoroughly after handling': 'P264',
    'Dispose of in accordance with local, regional, national, international regulations': 'P501',
    'In case of fire: use dry chemical (BC) or carbon dioxide (CO2) fire extinguisher': 'P370+P378',
    'If exposed call poison center': 'P308+P311',
    'If on skin (or hair): Take off immediately any contaminated clothing. Rinse skin with water':
      'P303+P361+P353',
  };

  it('has the same elements', async () => {
    const { signalWord, pictograms, hazardStatements, precautionaryStatements } = await label('us-hcs', [
      'Flam. Liq. 2',
      'STOT SE 2 (liver, kidney)',
    ]);
    expect(signalWord).toBe('Danger');
    expect([...pictograms].sort()).toEqual(['GHS02', 'GHS08']);
    expect(hazardStatements.map(({ text }) => text)).toEqual([
      'Highly flammable liquid and vapor',
      'May cause damage to organs (kidney and liver)',
    ]);
    expect(precautionaryStatements.map(({ code }) => code).sort()).toEqual(Object.values(sample).sort());
  });
});

// What a reader of the bottle gets: every line by the paragraphs named in the other tests; kept so that a change shows.
describe('whole labels', () => {
  const lines = async (hazards: string[]) => {
    const { signalWord, pictograms, hazardStatements, precautionaryStatements } = await label(
      'us-hcs',
      hazards,
    );
    return [
      [signalWord, ...pictograms].join(' '),
      ...hazardStatements.map(({ text }) => text),
      ...precautionaryStatements.map(({ text }) => text),
    ];
  };

  it('alkaline hypochlorite cleaner', async () => {
    expect(await lines(['Skin Corr. 1B', 'Eye Dam. 1', 'Met. Corr. 1'])).toEqual([
      'Danger GHS05',
      'May be corrosive to metals',
      'Causes severe skin burns and eye damage',
      'Keep only in original packaging.',
      'Do not breathe dusts or mists.',
      'Wash hands thoroughly after handling.',
      'Wear protective gloves, protective clothing, eye protection and face protection.',
      'If swallowed: Rinse mouth. Do NOT induce vomiting.',
      'If on skin (or hair): Take off immediately all contaminated clothing. Rinse skin with water or shower.',
      'Wash contaminated clothing before reuse.',
      'If in eyes: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.',
      'If inhaled: Remove person to fresh air and keep comfortable for breathing.',
      'If exposed or concerned: Immediately call a poison center or doctor.',
      'Absorb spillage to prevent material damage.',
      'Store locked up.',
      'Dispose of contents and container in accordance with local, regional, national and international regulations.',
    ]);
  });

  it('acid descaler', async () => {
    expect(await lines(['Skin Irrit. 2', 'Eye Dam. 1'])).toEqual([
      'Danger GHS05',
      'Causes skin irritation',
      'Causes serious eye damage',
      'Wash hands thoroughly after handling.',
      'Wear protective gloves, eye protection and face protection.',
      'If on skin: Wash with plenty of water.',
      'If skin irritation occurs: Get medical attention.',
      'Take off contaminated clothing and wash it before reuse.',
      'If in eyes: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing. Immediately call a poison center or doctor.',
    ]);
  });

  it('citrus degreaser', async () => {
    const hazards = ['Flam. Liq. 3', 'Skin Irrit. 2', 'Skin Sens. 1', 'Asp. Tox. 1', 'Eye Irrit. 2A'];
    expect(await lines(hazards)).toEqual([
      'Danger GHS08 GHS02 GHS07',
      'Flammable liquid and vapor',
      'May be fatal if swallowed and enters airways',
      'Causes skin irritation',
      'May cause an allergic skin reaction',
      'Causes serious eye irritation',
      'Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.',
      'Keep container tightly closed.',
      'Ground and bond container and receiving equipment.',
      'Use explosion-proof equipment.',
      'Use non-sparking tools.',
      'Take action to prevent static discharges.',
      'Avoid breathing mist, vapors or spray.',
      'Wash hands thoroughly after handling.',
      'Contaminated work clothing must not be allowed out of the workplace.',
      'Wear protective gloves, eye protection and face protection.',
      'If swallowed: Immediately call a poison center or doctor. Do NOT induce vomiting.',
      'If on skin (or hair): Take off immediately all contaminated clothing. Rinse skin with water or shower.',
      'If skin irritation or rash occurs: Get medical attention.',
      'Wash contaminated clothing before reuse.',
      'If in eyes: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.',
      'If eye irritation persists: Get medical attention.',
      'In case of fire: Use dry chemical or CO2 to extinguish.',
      'Store in a well-ventilated place. Keep cool.',
      'Store locked up.',
      'Dispose of contents and container in accordance with local, regional, national and international regulations.',
    ]);
  });
});
