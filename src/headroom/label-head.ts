import type { LabelledProduct } from '../labelling/labelled-product.ts';
import { pictogramsOf } from '../labelling/pictograms.ts';
import { shownHazards } from '../labelling/shown-hazards.ts';
import { signalWordOf } from '../labelling/signal-word.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { LabelOf } from './state.ts';

/** Signal word and pictograms as the label of a product would show them. */
export const labelHeadBy =
  (labelData: LabelData, product: LabelledProduct): LabelOf =>
  classification => {
    const { shown } = shownHazards(classification, labelData, product);
    return {
      signalWord: signalWordOf(shown, labelData).signalWord,
      pictograms: pictogramsOf(shown, labelData).pictograms,
    };
  };
