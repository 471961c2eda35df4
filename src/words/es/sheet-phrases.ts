import type { SheetWords } from '../sheet-words.ts';

/** Phrases of sections 1 to 3, 8 and 12, and of what frames the sheet; `{name}` is filled in. */
export const composition: SheetWords['composition'] = {
  columns: ['Denominación química', 'Número CAS', 'Concentración, % en peso', 'Clasificación del componente'],
  gasColumn: 'Concentración, % en volumen',
  noCas: 'No disponible. Identificador: nombre según el registro del fabricante',
  noneListed:
    'Ningún componente está clasificado como peligro para la salud y presente en su valor de corte o por encima de él.',
  remainder:
    'Componentes no clasificados como peligros para la salud, o presentes por debajo de sus valores de corte{total}.',
  remainderWater:
    'Componentes no clasificados como peligros para la salud, o presentes por debajo de sus valores de corte{total}, incluida el agua.',
  unjudged:
    'Componentes sin datos sobre sus peligros, de modo que no se sabe si pertenecen al cuadro{total} ({names}).',
  unknownData: 'Para una parte de la mezcla faltan datos de toxicidad aguda; véase la sección 2.',
  exact: 'Las cifras sueltas son porcentajes de la fórmula, con tres cifras significativas.',
  prescribed: 'El intervalo es uno de los prescritos en 29 CFR 1910.1200(i)(1)(iv) o (v): {names}.',
  noClaim: 'No se invoca ningún secreto comercial.',
  upTo: 'hasta el {percent} %',
  percent: '{percent} %',
  to: '{low} a {high}',
  secretName: 'Componente {number}, secreto comercial',
  casWithheld: 'No se indica: secreto comercial',
  withName: '{name}: {text}',
  noneListedUnjudged:
    'No se conoce ningún componente clasificado como peligro para la salud y presente en su valor de corte o por encima de él; de algunos faltan datos.',
  total: ': {percent} en total',
  makerRange: 'El intervalo muestra la variación de la fórmula de un lote a otro: {names}.',
  supplierRange: 'El intervalo es el de los datos del proveedor: {names}.',
  claimIdentity:
    'La identidad química específica se reserva como secreto comercial conforme a 29 CFR 1910.1200(i): {names}.',
  claimPercent:
    'La concentración exacta o el intervalo de concentración de la composición se reserva como secreto comercial conforme a 29 CFR 1910.1200(i): {names}.',
  disclosed:
    'Se facilita a los profesionales sanitarios, los trabajadores y los representantes designados según 29 CFR 1910.1200(i); a un profesional sanitario en una emergencia médica, de inmediato: {telephone}.',
  supplierWithholds: 'Su proveedor reserva la composición: {names}.',
  named: '{standing}; se nombra por {sections}',
  belowCutOff: '{titles}, por debajo del valor de corte',
  noClass: 'No clasificado según sus datos',
  noData: 'Sin datos sobre sus peligros',
  namedIn: {
    '8': 'su límite de exposición (sección 8)',
    '11': 'figurar en listas de carcinógenos (sección 11)',
    '15': 'figurar en la sección 15',
  },
};

export const exposure: SheetWords['exposure'] = {
  limit: '{name}: {list} {value}{date}',
  below: 'Por partes del cuerpo, a continuación.',
};

export const frame: SheetWords['frame'] = {
  kind: 'Ficha de datos de seguridad',
  draftTitle: 'BORRADOR para revisión por una persona cualificada',
  draft: [
    'Esta ficha se ha redactado por cálculo a partir del registro de producto del fabricante. Ninguna persona cualificada la ha revisado. No enviarla, no usarla para formar ni confiar en ella hasta que una persona cualificada haya comprobado cada sección con el producto, los datos y la legislación vigente, y la haya firmado.',
    'Si las normas locales, los permisos, los bomberos o los profesionales habilitados (medicina, ingeniería, higiene industrial) piden más u otra cosa, prevalece lo que ellos pidan.',
  ],
  runningDraft: 'BORRADOR para revisión cualificada',
  code: 'Código de producto {code}',
  revision: 'Revisión {revision}',
  date: 'Fecha {date}',
  basis: 'Base: {basis}',
  nonMandatory: 'No obligatorio (29 CFR 1910.1200, apéndice D).',
  open: 'Todavía no se ha buscado para este borrador.',
  searched: 'No se encontró información aplicable (buscada por: {by}).',
  translation:
    'TRADUCCIÓN. La ficha que pide la ley es la ficha en inglés (29 CFR 1910.1200(g)(2)); esta la acompaña. Si difieren, prevalece la inglesa.',
  copy: 'copia de distribución',
  draftSubject: '{kind}, borrador para revisión cualificada, {copy}',
  subject: '{kind}, {copy}',
  page: 'Página {number} de {count}',
  attachment: 'Esta ficha de datos de seguridad como datos',
};

export const further: SheetWords['further'] = {
  aquatic: 'Clasificación de la mezcla por suma, fuera de 29 CFR 1910.1200, según {basis}: {titles}.',
  unknownAquatic:
    'El {percent} % de la mezcla consiste en componentes cuyos peligros para el medio ambiente acuático se desconocen.',
  disposal:
    'Eliminar el producto, sus residuos y su envase conforme a las normas federales, estatales y locales (por ejemplo, 40 CFR partes 260 a 279). Quien genera el residuo determina si es peligroso.',
  aquaticIngredients:
    'Componentes clasificados como peligrosos para el medio ambiente acuático (fuera de 29 CFR 1910.1200): {names}.',
  aquaticIngredient: '{name} ({titles})',
  ready: 'Fácilmente biodegradable: {names}.',
  notReady: 'No fácilmente biodegradable: {names}.',
  inorganic: 'Inorgánico, por lo que la biodegradación no procede: {names}.',
  lowPotential: 'Bajo potencial de acumulación, log Kow inferior a {limit}: {names}.',
  highPotential: 'Potencial de acumulación, log Kow igual o superior a {limit}: {names}.',
  noPotential: 'Inorgánico, por lo que el log Kow no procede: {names}.',
  mobile: 'Se disuelve en agua y se desplaza con ella por el suelo: {names}.',
  bound: 'Apenas se disuelve en agua y se fija al suelo o se evapora: {names}.',
  notAquatic:
    'Por suma, la mezcla no se clasifica como peligrosa para el medio ambiente acuático según {basis}.',
  aquaticUndecided: 'Por falta de datos, la suma no decide: {titles}.',
  withFactor: '{code}, M = {factor}',
};

export const identification: SheetWords['identification'] = {
  productCode: 'Código de producto {code}',
  gtin: 'GTIN {gtin} ({contents})',
  address: '{line}',
  telephone: 'Teléfono {telephone}',
  email: 'Correo electrónico {email}',
  website: 'Web {website}',
  emergency: '{telephone}',
  hours: 'Horario: {hours}',
  noRestrictions: 'El fabricante no indica ninguna restricción de uso.',
  classified: '{title}',
  notClassified:
    'No clasificado como peligroso en ninguna de las clases examinadas según el párrafo (d)(1)(i).',
  insufficient: 'No hay datos suficientes para decidir: {titles}.',
  noSignalWord: 'La clasificación no exige palabra de advertencia.',
  noSymbols: 'La clasificación no exige pictograma.',
  noHazardStatements: 'La clasificación no exige indicaciones de peligro.',
  noPrecautions: 'La clasificación no exige consejos de prudencia.',
  symbols: '{titles}',
  reaction: 'Por la combinación de componentes o por reacciones conocidas:',
  namedReaction: 'Reacciones que nombra la sección 10: {text}',
  unknown: 'El {percent} % de la mezcla consiste en componentes de toxicidad aguda desconocida ({route}).',
  phMissing:
    'No se ha medido el pH de este producto, que decide si una mezcla con un ácido o una base fuertes es corrosiva: la clasificación para la piel y los ojos se basa en las cantidades de sus componentes.',
  noUnknown:
    'No se exige declaración: ningún componente de toxicidad aguda desconocida está presente en una concentración para la que proceda.',
  routes: { oral: 'oral', dermal: 'cutánea', inhalation: 'por inhalación' },
  groups: {
    general: 'General',
    prevention: 'Prevención',
    response: 'Respuesta',
    storage: 'Almacenamiento',
    disposal: 'Eliminación',
  },
  categories: '{class}, categoría {category}',
  joint: {
    'Skin Corr./Irrit.': 'Corrosión o irritación cutáneas',
    'Eye Dam./Irrit.': 'Lesiones oculares graves o irritación ocular',
    'STOT SE 3 (respiratory irritation)':
      'Toxicidad específica en determinados órganos, exposición única, categoría 3 (irritación de las vías respiratorias)',
    'STOT SE 3 (narcotic effects)':
      'Toxicidad específica en determinados órganos, exposición única, categoría 3 (efectos narcóticos)',
  },
  forms: { gas: 'gas', vapour: 'vapor', mist: 'polvo o niebla' },
  notClassifiedUndecided: 'Hasta donde llegan los datos, no se cumple ninguna clase de peligro.',
  stale:
    'Una propiedad de la sección 9 se midió en otra fórmula que la de este producto: hay que comprobar las clases que se apoyan en ella.',
  notToMix: 'No mezclar con {others}: puede formarse {gives}.',
  noReactions:
    'Entre los componentes no se conoce ninguna, a partir de los grupos de sustancias reactivas en los que se buscaron.',
};
