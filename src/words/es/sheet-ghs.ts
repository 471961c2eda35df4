import type { SheetWords } from '../sheet-words.ts';
import { abbreviations } from './abbreviations.ts';

/** Sentences of the sheets beyond 29 CFR 1910.1200: of the European Union and of the GHS itself. */
export const ghs: SheetWords['ghs'] = {
  compiledOn: 'Fecha de emisión {date}',
  revisedOn: 'Revisión: {date}',
  withRole: '{name} ({role})',
  body: '{body}: {telephone}. Horario: {hours}',
  bodyOfCountry: '{country}, {body}: {telephone}. Horario: {hours}',
  basis:
    'Clasificación según {basis}. El texto completo de las indicaciones figura en la sección 16 o en los elementos de la etiqueta.',
  notClassified: 'La mezcla no cumple los criterios de clasificación de ninguna de las clases examinadas.',
  effects: 'Efectos más importantes: {texts}.',
  noSupplemental: 'El cálculo no da ninguna indicación suplementaria.',
  noLabelSubstances:
    'La mezcla no está en ninguna de las clases para las que la etiqueta nombra sustancias (Reglamento (CE) n.º 1272/2008, artículo 18, apartado 3, letra b)).',
  labelSubstancesOpen:
    'La clase se apoya en un ensayo de la mezcla, que no nombra sustancias: la persona que revisa nombra las que la causan (Reglamento (CE) n.º 1272/2008, artículo 18, apartado 3, letra b)).',
  labelSubstancesProposed:
    'Una clase se apoya en un ensayo de la mezcla, que no nombra sustancias: se nombran las que están en esa clase por sí solas, y la persona que revisa dice cuáles la causan (Reglamento (CE) n.º 1272/2008, artículo 18, apartado 3, letra b)).',
  fourNames:
    'Por regla general bastan {count} nombres en la etiqueta; la persona que revisa elige los responsables de los peligros más graves.',
  columns: {
    name: 'Sustancia',
    numbers: 'Números',
    byWeight: '% en peso',
    byVolume: '% en volumen',
    classification: 'Clasificación',
  },
  numbers: {
    ec: 'CE {number}',
    cas: 'CAS {number}',
    index: 'Índice {number}',
    registration: 'Registro {number}',
    open: 'todavía no se ha buscado',
    withheld: 'No se indica: denominación alternativa',
  },
  openNumbers: { ec: 'Número CE: {names}', registration: 'Número de registro REACH: {names}' },
  unclassified: 'Indicado por el fabricante',
  listedFor: {
    pbt: 'Indicado como sustancia PBT, mPmB, PMT o mPmM',
    endocrine: 'Indicado por sus propiedades de alteración endocrina',
    'candidate-list': 'Indicado como sustancia de la lista del artículo 59, apartado 1',
    'union-limit': 'Indicado como sustancia con un límite de exposición profesional de la Unión',
    own: 'Indicado por el fabricante',
  },
  noneListed: 'Hasta donde llegan los datos, no hay ninguna sustancia que deba indicarse.',
  statementsBelow: 'El texto completo de las indicaciones figura en la sección 16 o en la etiqueta.',
  unjudged:
    'Sustancias sin ningún dato sobre sus peligros, de modo que no se sabe si deben indicarse: {names}.',
  valueColumns: [
    'Sustancia',
    'Límites de concentración específicos',
    'Factor M',
    'Estimación de la toxicidad aguda',
  ],
  factors: { acute: 'M = {value} (agudo)', chronic: 'M = {value} (crónico)' },
  estimate: '{route}: {value}',
  noValues:
    'Ni el registro ni el anexo VI del Reglamento (CE) n.º 1272/2008 dan ninguno para las sustancias anteriores.',
  rangeShown: 'El intervalo es más amplio que la fórmula, por decisión del fabricante: {names}.',
  alternative:
    '{name} es una denominación química alternativa según el artículo 24 del Reglamento (CE) n.º 1272/2008 ({approval}).',
  confidential:
    'La identidad de {name} se reserva como información comercial confidencial; se aplican las normas de la autoridad competente de cada país (GHS, 1.4.8).',
  noAlternative: 'No se usa ninguna denominación química alternativa.',
  limitsNote:
    'Los límites son los del registro. Las listas de la Unión (Directivas 2000/39/CE y 2004/37/CE y las que las siguen) y las de los Estados miembros no se tienen y no se han consultado.',
  keepOut:
    'Evitar que el producto y el agua con la que se enjuague lleguen a desagües, aguas superficiales, aguas subterráneas y suelo. Si llegan, avisar a las autoridades.',
  undiluted:
    'Evitar que el producto sin diluir llegue a desagües, aguas superficiales, aguas subterráneas o suelo; las medidas tras un vertido figuran en la sección 6 y la eliminación en la sección 13.',
  noThermalHazard: 'De la forma física no se deriva ningún peligro térmico.',
  directions: 'Modo de empleo en la etiqueta: {text}',
  training:
    'Quienes trabajan con el producto son informados de sus peligros (sección 2) y formados en las medidas de las secciones 4 a 8 (Directiva 98/24/CE, artículo 8).',
  references:
    'Equipo de protección: sección 8. Eliminación de lo recogido: sección 13. Teléfono de emergencia: sección 1.',
  notApplicableTo: 'No procede: el producto es {form}.',
  noPhysicalClass: 'Ninguna clase de peligro físico se aplica a esta forma física.',
  outcomes: {
    'not-classified': 'A la vista de los datos disponibles, no se cumplen los criterios de clasificación',
    'insufficient-data': 'No hay datos suficientes para decidir',
    'not-applicable': 'No procede para esta mezcla',
  },
  met: 'Clasificado',
  effectColumns: ['Clase de peligro', 'Resultado', 'Motivo y párrafo'],
  estimatesNote: 'Calculado con la fórmula de adición; no se ha medido en la mezcla.',
  calculated:
    'La clasificación se obtuvo por cálculo a partir de los componentes, no de ensayos de la mezcla, salvo donde un motivo anterior diga otra cosa.',
  harmonised:
    'Donde el registro no da datos propios, las sustancias se clasifican con su entrada armonizada del anexo VI del Reglamento (CE) n.º 1272/2008.',
  toxicityColumns: ['Sustancia', 'Datos'],
  classOutcome: '{title}: {outcome}',
  wasteUnion:
    'Eliminar el producto, sus residuos y su envase como residuo conforme a la Directiva 2008/98/CE y a las normas nacionales. No verter en desagües.',
  waste:
    'Eliminar el producto, sus residuos y su envase conforme a las normas del país. No verter en desagües.',
  wasteCodes:
    'El código de la lista europea de residuos depende del uso: lo asigna quien produce el residuo.',
  carriage:
    'Las normas de transporte de ADR, RID, ADN, el Código IMDG y las Instrucciones Técnicas de la OACI no se tienen. En su lugar no se muestra una respuesta según las normas de los Estados Unidos.',
  carriageShared:
    'Número, designación, clase y grupo de embalaje se determinaron con la tabla de materias peligrosas de los Estados Unidos (su sección 172.101), a partir de una entrada que esa tabla no marca como nacional; esas entradas toman su número de la lista de mercancías peligrosas de la Reglamentación Modelo de las Naciones Unidas, que comparten el ADR, el RID, el ADN, el Código IMDG y las Instrucciones Técnicas de la OACI. Esos textos no se han leído: no se han buscado el código de clasificación, la categoría de transporte, el código de restricción en túneles, las disposiciones especiales, las cantidades limitadas y exceptuadas ni la marca de sustancias peligrosas para el medio ambiente. El expedidor comprueba el texto vigente.',
  actsToLookUp:
    'Por consultar: Reglamento (CE) n.º 648/2004 (detergentes), Reglamento (UE) n.º 528/2012 (biocidas), Reglamento (CE) n.º 1907/2006, anexos XIV y XVII y lista del artículo 59, apartado 1, Directiva 2012/18/UE (accidentes graves), Directiva 2004/42/CE (compuestos orgánicos volátiles), Reglamento (UE) 2019/1148 (precursores de explosivos), normas nacionales de cada mercado.',
  compiled: 'Fecha de emisión: {date}.',
  revised: 'Revisión: {date}.',
  noFormerRevision: 'El registro no nombra ninguna revisión anterior a esta.',
  methodColumns: ['Clasificación', 'Método', 'Párrafo'],
  methods: {
    test: 'A partir de datos de ensayos',
    bridging: 'Principio de extrapolación',
    reserve: 'Reserva ácida o alcalina',
  },
  noMethod: 'No se asignó ninguna clase.',
  noCodes: 'Arriba no se usa ningún código de indicación.',
  headingsUnion:
    'Secciones y epígrafes: Reglamento (CE) n.º 1907/2006, anexo II, sustituido por el Reglamento (UE) 2020/878.',
  headings: 'Secciones y apartados: GHS, cuadro 1.5.2 y anexo 4.',
  advice: {
    'respiratory-limits':
      'Si la ventilación no mantiene el aire por debajo de los límites de esta sección, un equipo respiratorio elegido según el contaminante y su concentración, conforme a las normas del lugar de trabajo.',
  },
  abbreviations,
};
