import type { SheetWords } from '../sheet-words.ts';

/** Abbreviations of the sheets beyond 29 CFR 1910.1200, those in Spanish texts too. */
export const abbreviations: SheetWords['ghs']['abbreviations'] = [
  [
    'ADN',
    'Acuerdo Europeo relativo al Transporte Internacional de Mercancías Peligrosas por Vías Navegables Interiores',
  ],
  ['ADR', 'Acuerdo relativo al Transporte Internacional de Mercancías Peligrosas por Carretera'],
  ['APT', 'adaptación al progreso técnico'],
  ['ATE', 'estimación de la toxicidad aguda'],
  ['CAS', 'Chemical Abstracts Service'],
  ['CE', 'Comunidad Europea'],
  ['CLP', 'Reglamento (CE) n.º 1272/2008 sobre clasificación, etiquetado y envasado'],
  ['DNEL', 'nivel sin efecto derivado'],
  ['GHS', 'Sistema Globalmente Armonizado de Clasificación y Etiquetado de Productos Químicos (SGA)'],
  ['GTIN', 'número mundial de artículo comercial'],
  ['IMDG', 'mercancías peligrosas por vía marítima'],
  ['mPmB', 'muy persistente y muy bioacumulable'],
  ['mPmM', 'muy persistente y muy móvil'],
  ['OACI', 'Organización de Aviación Civil Internacional'],
  ['OMI', 'Organización Marítima Internacional'],
  ['ONU', 'Organización de las Naciones Unidas'],
  ['PBT', 'persistente, bioacumulable y tóxico'],
  ['PMT', 'persistente, móvil y tóxico'],
  ['PNEC', 'concentración prevista sin efecto'],
  ['RID', 'Reglamento relativo al Transporte Internacional de Mercancías Peligrosas por Ferrocarril'],
  ['SGA', 'Sistema Globalmente Armonizado de Clasificación y Etiquetado de Productos Químicos'],
  ['STOT', 'toxicidad específica en determinados órganos'],
  ['UFI', 'identificador único de la fórmula'],
  ['ppmV', 'partes por millón, en volumen'],
];
