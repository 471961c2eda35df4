/** Sentences of sections 6 to 8 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const handling = {
  'release-ignition':
    'Put out flames and switch off every source of ignition before anything else. Ventilate. Leave the area where vapor collects.',
  'release-slip': 'Spilled liquid makes floors slippery.',
  'release-people':
    'Keep others away. Avoid contact and do not breathe vapor, mist or dust. Keep the product out of drains and waters.',
  'clean-flammable':
    'Take up with sand, earth or another absorbent that does not burn, with tools that give no sparks. Collect in closed containers.',
  'clean-oxidizer':
    'Do not take up with sawdust, paper or rags: they can catch fire. Dilute with much water or take up with sand, and never put back into the container.',
  'clean-acid':
    'Take up with sand, earth or another inert absorbent. Where the product holds nothing that reacts with it, small residues can be neutralized slowly with soda ash: heat and gas form. Rinse with water.',
  'clean-alkali':
    'Take up with sand, earth or another inert absorbent. Rinse what is left with plenty of water. Do not neutralize with acid without knowing what the product holds.',
  'clean-dust': 'Take up dry without raising dust: vacuum cleaner with fine filter, or sweep damp.',
  'clean-gas': 'Stop the leak if that is safe. Ventilate until the gas is gone.',
  'clean-absorb':
    'Take up with sand, earth or another inert absorbent, collect in closed containers, and rinse the floor with water.',
  'handling-hygiene':
    'Avoid contact with eyes, skin and clothing. Do not eat, drink or smoke at work. Wash hands before breaks and after work.',
  'handling-bond':
    'Keep flames, sparks and hot surfaces away. Ground and bond containers while pouring. Ventilate, also near the floor.',
  'handling-dust': 'Do not raise dust.',
  'handling-mixing': 'Never mix with other products: toxic gas can form.',
  'storage-closed':
    'Keep closed in the original container, upright, cool and dry, away from food and out of reach of children.',
  'storage-heat': 'Protect from sun and heat; secure cylinders against falling.',
  'storage-vented': 'Use containers with a vent. Never close product in that was taken out before.',
  'storage-acid': 'Apart from alkalis, bleach, sulfides, cyanides and metals.',
  'storage-alkali': 'Apart from acids, ammonium salts, aluminum and zinc.',
  'storage-fire': 'Away from sources of ignition and from oxidizers.',
  'engineering-explosion': 'Where vapors can collect: electrical equipment made for explosive atmospheres.',
  'engineering-exhaust':
    'Local exhaust, or general ventilation strong enough to keep the air below the limits of this section.',
  'engineering-eyewash': 'Eyewash and safety shower where the product is handled.',
  'engineering-dust': 'Draw off dust where it forms.',
  'engineering-general': 'Good general ventilation; more where mist or vapor forms.',
  'eyes-goggles': 'Tight chemical goggles; a face shield with them where the product can splash.',
  'eyes-glasses': 'Safety glasses with side shields; goggles where the product can splash.',
  'hands-aqueous': 'Nitrile, neoprene or butyl rubber, as a rule, for acids and alkalis in water.',
  'hands-solvent':
    'No natural rubber: solvents pass through it. Nitrile or butyl rubber, as the solvent asks.',
  'hands-maker':
    'Chemical-resistant gloves. Breakthrough time depends on material and thickness: choose by the data of the glove maker for the ingredients of section 3, and change them in time.',
  'skin-apron': 'Chemical-resistant apron, sleeves and boots where the product can splash.',
  'skin-clothing': 'Work clothing with long sleeves and closed shoes.',
  'respiratory-limits':
    'Where ventilation does not keep the air below the limits of this section, a respirator chosen and used under 29 CFR 1910.134.',
} as const;
