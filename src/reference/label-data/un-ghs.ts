export { default as allocation } from '../../../hazard-data/un-ghs/allocation.json' with { type: 'json' };
export { default as rules } from '../../../hazard-data/un-ghs/label-rules.json' with { type: 'json' };
export { default as pictograms } from '../../../hazard-data/un-ghs/pictogram-rules.json' with {
  type: 'json',
};
export { default as statements } from '../../../hazard-data/un-ghs/statements.json' with { type: 'json' };
