import type { Condition } from '../../reference/groups/groups.ts';
import type { Found } from '../../reference/lists/look-up.ts';
import type { StateListing } from '../../reference/regulatory/open-regulatory.ts';
import type { NotHeld } from '../../reference/regulatory/programs.ts';
import type {
  RegulatoryFacts,
  Reportable,
  Share,
  Toxic,
} from '../../reference/regulatory/regulatory-facts.ts';
import type { ListEdition, ListEditions, TitledList } from '../en/regulatory.ts';
import { conditionText, foundText } from './list-search.ts';

const number = (value: number): string => value.toLocaleString('es-ES', { maximumFractionDigits: 0 });
const percent = (value: number): string => String(Number(value.toPrecision(3))).replace('.', ',');
const brackets = (...parts: readonly (string | null)[]): string => {
  const told = parts.filter(part => part);
  return told.length > 0 ? ` (${told.join('; ')})` : '';
};
const identity = ({ name, cas }: Share): string => (cas === null ? name : `${name}, CAS ${cas}`);
const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
const listedAs = (share: Share, name: string): string | null =>
  same(share.name, name) ? null : `figura como: ${name}`;

const NOT_HELD: Readonly<Record<NotHeld, string>> = {
  'epcra-302':
    'EPCRA sección 302, sustancias extremadamente peligrosas (40 CFR 355, apéndices A y B): no se tiene copia de la lista.',
  'caa-112r':
    'Ley del aire limpio, sección 112(r), prevención de escapes accidentales (40 CFR 68.130): no se tiene copia de la lista.',
  'tsca-inventory':
    'Inventario TSCA (40 CFR parte 710): el fabricante confirma que cada componente figura en él o está exento; no se tiene copia del inventario.',
  'other-states': 'Listas de otros estados.',
  'rules-of-use':
    'Normas de uso del producto, por ejemplo las de plaguicidas de la EPA o las de consumo de la CPSC.',
};

const TOXICITY: Readonly<Record<StateListing['toxicity'][number], string>> = {
  cancer: 'cáncer',
  developmental: 'toxicidad para el desarrollo',
  female: 'toxicidad para la reproducción femenina',
  male: 'toxicidad para la reproducción masculina',
};

function reportableText({ share, found, productPounds }: Reportable): string {
  const { row } = found;
  const reach =
    productPounds === null
      ? ''
      : `; unas ${number(productPounds)} lb de este producto la contienen con el ${percent(share.percent)} %`;
  const more = brackets(
    listedAs(share, row.name),
    foundText(found),
    row.notes,
    row.compared ? null : 'de memoria, por confirmar',
  );
  return `${identity(share)}: cantidad de notificación ${number(row.pounds)} lb${reach}${more}`;
}

const BASES = {
  programme: 'según datos del organismo, el texto no se leyó; por confirmar',
  memory: 'su definición es de memoria; por confirmar',
} as const;

/** Conditions that the notes of the source tell in words of their own. */
const TOLD: readonly Condition[] = ['acid-aerosol', 'aqueous-ammonia', 'manufacture-only'];

function toxicText({ row, members, condition, carcinogen, deMinimis }: Toxic): string {
  const names = members.map(({ share }) => `${identity(share)}, ${percent(share.percent)} %`).join('; ');
  const what = row.category ? `${row.name}, categoría ${row.category}: ${names}` : names;
  const share = condition === 'aqueous-ammonia' ? `cuenta el ${percent(deMinimis.counted)} %: ` : '';
  const standing =
    deMinimis.limit === null
      ? 'sustancia de especial preocupación: sin concentración de minimis (40 CFR 372.28)'
      : `${share}${deMinimis.below ? 'por debajo de' : 'en o por encima de'} la concentración de minimis del ${percent(deMinimis.limit)} %${
          carcinogen ? ' para un carcinógeno' : ''
        }`;
  const possible = members.some(({ found }) => found.membership === 'possible');
  const more = brackets(
    !row.category && members.length === 1 ? listedAs(members[0]!.share, row.name) : null,
    condition && !(row.notes && !row.category && TOLD.includes(condition)) ? conditionText(condition) : null,
    row.category ? null : row.notes,
    possible ? 'la pertenencia no es segura' : null,
    row.basis === 'text' ? null : BASES[row.basis],
  );
  return `${what}: ${standing}${more}`;
}

function stateText(share: Share, found: Found<StateListing>): string {
  const { row } = found;
  const since = row.listedOn === null ? '' : `, desde ${row.listedOn}`;
  const effects = row.toxicity.map(effect => TOXICITY[effect]).join(', ');
  return `${identity(share)}: ${effects}${since}${brackets(listedAs(share, row.name), foundText(found), row.notes)}`;
}

/** What was searched, for how many, and that nothing was found. */
const searched = (count: number, { title, version }: ListEdition, none: boolean): string =>
  `${none ? 'No se encontró ninguno. ' : ''}Búsqueda por número CAS, nombre y grupo: ${count} ${
    count === 1 ? 'componente' : 'componentes'
  } en ${title}, ${version}.`;

/** Section 15 of the sheet: what each programme says of the product, and what was sought where nothing was found. */
export function regulatoryLists(facts: RegulatoryFacts, editions: ListEditions): readonly TitledList[] {
  const count = facts.sought.length;
  const of = (title: string, lines: readonly string[], edition: ListEdition): TitledList => ({
    title,
    list: [...lines, searched(count, edition, lines.length === 0)],
  });
  const { health, physical } = facts.hazardTypes;
  const notice = facts.supplierNotice
    ? [
        'Este producto contiene una o varias sustancias químicas tóxicas sujetas a los requisitos de notificación de la sección 313 del título III de la ley SARA de 1986 y de 40 CFR parte 372. Si va a instalaciones que notifican, este aviso acompaña a la ficha en inglés (40 CFR 372.45); el fabricante confirma que procede.',
      ]
    : [];
  return [
    of(
      'CERCLA sección 103 y EPCRA sección 304, notificación de escapes',
      facts.reportable.map(reportableText),
      editions.cercla,
    ),
    {
      title: 'EPCRA secciones 311 y 312, tipos de peligro (40 CFR 370.66)',
      list: [
        health.length > 0 ? `Salud: ${health.join('; ')}` : 'Salud: ninguno según la clasificación',
        physical.length > 0 ? `Físicos: ${physical.join('; ')}` : 'Físicos: ninguno según la clasificación',
        ...(health.length + physical.length > 0
          ? [
              `Hay que notificar a partir de ${number(facts.inventoryPounds)} lb en una instalación, menos para las sustancias extremadamente peligrosas (40 CFR 370.10).`,
            ]
          : []),
      ],
    },
    of(
      'EPCRA sección 313, sustancias químicas tóxicas',
      [...notice, ...facts.toxic.map(toxicText)],
      editions.toxicChemicals,
    ),
    of(
      'California, Proposición 65',
      facts.state.map(({ share, found }) => stateText(share, found)),
      editions.prop65,
    ),
    { title: 'Todavía sin consultar', list: facts.notHeld.map(id => NOT_HELD[id]) },
  ];
}
