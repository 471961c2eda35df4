import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/classify/classification.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classified } from './_classified.ts';

const pictograms = async (basis: BasisId, ...hazards: string[]) =>
  labelElements(classified(basis, hazards), await loadLabelData(basis), { form: 'liquid' }).pictograms.join(
    ' ',
  );

// 29 CFR 1910.1200 App. C, C.2.1.2 to C.2.1.4 and C.2.3.4, read word for word.
describe('precedence of pictograms in the US', () => {
  it.each([
    [
      'C.2.1.2: the skull drops the exclamation mark of acute toxicity',
      ['Acute Tox. 3 (oral)', 'Acute Tox. 4 (dermal)'],
      'GHS06',
    ],
    ['C.2.1.2: not that of skin irritation', ['Acute Tox. 3 (oral)', 'Skin Irrit. 2'], 'GHS06 GHS07'],
    [
      'C.2.1.2: not that of narcotic effects',
      ['Acute Tox. 3 (oral)', 'STOT SE 3 (narcotic effects)'],
      'GHS06 GHS07',
    ],
    ['C.2.1.3: corrosion drops that of eye irritation', ['Skin Corr. 1B', 'Eye Irrit. 2A'], 'GHS05'],
    ['C.2.1.3: and that of skin irritation', ['Eye Dam. 1', 'Skin Irrit. 2'], 'GHS05'],
    ['C.2.1.3: also where corrosion stands for metals', ['Met. Corr. 1', 'Skin Irrit. 2'], 'GHS05'],
    ['C.2.1.3: not that of acute toxicity', ['Skin Corr. 1', 'Acute Tox. 4 (oral)'], 'GHS05 GHS07'],
    [
      'C.2.1.3: not that of skin sensitization',
      ['Eye Dam. 1', 'Skin Irrit. 2', 'Skin Sens. 1'],
      'GHS05 GHS07',
    ],
    [
      'C.2.1.4: the health hazard of a respiratory sensitizer drops that of skin sensitization',
      ['Resp. Sens. 1', 'Skin Sens. 1'],
      'GHS08',
    ],
    ['C.2.1.4: and of skin and eye irritation', ['Resp. Sens. 1', 'Skin Irrit. 2', 'Eye Irrit. 2A'], 'GHS08'],
    [
      'C.2.1.4: not that of respiratory irritation',
      ['Resp. Sens. 1', 'STOT SE 3 (respiratory irritation)'],
      'GHS08 GHS07',
    ],
    [
      'C.2.1.4: not where the health hazard stands for another class',
      ['Carc. 2', 'Skin Sens. 1'],
      'GHS08 GHS07',
    ],
    ['C.2.3.4: each once', ['Carc. 1A', 'STOT RE 1', 'Asp. Tox. 1'], 'GHS08'],
    ['no symbol for Eye Irrit. 2B', ['Eye Irrit. 2B'], ''],
    ['no symbol for Flam. Liq. 4', ['Flam. Liq. 4'], ''],
  ])('%s', async (_, hazards, expected) => {
    expect(await pictograms('us-hcs', ...hazards)).toBe(expected);
  });

  it('names each use that was dropped', async () => {
    const { omitted } = labelElements(
      classified('us-hcs', ['Skin Corr. 1', 'Eye Irrit. 2A']),
      await loadLabelData('us-hcs'),
      { form: 'liquid' },
    );
    expect(omitted).toContainEqual({
      what: 'GHS07 for Eye Irrit. 2A',
      why: { kind: 'pictogram-shown', pictogram: 'GHS05' },
      cite: '29 CFR 1910.1200 App. C, C.2.1.3',
    });
  });
});

// Regulation (EC) No 1272/2008, Article 26(1)(b) to (d) and (2).
describe('precedence of pictograms in the EU', () => {
  it.each([
    [
      '26(1)(b): the skull drops the exclamation mark whatever it stands for',
      ['Acute Tox. 3 (oral)', 'Skin Irrit. 2'],
      'GHS06',
    ],
    ['26(1)(c)', ['Skin Corr. 1B', 'Eye Irrit. 2', 'Skin Sens. 1'], 'GHS05 GHS07'],
    ['26(1)(d)', ['Resp. Sens. 1', 'Skin Sens. 1'], 'GHS08'],
    ['26(2): one pictogram for a class', ['STOT SE 1', 'STOT SE 3 (narcotic effects)'], 'GHS08'],
    ['two pictograms of one category stay', ['Self-react. B'], 'GHS01 GHS02'],
  ])('%s', async (_, hazards, expected) => {
    expect(await pictograms('eu-clp', ...hazards)).toBe(expected);
  });

  it('26(2) has no counterpart in the US rule', async () => {
    expect(await pictograms('us-hcs', 'STOT SE 1', 'STOT SE 3 (narcotic effects)')).toBe('GHS08 GHS07');
  });
});
