export { default as statements } from '../../../hazard-data/languages/es/statements.json' with {
  type: 'json',
};
