/** Sentences of sections 1, 2 and 12 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const other = {
  'restriction-mixing': 'Do not mix with other products.',
  'restriction-flame': 'Do not use near flames, sparks or hot surfaces.',
  'restriction-burns': 'Do not let rags, paper, wood or clothing soak it up and dry.',
  'restriction-aluminum': 'Do not use on aluminum or zinc.',
  'other-dryness': 'Repeated contact can make the skin dry and cracked: {names}.',
  'other-peroxides': 'Can form explosive peroxides where air reaches it for a long time: {names}.',
  'other-vapor': 'In use the vapor can form a flammable or explosive mixture with air: {names}.',
  'effects-ph-low': 'Acid: an undiluted spill lowers the pH of water and harms what lives in it.',
  'effects-ph-high': 'Alkaline: an undiluted spill raises the pH of water and harms what lives in it.',
  'effects-ozone': 'Harms the ozone layer: {names}.',
  'effects-film': 'Floats on water or sticks to soil and sediment: {names}.',
  'effects-oxygen': 'A large spill takes oxygen from water while it degrades: {names}.',
} as const;
