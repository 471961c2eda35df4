export { default as allocation } from '../../../hazard-data/eu-clp/allocation.json' with { type: 'json' };
export { default as rules } from '../../../hazard-data/eu-clp/label-rules.json' with { type: 'json' };
export { default as pictograms } from '../../../hazard-data/eu-clp/pictogram-rules.json' with {
  type: 'json',
};
export { default as statements } from '../../../hazard-data/eu-clp/statements.json' with { type: 'json' };
