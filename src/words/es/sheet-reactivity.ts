import type { reactivity as english } from '../en/sheet-reactivity.ts';

/** Sentences of sections 2, 10 and 13 by their id in hazard-data/sheet/advice.json; `{names}` are constituents. */
export const reactivity: Readonly<Record<keyof typeof english, string>> = {
  'decomposition-carbon': 'En un incendio: monóxido de carbono, dióxido de carbono y humos irritantes.',
  'decomposition-chlorine': 'Cloro y compuestos de cloro.',
  'decomposition-nitrogen': 'Amoniaco, aminas y óxidos de nitrógeno.',
  'decomposition-sulfur': 'Óxidos de azufre.',
  'decomposition-fluoride': 'Fluoruro de hidrógeno.',
  'reactions-hypochlorite':
    'Con ácidos se forma gas cloro; con amoniaco y aminas, cloraminas. Los metales y la luz liberan oxígeno.',
  'reactions-acid':
    'Con lejía puede formarse gas cloro; con sulfuros y cianuros, otros gases tóxicos. Calor con álcalis. Hidrógeno con metales.',
  'reactions-alkali': 'Calor con ácidos. Hidrógeno con aluminio y cinc. Amoniaco con sales de amonio.',
  'reactions-oxidizer':
    'Con materias combustibles, agentes reductores y sales de metales: calor, oxígeno, fuego.',
  'reactions-ammonia': 'Con lejía se forman cloraminas tóxicas. Calor con ácidos.',
  'reactions-sulfur': 'Con ácidos se forma sulfuro de hidrógeno o dióxido de azufre.',
  'reactions-cyanide': 'Con ácidos se forma cianuro de hidrógeno.',
  'reactions-flammable': 'Con comburentes fuertes: calor, fuego.',
  'reactions-water': 'Con agua: calor, presión o gas.',
  'reactions-none':
    'No se conoce ninguna a partir de los grupos de sustancias reactivas en los que se buscaron los componentes por su número CAS.',
  'incompatible-hypochlorite': 'Ácidos, amoniaco, aminas, alcoholes, metales, materias combustibles.',
  'incompatible-acid': 'Álcalis, lejía, sulfuros, sulfitos, cianuros, metales.',
  'incompatible-alkali': 'Ácidos, sales de amonio, aluminio, cinc, estaño.',
  'incompatible-oxidizer': 'Materias combustibles, agentes reductores, álcalis, metales y sus sales.',
  'incompatible-ammonia': 'Lejía y otros compuestos de cloro, ácidos, cobre y cinc.',
  'incompatible-sulfur': 'Ácidos, comburentes.',
  'incompatible-cyanide': 'Ácidos, comburentes.',
  'incompatible-flammable': 'Comburentes fuertes.',
  'incompatible-water': 'Agua, humedad, alcoholes, álcalis.',
  'incompatible-strong': 'Ácidos fuertes, álcalis fuertes y comburentes fuertes, salvo que se haya probado.',
  'reactivity-below': 'Véanse las reacciones posibles y los materiales incompatibles en esta sección.',
  'stability-oxygen':
    'Se descompone lentamente y desprende oxígeno; más deprisa con calor, luz, metales y suciedad.',
  'stability-expected':
    'Se espera que sea estable si se almacena como indica la sección 7, por las clases de los componentes; no se ha ensayado.',
  'avoid-heat': 'Calor y recipientes abiertos.',
  'avoid-light': 'Luz solar, suciedad, iones metálicos.',
  'use-hypochlorite':
    'Durante el uso: mezclado con ácidos, el producto desprende gas cloro, que es tóxico; con amoniaco o aminas, cloraminas tóxicas.',
  'use-sulfur':
    'Durante el uso: mezclado con ácidos, el producto desprende sulfuro de hidrógeno o dióxido de azufre, que son tóxicos.',
  'use-cyanide':
    'Durante el uso: mezclado con ácidos, el producto desprende cianuro de hidrógeno, que es tóxico.',
  'use-water': 'Durante el uso: con agua el producto reacciona y desprende calor o gas.',
  'decomposition-slow':
    'No se ha medido. Se descompone al calentarse y, lentamente, también durante el almacenamiento (sección 10): {names}.',
  'decomposition-none':
    'No se ha medido. No se encontró ningún componente en los grupos de sustancias que se descomponen a temperatura ordinaria.',
  'disposal-drain':
    'No verter en desagües sin el permiso de la autoridad de aguas residuales. Los envases vacíos retienen restos: tratarlos como el producto hasta que estén limpios.',
};
