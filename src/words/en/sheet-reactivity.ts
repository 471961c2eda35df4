/** Sentences of sections 2, 10 and 13 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const reactivity = {
  'decomposition-carbon': 'In a fire: carbon monoxide, carbon dioxide, irritating smoke.',
  'decomposition-chlorine': 'Chlorine and chlorine compounds.',
  'decomposition-nitrogen': 'Ammonia, amines, oxides of nitrogen.',
  'decomposition-sulfur': 'Oxides of sulfur.',
  'decomposition-fluoride': 'Hydrogen fluoride.',
  'reactions-hypochlorite':
    'With acids chlorine gas forms, with ammonia and amines chloramines. Metals and light set oxygen free.',
  'reactions-acid':
    'With bleach chlorine gas can form, with sulfides and cyanides other toxic gases. Heat with alkalis. Hydrogen with metals.',
  'reactions-alkali': 'Heat with acids. Hydrogen with aluminum and zinc. Ammonia from ammonium salts.',
  'reactions-oxidizer':
    'With material that burns, with reducing agents and with metal salts: heat, oxygen, fire.',
  'reactions-ammonia': 'With bleach toxic chloramines form. Heat with acids.',
  'reactions-sulfur': 'With acids hydrogen sulfide or sulfur dioxide forms.',
  'reactions-cyanide': 'With acids hydrogen cyanide forms.',
  'reactions-flammable': 'With strong oxidizers: heat, fire.',
  'reactions-water': 'With water: heat, pressure or gas.',
  'reactions-none':
    'None is known from the groups of reactive substances in which the ingredients were looked up by CAS number.',
  'incompatible-hypochlorite': 'Acids, ammonia, amines, alcohols, metals, material that burns.',
  'incompatible-acid': 'Alkalis, bleach, sulfides, sulfites, cyanides, metals.',
  'incompatible-alkali': 'Acids, ammonium salts, aluminum, zinc, tin.',
  'incompatible-oxidizer': 'Material that burns, reducing agents, alkalis, metals and their salts.',
  'incompatible-ammonia': 'Bleach and other chlorine compounds, acids, copper and zinc.',
  'incompatible-sulfur': 'Acids, oxidizers.',
  'incompatible-cyanide': 'Acids, oxidizers.',
  'incompatible-flammable': 'Strong oxidizers.',
  'incompatible-water': 'Water, moisture, alcohols, alkalis.',
  'incompatible-strong': 'Strong acids, strong alkalis and strong oxidizers, unless tried.',
  'reactivity-below': 'See possible reactions and incompatible materials in this section.',
  'stability-oxygen': 'Decomposes slowly and gives off oxygen; faster with heat, light, metals and dirt.',
  'stability-expected':
    'Expected to be stable when stored as in section 7, from the classes of the ingredients; not tested.',
  'avoid-heat': 'Heat and open containers.',
  'avoid-light': 'Sunlight, dirt, metal ions.',
  'use-hypochlorite':
    'In use: mixed with acids the product gives off toxic chlorine gas, with ammonia or amines toxic chloramines.',
  'use-sulfur':
    'In use: mixed with acids the product gives off hydrogen sulfide or sulfur dioxide, which are toxic.',
  'use-cyanide': 'In use: mixed with acids the product gives off hydrogen cyanide, which is toxic.',
  'use-water': 'In use: with water the product reacts and gives off heat or gas.',
  'decomposition-slow': 'Not measured. Decomposes when heated, slowly also in storage (section 10): {names}.',
  'decomposition-none':
    'Not measured. No ingredient was found in the groups of substances that decompose at ordinary temperatures.',
  'disposal-drain':
    'Do not pour into drains without the consent of the authority for waste water. Empty containers hold residue: treat them like the product until they are cleaned.',
} as const;
