import { marked } from '../../quantity/print.ts';
import type { ExposureLimit } from '../../reference/exposure/open-exposure.ts';
import type { Found } from '../../reference/lists/look-up.ts';
import { averaged } from '../en/exposure.ts';
import type { SheetWords } from '../sheet-words.ts';
import { foundText } from './list-search.ts';

const NONE =
  'No se encontró ninguno en los cuadros Z-1, Z-2 y Z-3 ni en las normas de 29 CFR 1910 subparte Z';
const MEMORY = 'no comparado con el texto de la sección; por confirmar';
const NOTHING = '–';

const cubic = (text: string): string => marked(text.replaceAll('mg/m3', 'mg/m³'), ',');

const hasFigures = ({ twa, ceiling, shortTerm, peak }: ExposureLimit): boolean =>
  [twa.ppm, twa.milligramsPerCubicMetre, ceiling, shortTerm, peak].some(part => part !== null);

function average({ twa, ceiling, peak, skin, see, notes }: ExposureLimit): string {
  const figures = [
    twa.ppm && cubic(`${twa.ppm} ppm`),
    twa.milligramsPerCubicMetre && cubic(`${twa.milligramsPerCubicMetre} mg/m3`),
  ].filter(Boolean);
  const other = ceiling === null && peak === null ? (notes ?? see ?? NOTHING) : NOTHING;
  const text = figures.length > 0 ? figures.join('; ') : cubic(other);
  return skin ? `${text} (piel)` : text;
}

function shortTerm(limit: ExposureLimit): string {
  const parts = [
    limit.ceiling && `techo ${cubic(limit.ceiling)}`,
    limit.shortTerm && cubic(limit.shortTerm),
    limit.peak && `pico ${cubic(limit.peak)}`,
  ].filter(Boolean);
  return parts.length > 0 ? parts.join('; ') : NOTHING;
}

function place(found: Found<ExposureLimit>): string {
  const { row } = found;
  const averages = row.twa.ppm !== null || row.twa.milligramsPerCubicMetre !== null;
  const notes = row.notes !== null && (averages || row.ceiling !== null) ? cubic(row.notes) : '';
  return [row.table, notes, foundText(found), row.compared ? '' : MEMORY]
    .filter(part => part !== '')
    .join('; ');
}

/** Words and rows of the table of limits in section 8. */
export const limits: SheetWords['limits'] = {
  columns: ['Componente', 'TWA de 8 horas', 'Techo, STEL o pico', 'Cuadro o sección'],
  noIngredients:
    'La sección 3 no nombra ningún componente: los cuadros de 29 CFR 1910.1000 y las normas de la subparte Z no nombran ninguno del producto.',
  note: 'Z-1, Z-2, Z-3: cuadros de 29 CFR 1910.1000 (texto de 2017). Cada componente se buscó por número CAS, por nombre y por grupo: decide el nombre (cuadro Z-1, nota (c)). Un techo no se supera en ningún momento de la jornada. Donde mg/m³ figura junto a ppm, es aproximado (nota (b)). Los límites de los planes estatales no se han consultado.',
  mixture:
    'Varios de estos límites son medias ponderadas en el tiempo: para una mezcla de contaminantes del aire, la suma de C/L, cada concentración dividida por su límite, no puede superar 1 (29 CFR 1910.1000(d)(2)).',
  rows: (name, { found, sought }, withheld = false) => {
    if (found.length === 0) {
      const number = withheld ? 'número CAS' : sought.cas ? `CAS ${sought.cas}` : 'sin número CAS';
      return [[name, NONE, NOTHING, `buscado por: ${[number, 'nombre', 'grupos'].join(', ')}`]];
    }
    const figures = found.filter(({ row }) => hasFigures(row));
    return (figures.length > 0 ? figures : found).map(each => {
      const printed = each.row.name;
      const title = printed.toLowerCase() === name.toLowerCase() ? name : `${name} [${printed}]`;
      return [title, average(each.row), shortTerm(each.row), place(each)] as const;
    });
  },
  averaged,
};
