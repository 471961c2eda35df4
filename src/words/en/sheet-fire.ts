/** Sentences of section 5 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const fire = {
  'media-water': 'Water in large amounts.',
  'media-dry': 'Dry sand or powder for burning metals.',
  'media-flammable': 'Water spray, alcohol-resistant foam, dry chemical or carbon dioxide.',
  'media-gas':
    'Do not put out burning gas unless the leak can be stopped. Cool what stands near with water spray.',
  'media-surrounding':
    'The classification names no fire hazard. Choose media for what burns around the product: water spray, foam, dry chemical or carbon dioxide.',
  'media-undecided':
    'For want of data the classification does not decide on every fire hazard (section 2). Water spray, foam, dry chemical or carbon dioxide, as what burns around the product asks.',
  'unsuitable-jet': 'A full jet of water: it spreads burning liquid.',
  'unsuitable-smother':
    'Dry chemical, foam and carbon dioxide do not stop the reaction: the product gives off oxygen itself.',
  'unsuitable-water': 'Water, foam and carbon dioxide.',
  'unsuitable-spread': 'A full jet of water where it would spread the product.',
  'fire-vapors':
    'Vapors form explosive mixtures with air, are heavier than air, travel along the floor and can flash back from a source of ignition far away.',
  'fire-burst': 'Containers can burst when heated.',
  'fire-oxygen': 'Gives off oxygen when heated: fires burn more fiercely, closed containers can burst.',
  'fire-carbon': 'Burning packaging and organic ingredients give carbon monoxide and irritating smoke.',
  'fire-chlorine': 'Heat can set chlorine and chlorine compounds free.',
  'fire-nitrogen': 'Heat can set ammonia, amines or oxides of nitrogen free.',
  'fire-sulfur': 'Heat can set oxides of sulfur free.',
  'fire-fluoride': 'Heat can set hydrogen fluoride free.',
  'fighters-apparatus':
    'Self-contained breathing apparatus and full protective clothing. Cool containers with water spray from a safe distance. Keep runoff out of drains and waters.',
} as const;
