import type { CarcinogenListing } from '../../reference/exposure/carcinogen-listings.ts';
import type { SetAside } from '../../reference/lists/look-up.ts';
import type { SheetWords } from '../sheet-words.ts';
import { foundText } from './list-search.ts';

const NTP = {
  known: 'Carcinógeno humano conocido',
  'reasonably anticipated': 'Se prevé razonablemente que es carcinógeno humano',
} as const;

const NOT_LISTED = 'No figura';

const REASONS: Readonly<Record<SetAside<CarcinogenListing>['reason'], string>> = {
  'alcoholic-beverage': 'es para bebidas, no para un producto químico',
  'compounds-only': 'es para compuestos, no para el metal',
};

// Volume and section would tell an identity that is withheld: they are empty then.
const iarc = ({ group, volume, year }: NonNullable<CarcinogenListing['iarc']>): string =>
  volume === '' ? `Grupo ${group}` : `Grupo ${group} (volumen ${volume}; ${year})`;

/** Words and rows of the table of carcinogen listings in section 11. */
export const carcinogens: SheetWords['carcinogens'] = {
  columns: ['Componente', 'NTP', 'IARC', 'OSHA'],
  none: count =>
    `No figura en NTP, IARC (grupos 1, 2A, 2B) ni OSHA: ${count} ${
      count === 1 ? 'componente buscado' : 'componentes buscados'
    } por número CAS, por nombre y por grupo.`,
  editions: lists => `Listas: ${lists.join('; ')}. Búsqueda por número CAS, por nombre y por grupo.`,
  rows: (name, { found }) =>
    found.map(each => {
      const { row } = each;
      const same = name.toLowerCase() === row.name.toLowerCase();
      const how = [same ? '' : `figura como: ${row.name}`, foundText(each)].filter(Boolean);
      return [
        how.length > 0 ? `${name} (${how.join('; ')})` : name,
        row.ntp ? NTP[row.ntp] : NOT_LISTED,
        row.iarc ? iarc(row.iarc) : NOT_LISTED,
        row.osha === null ? NOT_LISTED : row.osha === '' ? 'Regulado' : `Regulado: 29 CFR ${row.osha}`,
      ];
    }),
  setAside: (name, { setAside }) =>
    setAside.map(({ row, reason }) => `La entrada «${row.name}» no concierne a ${name}: ${REASONS[reason]}.`),
};
