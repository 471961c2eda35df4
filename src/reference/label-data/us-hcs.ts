export { default as allocation } from '../../../hazard-data/us-hcs/allocation.json' with { type: 'json' };
export { default as rules } from '../../../hazard-data/us-hcs/label-rules.json' with { type: 'json' };
export { default as pictograms } from '../../../hazard-data/us-hcs/pictogram-rules.json' with {
  type: 'json',
};
export { default as statements } from '../../../hazard-data/us-hcs/statements.json' with { type: 'json' };
