import { line, mapping, oneOf } from './_leaf.ts';

/** Labels of small packages in the Union, CLP Article 29. */
export const smallPackageSchema = mapping(
  {
    take: oneOf(
      ['reduced', 'inner'],
      'reduced: up to 125 mL, without the statements that CLP Annex I, 1.5.2.1 lets it leave out; inner: the least label, while the whole information is on a fold-out label, a tie-on tag or an outer packaging (1.5.1)',
    ),
    reason: line(
      'the label would not be legible in the three languages of its markets',
      'Why the whole label cannot be on the package',
      2000,
    ),
  },
  'Small package labelled by CLP Article 29, for supply in the Union',
);
