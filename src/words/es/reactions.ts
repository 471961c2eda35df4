import type { Warning } from '../../classify/facts/warning.ts';
import type { Telling } from '../words.ts';

type Reactive = Extract<Warning, { id: 'reactive-constituents' }>;

/** Danger, text and what it gives, by the id of the pair in hazard-data/reactivity/pairs.json. */
const pairs: Readonly<Record<string, readonly [danger: string, text: string, gives: string]>> = {
  'hypochlorite-acid': ['gas tóxico', 'el ácido libera cloro', 'cloro'],
  'hypochlorite-ammonia': [
    'gas tóxico',
    'los donadores de cloro reaccionan con amoniaco, sales de amonio y urea',
    'cloraminas; con exceso de cloro, tricloruro de nitrógeno, que es explosivo',
  ],
  'hypochlorite-amine': [
    'gas tóxico',
    'los donadores de cloro reaccionan con aminas y pierden su cloro activo',
    'cloraminas orgánicas',
  ],
  'hypochlorite-peroxide': [
    'presión',
    'el hipoclorito y el peróxido se destruyen mutuamente',
    'oxígeno y calor',
  ],
  'hypochlorite-alcohol': [
    'gas tóxico',
    'el hipoclorito clora alcoholes y cetonas',
    'cloroformo y otros compuestos orgánicos clorados',
  ],
  'hypochlorite-heavy-metal': [
    'presión',
    'el cobre, el níquel, el cobalto, el hierro y el manganeso catalizan la descomposición del hipoclorito: los envases cerrados se hinchan y revientan',
    'oxígeno',
  ],
  'hypochlorite-isocyanurate': [
    'incendio o explosión',
    'los donadores de cloro inorgánicos y orgánicos reaccionan violentamente entre sí si se humedecen',
    'tricloruro de nitrógeno, cloro y calor',
  ],
  'hypochlorite-reducer': [
    'calor',
    'el comburente y el agente reductor se destruyen mutuamente',
    'calor, sulfatos y cloruros',
  ],
  'chlorite-acid': [
    'gas tóxico',
    'el ácido libera dióxido de cloro, que es tóxico y explosivo',
    'dióxido de cloro',
  ],
  'chlorite-hypochlorite': [
    'gas tóxico',
    'los donadores de cloro oxidan el clorito a dióxido de cloro',
    'dióxido de cloro',
  ],
  'peroxide-organic-acid': [
    'sustancia nueva',
    'un ácido orgánico y el peróxido forman un perácido, que es corrosivo y comburente y no está en la clasificación de ninguno',
    'perácidos',
  ],
  'peroxide-base': ['presión', 'los peróxidos se descomponen en disolución alcalina', 'oxígeno y calor'],
  'peroxide-ketone': [
    'incendio o explosión',
    'las cetonas y el peróxido forman peróxidos explosivos, deprisa si hay ácido',
    'peróxidos orgánicos que explotan al secarse',
  ],
  'peroxide-metal': [
    'presión',
    'los metales y sus sales catalizan la descomposición de los peróxidos',
    'oxígeno y calor',
  ],
  'peroxide-reducer': ['calor', 'el comburente y el agente reductor se destruyen mutuamente', 'calor'],
  'peroxide-organics': [
    'incendio o explosión',
    'peróxido orgánico con sustancias orgánicas inflamables',
    'incendio o explosión',
  ],
  'acid-base': ['calor', 'el ácido y la base se neutralizan', 'calor y una sal'],
  'acid-carbonate': [
    'presión',
    'el ácido libera dióxido de carbono; en un envase cerrado sube la presión',
    'dióxido de carbono',
  ],
  'ammonium-base': ['gas tóxico', 'una base fuerte libera amoniaco de las sales de amonio', 'amoniaco'],
  'sulfide-acid': ['gas tóxico', 'el ácido libera sulfuro de hidrógeno', 'sulfuro de hidrógeno'],
  'sulfite-acid': ['gas tóxico', 'el ácido libera dióxido de azufre', 'dióxido de azufre'],
  'cyanide-acid': ['gas tóxico', 'el ácido libera cianuro de hidrógeno', 'cianuro de hidrógeno'],
  'cyanide-hypochlorite': [
    'gas tóxico',
    'los donadores de cloro forman cloruro de cianógeno a partir del cianuro',
    'cloruro de cianógeno',
  ],
  'azide-acid': [
    'gas tóxico',
    'el ácido libera ácido hidrazoico, que es muy tóxico y explosivo',
    'ácido hidrazoico',
  ],
  'azide-metal': [
    'incendio o explosión',
    'el cobre, la plata y otros metales pesados forman azidas explosivas',
    'azidas metálicas que explotan por impacto',
  ],
  'nitrite-amine': [
    'sustancia nueva',
    'el nitrito y las aminas secundarias o terciarias forman nitrosaminas, también en disolución alcalina',
    'N-nitrosaminas, carcinógenos que ningún componente muestra',
  ],
  'nitrosating-releaser-amine': [
    'sustancia nueva',
    'el bronopol y similares liberan nitrito, que forma nitrosaminas con aminas secundarias y terciarias',
    'N-nitrosaminas, carcinógenos que ningún componente muestra',
  ],
  'nitrite-acid': ['gas tóxico', 'el ácido libera óxidos de nitrógeno', 'óxidos de nitrógeno'],
  'nitrite-ammonium': [
    'incendio o explosión',
    'el nitrito de amonio se descompone violentamente',
    'nitrógeno y calor',
  ],
  'fluoride-acid': [
    'gas tóxico',
    'el ácido libera ácido fluorhídrico, cuyos peligros el fluoruro no muestra',
    'fluoruro de hidrógeno',
  ],
  'oxidizing-acid-organics': [
    'incendio o explosión',
    'los ácidos nítrico y perclórico oxidan las sustancias orgánicas',
    'óxidos de nitrógeno, calor, nitratos orgánicos',
  ],
  'oxidizing-acid-amine': [
    'gas tóxico',
    'los ácidos oxidantes reaccionan con aminas',
    'calor y óxidos de nitrógeno',
  ],
  'oxidizing-acid-reducer': [
    'gas tóxico',
    'ácido oxidante y agente reductor',
    'óxidos de nitrógeno y dióxido de azufre',
  ],
  'acid-metal': [
    'incendio o explosión',
    'los ácidos disuelven estos metales',
    'hidrógeno; óxidos de nitrógeno con ácido nítrico',
  ],
  'base-metal': ['incendio o explosión', 'las bases fuertes disuelven el aluminio y el cinc', 'hidrógeno'],
  'permanganate-organics': [
    'incendio o explosión',
    'los permanganatos oxidan las sustancias orgánicas',
    'calor y fuego',
  ],
  'isocyanate-water': ['presión', 'los isocianatos reaccionan con agua', 'dióxido de carbono y ureas'],
  'isocyanate-amine': ['calor', 'los isocianatos reaccionan de inmediato con aminas', 'calor y ureas'],
  'water-reactive-water': [
    'incendio o explosión',
    'la sustancia desprende gas inflamable con agua',
    'gas inflamable',
  ],
  'oxidizer-flammable': [
    'incendio o explosión',
    'un comburente junto a sustancias inflamables; las clases de los componentes no muestran cómo arde la mezcla',
    'incendio o explosión',
  ],
  'peroxide-strong-acid': [
    'sustancia nueva',
    'los ácidos fuertes y el peróxido forman perácidos, corrosivos y comburentes; el ácido clorhídrico da cloro',
    'ácido peroxomonosulfúrico y otros perácidos; con ácido clorhídrico, cloro',
  ],
  'formaldehyde-hydrochloric-acid': [
    'sustancia nueva',
    'el formaldehído y el ácido clorhídrico forman éter bis(clorometílico)',
    'éter bis(clorometílico), un carcinógeno que ningún componente muestra',
  ],
  'chlorinated-solvent-base': [
    'incendio o explosión',
    'un álcali fuerte arranca cloruro de hidrógeno a los disolventes clorados',
    'dicloroacetileno y otros gases tóxicos que se inflaman solos',
  ],
};

/** Milder words where one side is dilute. */
const below: typeof pairs = {
  'peroxide-organics': [
    'calor',
    'peróxido orgánico con sustancias orgánicas inflamables, en una cantidad que calienta más que arde',
    'calor',
  ],
  'oxidizing-acid-organics': [
    'calor',
    'los ácidos nítrico y perclórico diluidos oxidan lentamente las sustancias orgánicas',
    'calor',
  ],
  'oxidizer-flammable': ['calor', 'un comburente diluido con un líquido inflamable', 'calor'],
};

const shares = (found: Reactive['left'], tell: Telling): string =>
  found
    .map(({ constituent, amount }) => {
      const share = tell.amounts ? `${tell.style.show(amount.value)} % ` : '';
      return `${share}${tell.names(constituent)}`;
    })
    .join(', ');

/** Constituents that react with each other, and what it gives. */
export function reactive({ pair, dilute, left, right, advice, pH }: Reactive, tell: Telling): string {
  const [danger, text, gives] = ((dilute && below[pair]) || pairs[pair])!;
  const measured = pH ? ` ${tell.style.show(pH.value)}` : '';
  const follows = {
    'reckon-the-salt': 'las sumas cuentan ambos como si no hubieran reaccionado',
    'salt-at-this-ph': `al pH medido${measured} el ácido está presente como su sal; la reacción llega al acidificar`,
    'does-not-hold': 'el cálculo a partir de los componentes no vale para lo que se forma',
  }[advice];
  return `${danger}: ${shares(left, tell)} con ${shares(right, tell)}: ${text} (da: ${gives}); ${follows}`;
}
