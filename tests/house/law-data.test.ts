import { describe, expect, it } from 'vitest';
import { dataFaults, tableFaults } from '../../src/generate/data-schemas.ts';
import { filesOf, textOf } from './_tree.ts';

// The shapes are our own; what the files say is compared with the law elsewhere.
const below = (path: string): string => path.slice('hazard-data/'.length);
const contentOf = (path: string) => JSON.parse(textOf(path));
const json = filesOf('hazard-data', /\.json$/);
// Those of sources/ are checked by what is made from them.
const tables = filesOf('hazard-data', /\.tsv$/).filter(path => !path.startsWith('hazard-data/sources/'));

describe('files of hazard-data', () => {
  it.each(json)('%s holds what its schema says', path => {
    expect(dataFaults(below(path), contentOf(path))).toEqual([]);
  });

  it.each(json.filter(path => !path.endsWith('unparsed.json')))(
    '%s is refused with a key that no rule reads',
    path => {
      const content = contentOf(path);
      content.misspelt = 'x';
      expect(dataFaults(below(path), content)).not.toEqual([]);
    },
  );

  it.each(tables)('%s has as many cells in each row as in its head', path => {
    expect(tableFaults(below(path), textOf(path))).toEqual([]);
    expect(tableFaults('t.tsv', 'a\tb\n1\t2\n1\n')).toEqual(['t.tsv row 2: 1 cells, not 2']);
  });

  it('are refused where no schema is theirs', () => {
    expect(dataFaults('us-hcs/other.json', {})).toEqual([
      'us-hcs/other.json has no schema in src/generate/data',
    ]);
  });
});
