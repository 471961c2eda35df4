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

/** Notices of a draft label on what is open, the longest first; none where nothing is. */
export function draftNotices({ undecided, stale }: OpenOnDocuments): readonly string[] {
  const points = undecided.length + stale.length;
  if (points === 0) return [];
  const open = points === 1 ? '1 peligro por decidir' : `${points} peligros por decidir`;
  return [
    ...(undecided.length > 0 && stale.length === 0
      ? [`BORRADOR para revisión cualificada. Sin decidir: ${undecided.join(', ')}`]
      : []),
    `BORRADOR para revisión cualificada. ${open}`,
    `BORRADOR: ${open}`,
  ];
}
