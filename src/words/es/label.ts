import type { OpenOnDocuments } from '../../labelling/open-on-documents.ts';
import type { Dilution } from '../../record/record-blocks.ts';
import type { LabelWords } from '../label-words.ts';

/** Fixed words of a label. */
export const label: LabelWords = {
  draft: 'BORRADOR para revisión cualificada',
  subject: { draft: 'Borrador de etiqueta para revisión cualificada', final: 'Etiqueta' },
  title: (name, pack) => `${name}, etiqueta de ${pack}`,
  groups: {
    prevention: 'Prevención',
    response: 'Respuesta',
    storage: 'Almacenamiento',
    disposal: 'Eliminación',
  },
  directions: 'Modo de empleo',
  contains: 'Contiene:',
  telephone: 'Teléfono:',
  emergency: 'Emergencias:',
  productCode: 'Código de producto',
  lot: 'Lote y fecha',
  barCode: 'Código de barras del GTIN',
  translation: 'Español',
};

const MILLILITERS_IN_A_LITER = 1000;

const rounded = (value: number): string =>
  String(Number(value.toPrecision(value < 100 ? 2 : 3))).replace('.', ',');

/** A line of directions on how to dilute, by volume, in millilitres to a litre of the diluent. */
export function dilution({ with: diluent, product, diluent: parts, written, use }: Dilution): string {
  const share = product.value / parts.value;
  const said = use ? `${use.charAt(0).toUpperCase()}${use.slice(1)}` : 'Diluir';
  return `${said} ${written}: ${rounded(share * MILLILITERS_IN_A_LITER)} mL por 1 L de ${diluent}`;
}

/** Properties whose measurement may be of another formula, by their key in the record. */
const MEASURED: Readonly<Record<string, string>> = {
  pH: 'pH',
  density: 'densidad',
  'flash-point': 'punto de inflamación',
  'initial-boiling-point': 'punto inicial de ebullición',
  'kinematic-viscosity-40C': 'viscosidad cinemática a 40 °C',
};

/** Notices of a draft label on what is open, the longest first; none where nothing is. */
export function draftNotices({ undecided, stale, phMissing }: OpenOnDocuments): readonly string[] {
  const points = undecided.length + stale.length + (phMissing ? 1 : 0);
  if (points === 0) return [];
  const open = points === 1 ? '1 punto de peligro abierto' : `${points} puntos de peligro abiertos`;
  const parts = [
    undecided.length > 0 ? `Sin decidir: ${undecided.join(', ')}` : '',
    stale.length > 0 ? `Medido en otra fórmula: ${stale.map(key => MEASURED[key] ?? key).join(', ')}` : '',
    phMissing ? 'pH sin medir' : '',
  ].filter(Boolean);
  return [
    `BORRADOR para revisión cualificada. ${parts.join('. ')}`,
    `BORRADOR para revisión cualificada. ${open}`,
    `BORRADOR: ${open}`,
  ];
}
