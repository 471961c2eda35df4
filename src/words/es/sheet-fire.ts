import type { fire as english } from '../en/sheet-fire.ts';

/** Sentences of section 5 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const fire: Readonly<Record<keyof typeof english, string>> = {
  'media-water': 'Agua en gran cantidad.',
  'media-dry': 'Arena seca o polvo para metales en combustión.',
  'media-flammable':
    'Agua pulverizada, espuma resistente al alcohol, polvo químico seco o dióxido de carbono.',
  'media-gas':
    'No apagar el gas en llamas salvo que la fuga pueda detenerse. Enfriar lo que esté cerca con agua pulverizada.',
  'media-surrounding':
    'La clasificación no indica peligro de incendio. Elegir los medios según lo que arda alrededor del producto: agua pulverizada, espuma, polvo químico seco o dióxido de carbono.',
  'media-undecided':
    'Por falta de datos, la clasificación no decide sobre todos los peligros de incendio (sección 2). Agua pulverizada, espuma, polvo químico seco o dióxido de carbono, según lo que arda alrededor del producto.',
  'unsuitable-jet': 'Chorro de agua directo: dispersa el líquido en llamas.',
  'unsuitable-smother':
    'El polvo químico seco, la espuma y el dióxido de carbono no detienen la reacción: el propio producto desprende oxígeno.',
  'unsuitable-water': 'Agua, espuma y dióxido de carbono.',
  'unsuitable-spread': 'Chorro de agua directo donde pueda dispersar el producto.',
  'fire-vapors':
    'Los vapores forman mezclas explosivas con el aire, pesan más que el aire, se extienden por el suelo y pueden inflamarse desde una fuente de ignición lejana y retroceder.',
  'fire-burst': 'Los recipientes pueden reventar si se calientan.',
  'fire-oxygen':
    'Desprende oxígeno al calentarse: el fuego arde con más fuerza y los recipientes cerrados pueden reventar.',
  'fire-carbon':
    'Los envases y los componentes orgánicos desprenden al arder monóxido de carbono y humos irritantes.',
  'fire-chlorine': 'El calor puede liberar cloro y compuestos de cloro.',
  'fire-nitrogen': 'El calor puede liberar amoniaco, aminas u óxidos de nitrógeno.',
  'fire-sulfur': 'El calor puede liberar óxidos de azufre.',
  'fire-fluoride': 'El calor puede liberar fluoruro de hidrógeno.',
  'fighters-apparatus':
    'Equipo de respiración autónomo y ropa de protección completa. Enfriar los recipientes con agua pulverizada desde una distancia segura. Evitar que el agua de extinción llegue a desagües y aguas.',
};
