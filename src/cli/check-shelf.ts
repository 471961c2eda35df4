import figures from '../../hazard-data/shelf.json' with { type: 'json' };
import type { RawMaterial } from '../record/product-record.ts';
import { type Shelf, sheetsToRenew, usersOf } from '../record/shelf.ts';

/** What `check FOLDER` says of the raw materials of a folder. */
export function shelfText(shelf: Shelf, today: string): string {
  if (shelf.materials.length === 0) return '';
  const { old, undated } = sheetsToRenew(shelf, today, figures.sheetAgeYears);
  const rows = shelf.materials.map(material => {
    const { file, name, supplier, sheet, strength } = material;
    const dated = sheet?.date ?? 'no date';
    const revision = sheet?.revision ? `, revision ${sheet.revision}` : '';
    const marks = old.includes(material) ? `  older than ${figures.sheetAgeYears} years` : '';
    const users = usersOf(file, shelf).map(({ code }) => code);
    return `  ${file}: ${name}${strength ? `, ${strength}` : ''}; ${supplier ?? 'supplier not named'}; sheet ${dated}${revision}${marks}; ${users.length === 0 ? 'in no product' : `in ${users.join(', ')}`}`;
  });
  const sums = [
    ...(old.length > 0
      ? [`  ${counted(old, 'sheet')} older than ${figures.sheetAgeYears} years: ask for new ones`]
      : []),
    ...(undated.length > 0
      ? [`  ${counted(undated, 'sheet')} without a date: add \`sheet: {revision: …, date: …}\``]
      : []),
  ];
  return [`${counted(shelf.materials, 'raw material')}`, ...rows, ...sums, ''].join('\n');
}

const counted = (materials: readonly RawMaterial[], what: string): string =>
  `${materials.length} ${what}${materials.length === 1 ? '' : 's'}`;

/** The same as plain values. */
export function shelfJson(shelf: Shelf, today: string) {
  const { old } = sheetsToRenew(shelf, today, figures.sheetAgeYears);
  return shelf.materials.map(material => ({
    file: material.file,
    name: material.name,
    supplier: material.supplier,
    strength: material.strength,
    sheet: material.sheet,
    old: old.includes(material),
    products: usersOf(material.file, shelf).map(({ code, file }) => ({ code, file })),
  }));
}
