import type { SheetWords } from '../sheet-words.ts';

/** Phrases of sections 4 and 11; `{name}` is filled in. */
export const measures: SheetWords['measures'] = {
  noSymptoms: 'No se ha clasificado ningún peligro para la salud.',
  acute: 'Agudos: {texts}',
  delayed: 'Retardados: {texts}',
  physician: 'Nota para el médico: {text}',
  flashPoint: 'Punto de inflamación: {text}.',
  decomposition: 'Productos de descomposición peligrosos: {text}',
  seeProtection: 'Llevar el equipo de protección que describe la sección 8.',
  seeDisposal: 'Eliminar el material recogido como describe la sección 13.',
  incompatibilities: 'Incompatibilidades: {text}',
  symptomsUndecided:
    'Hasta donde llegan los datos, no se ha clasificado ningún peligro para la salud; la sección 2 nombra las clases que no están decididas.',
};

export const effects: SheetWords['effects'] = {
  effects: {
    'Acute Tox. (oral)': 'efectos tóxicos en el cuerpo tras la ingestión',
    'Acute Tox. (dermal)': 'efectos tóxicos en el cuerpo tras el contacto con la piel',
    'Acute Tox. (inhalation)': 'efectos tóxicos en el cuerpo tras la inhalación',
    'Skin Corr.': 'quemaduras de la piel con dolor, ampollas, úlceras y cicatrices',
    'Skin Irrit.': 'enrojecimiento, picor e hinchazón de la piel',
    'Eye Dam.':
      'lesiones oculares con dolor, lagrimeo y opacidad de la córnea; es posible la pérdida de la vista',
    'Eye Irrit.': 'enrojecimiento, escozor y lagrimeo de los ojos',
    'Resp. Sens.':
      'alergia de las vías respiratorias con silbidos, opresión en el pecho y dificultad para respirar, también tras pequeñas exposiciones posteriores',
    'Skin Sens.': 'erupción alérgica de la piel con picor, también tras pequeñas exposiciones posteriores',
    'Muta.': 'posibles daños genéticos hereditarios, sin síntomas tempranos',
    'Carc.': 'posible cáncer tras una larga latencia, sin síntomas tempranos',
    'Repr.': 'posibles daños a la fertilidad o al feto, sin síntomas tempranos',
    'Lact.': 'posibles daños a los niños alimentados con leche materna',
    'STOT SE': 'daños en {organs} tras una sola exposición',
    'STOT SE (respiratory irritation)': 'tos, dolor de garganta y falta de aire',
    'STOT SE (narcotic effects)': 'somnolencia, mareo, dolor de cabeza y pérdida de coordinación',
    'STOT RE': 'daños en {organs} tras exposiciones prolongadas o repetidas',
    'Asp. Tox.':
      'si el líquido penetra en las vías respiratorias al tragar o vomitar, asfixia y neumonía química, que puede desarrollarse a lo largo de horas',
    'Simple Asphyx.': 'asfixia donde el gas desplaza el oxígeno, posiblemente sin aviso',
  },
  organsUnknown: 'los órganos',
};

export const toxicology: SheetWords['toxicology'] = {
  columns: ['Clase de peligro', 'Resultado', 'Motivo y párrafo'],
  outcomes: {
    'not-classified': 'No clasificado',
    'insufficient-data': 'Datos insuficientes',
    'not-applicable': 'No procede',
  },
  routesByForm: {
    liquid:
      'Contacto con la piel, contacto con los ojos e ingestión; inhalación donde se formen vapores, nieblas o aerosoles. Deducido de la forma física.',
    solid:
      'Contacto con la piel, contacto con los ojos e ingestión; inhalación donde se forme polvo. Deducido de la forma física.',
    gas: 'Inhalación; contacto con la piel y los ojos. Deducido de la forma física.',
    aerosol:
      'Inhalación del aerosol, contacto con la piel y contacto con los ojos; la ingestión es improbable. Deducido de la forma física.',
  },
  immediate: 'Inmediatos: {texts}',
  later: 'Retardados o crónicos: {texts}',
  ateColumns: ['Vía', 'Estimación de la toxicidad aguda de la mezcla (ATEmix)'],
  ate: {
    oral: ['Oral', '{value} mg/kg de peso corporal'],
    dermal: ['Cutánea', '{value} mg/kg de peso corporal'],
    gas: ['Inhalación, gas', '{value} ppmV'],
    vapour: ['Inhalación, vapor', '{value} mg/L'],
    mist: ['Inhalación, polvo o niebla', '{value} mg/L'],
  },
  noAte: 'No se calcula: ningún componente tiene un valor pertinente',
  noAteAtAll:
    'No se calcula: ningún componente tiene un valor pertinente de toxicidad aguda por ninguna vía.',
  ateNote: 'Calculado con la fórmula de adición de App. A, A.1.3.6; no se ha medido en la mezcla.',
  interactive: 'De las combinaciones se sabe lo siguiente:',
  calculated:
    'La clasificación se obtuvo por cálculo a partir de los componentes (29 CFR 1910.1200, App. A), no de ensayos de la mezcla, salvo donde un motivo anterior diga otra cosa.',
  tested: 'Pruebas sobre la mezcla entera: {method} ({source}).',
  bridging: 'Extrapolado de una mezcla similar sometida a ensayo: {method} ({source}).',
  reserve: 'Reserva ácida o alcalina: {method} ({source}).',
  harmonised:
    'Donde el registro no da datos propios, los componentes se clasifican con su entrada armonizada del anexo VI del Reglamento (CE) n.º 1272/2008. Se usa como fuente de datos; no es derecho de los Estados Unidos.',
  noSar: 'No se usó ninguna relación estructura-actividad (SAR).',
  classified: 'Clasificado',
  category: 'Categoría {category}',
  paragraphs: 'Los párrafos son los de 29 CFR 1910.1200, apéndices A y B.',
  ateRounded: 'Redondeado a una cifra, porque se reserva una concentración.',
  noInteractive:
    'Entre los componentes no se conoce ninguno, a partir de los grupos de sustancias reactivas en los que se buscaron.',
  noFigure: 'no se da ninguna cifra',
  ingredientColumns: ['Componente', 'Vía o clase', 'LD50, LC50 o estimación (ATE)', 'Fuente'],
  ingredientNote:
    'Cifras de los componentes por sí solos, como las da su fuente; la especie se indica donde la fuente la nombra.',
};
