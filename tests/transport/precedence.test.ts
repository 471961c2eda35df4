import { describe, expect, it } from 'vitest';
import { transportData } from '../../src/draft/draft-transport.ts';
import type { PackingGroup } from '../../src/reference/transport/table-entry.ts';
import type { Hazard } from '../../src/transport/finding.ts';
import { mostStringent, orderHazards, prevails } from '../../src/transport/precedence.ts';

// The table of 49 CFR 173.2a(b), copied from the codified section (last amendment 80 FR 1151); footnote marks are
// kept as (3) and 3(4).
const law = `
|                 |4.2|4.3|5.1 I|5.1 II|5.1 III|6.1, I dermal|6.1, I oral|6.1 II|6.1 III|8, I liquid|8, I solid|8, II liquid|8, II solid|8, III liquid|8, III solid|
|3 I              |   |4.3|     |      |       |3            |3          |3     |3      |3          |(3)       |3           |(3)        |3            |(3)         |
|3 II             |   |4.3|     |      |       |3            |3          |3     |3      |8          |(3)       |3           |(3)        |3            |(3)         |
|3 III            |   |4.3|     |      |       |6.1          |6.1        |6.1   |3(4)   |8          |(3)       |8           |(3)        |3            |(3)         |
|4.1 II           |4.2|4.3|5.1  |4.1   |4.1    |6.1          |6.1        |4.1   |4.1    |(3)        |8         |(3)         |4.1        |(3)          |4.1         |
|4.1 III          |4.2|4.3|5.1  |4.1   |4.1    |6.1          |6.1        |6.1   |4.1    |(3)        |8         |(3)         |8          |(3)          |4.1         |
|4.2 II           |   |4.3|5.1  |4.2   |4.2    |6.1          |6.1        |4.2   |4.2    |8          |8         |4.2         |4.2        |4.2          |4.2         |
|4.2 III          |   |4.3|5.1  |5.1   |4.2    |6.1          |6.1        |6.1   |4.2    |8          |8         |8           |8          |4.2          |4.2         |
|4.3 I            |   |   |5.1  |4.3   |4.3    |6.1          |4.3        |4.3   |4.3    |4.3        |4.3       |4.3         |4.3        |4.3          |4.3         |
|4.3 II           |   |   |5.1  |4.3   |4.3    |6.1          |4.3        |4.3   |4.3    |8          |8         |4.3         |4.3        |4.3          |4.3         |
|4.3 III          |   |   |5.1  |5.1   |4.3    |6.1          |6.1        |6.1   |4.3    |8          |8         |8           |8          |4.3          |4.3         |
|5.1 I            |   |   |     |      |       |5.1          |5.1        |5.1   |5.1    |5.1        |5.1       |5.1         |5.1        |5.1          |5.1         |
|5.1 II           |   |   |     |      |       |6.1          |5.1        |5.1   |5.1    |8          |8         |5.1         |5.1        |5.1          |5.1         |
|5.1 III          |   |   |     |      |       |6.1          |6.1        |6.1   |5.1    |8          |8         |8           |8          |5.1          |5.1         |
|6.1 I, Dermal    |   |   |     |      |       |             |           |      |       |8          |6.1       |6.1         |6.1        |6.1          |6.1         |
|6.1 I, Oral      |   |   |     |      |       |             |           |      |       |8          |6.1       |6.1         |6.1        |6.1          |6.1         |
|6.1 II, Inhalation|  |   |     |      |       |             |           |      |       |8          |6.1       |6.1         |6.1        |6.1          |6.1         |
|6.1 II, Dermal   |   |   |     |      |       |             |           |      |       |8          |6.1       |8           |6.1        |6.1          |6.1         |
|6.1 II, Oral     |   |   |     |      |       |             |           |      |       |8          |8         |8           |6.1        |6.1          |6.1         |
|6.1 III          |   |   |     |      |       |             |           |      |       |8          |8         |8           |8          |8            |8           |
`;

const cellsOf = (line: string): string[] =>
  line
    .split('|')
    .slice(1, -1)
    .map(cell => cell.trim());

/** `6.1 II, Inhalation`, `8, I liquid`, `4.2`. */
function hazardOf(label: string): { hazard: Hazard; form: 'liquid' | 'solid' | null } {
  const [, name, group, word] = /^([\d.]+),? ?(I{1,3})?,? ?(\w+)?$/.exec(label)!;
  const form = word === 'liquid' || word === 'solid' ? word : null;
  const route = form === null && word ? (word.toLowerCase() as NonNullable<Hazard['route']>) : undefined;
  return {
    // A heading without a packing group holds for each; II stands for it.
    hazard: {
      class: name!,
      group: (group ?? 'II') as PackingGroup,
      tested: true,
      ...(route ? { route } : {}),
    },
    form,
  };
}

const [head, ...rows] = law.trim().split('\n').map(cellsOf);
const cells = rows.flatMap(([row, ...values]) =>
  values.flatMap((value, at) => (value === '' ? [] : [{ row: row!, column: head![at + 1]!, value }])),
);
const data = transportData();

describe('precedence of hazards', () => {
  it('has every cell of the law', () => {
    const held = Object.values(data.precedence.rows).flatMap(row => Object.values(row));
    expect(cells).toHaveLength(196);
    expect(held).toHaveLength(cells.length);
  });

  it.each(cells)('$row with $column: $value', ({ row, column, value }) => {
    const a = hazardOf(row);
    const b = hazardOf(column);
    const form = b.form ?? 'liquid';
    const expected = value === '(3)' ? null : value.replace('(4)', '');
    expect(prevails(a.hazard, b.hazard, form, data)).toBe(expected);
    expect(prevails(b.hazard, a.hazard, form, data)).toBe(expected);
  });

  // Note 1 of 173.2a(b): Class 3 PG II with Division 6.1 PG I (oral) is Class 3 PG I.
  it('takes the most stringent packing group', () => {
    const flammable: Hazard = { class: '3', group: 'II', tested: true };
    const poison: Hazard = { class: '6.1', group: 'I', route: 'oral', tested: true };
    const ordered = orderHazards([poison, flammable], 'liquid', data)!;
    expect(ordered.map(hazard => hazard.class)).toEqual(['3', '6.1']);
    expect(mostStringent(ordered)).toBe('I');
  });

  // Note 2: corrosive, and packing group I as a mist: 6.1 where mouth or skin gives I or II, else 8.
  it.each([
    ['I', '6.1'],
    ['II', '6.1'],
    ['III', '8'],
    [null, '8'],
  ] as const)('a corrosive mist, otherwise of packing group %s, is %s', (otherRoutes, expected) => {
    const mist: Hazard = { class: '6.1', group: 'I', route: 'inhalation', otherRoutes, tested: true };
    const acid: Hazard = { class: '8', group: 'II', tested: true };
    expect(prevails(acid, mist, 'liquid', data)).toBe(expected);
  });

  // Letter of interpretation 22-0041: Class 8 (II), Class 3 (III) and Division 6.1 (III): corrosivity is primary.
  it('three hazards: 8 II, 3 III, 6.1 III', () => {
    const ordered = orderHazards(
      [
        { class: '3', group: 'III', tested: true },
        { class: '6.1', group: 'III', route: 'oral', tested: true },
        { class: '8', group: 'II', tested: true },
      ],
      'liquid',
      data,
    );
    expect(ordered?.map(hazard => hazard.class)).toEqual(['8', '3', '6.1']);
  });

  // 173.2a(a)(6): pyrophoric materials stand above the table.
  it('a pyrophoric material prevails', () => {
    const pyrophoric: Hazard = { class: '4.2', group: 'I', tested: true };
    expect(prevails({ class: '8', group: 'I', tested: true }, pyrophoric, 'liquid', data)).toBe('4.2');
  });
});
