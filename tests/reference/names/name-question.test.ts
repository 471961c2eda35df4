import { describe, expect, it } from 'vitest';
import { harmonisedTable } from '../../../src/draft/open-reference.ts';
import { nameQuestion } from '../../../src/reference/names/name-question.ts';
import { gatherNames } from '../../../src/reference/names/substance-names.ts';

const names = gatherNames(harmonisedTable());
const ask = (name: string, cas: string | null) => nameQuestion(names, name, cas);

// Numbers and names: CLP Annex VI Table 3 where it has them, else chemical nomenclature from memory.
describe('a name that is that of another number', () => {
  it.each([
    ['sodium hydroxide', '497-19-8', '1310-73-2'],
    ['soda ash', '1310-73-2', '497-19-8'],
    ['acetic acid', '79-21-0', '64-19-7'],
    ['phosphoric acid', '7664-93-9', '7664-38-2'],
    ['2-butoxyethanol', '112-34-5', '111-76-2'],
    ['Isopropyl Alcohol', '64-17-5', '67-63-0'],
    ['methanol', '64-17-5', '67-56-1'],
    ['sodium metasilicate pentahydrate', '6834-92-0', '10213-79-3'],
    ['chlorine', '10049-04-4', '7782-50-5'],
  ])('%s with %s is asked about', (name, cas, right) => {
    const question = ask(name, cas);
    expect(question?.kind).toBe('name-of-another');
    expect(question).toMatchObject({ cas });
    const { others, own } = question as unknown as { others: { cas: string }[]; own: string[] };
    expect(others.map(each => each.cas)).toContain(right);
    expect(own.length).toBeGreaterThan(0);
  });
});

describe('no false alarm', () => {
  it.each([
    ['caustic soda 50 %', '1310-73-2'],
    ['Sodium Hydroxide, flake', '1310-73-2'],
    ['sodium hydroxide solution', '1310-73-2'],
    ['lye', '1310-73-2'],
    ['muriatic acid', '7647-01-0'],
    ['Hydrochloric acid 31 %', '7647-01-0'],
    ['ammonia', '1336-21-6'],
    ['aqua ammonia', '1336-21-6'],
    ['limonene', '5989-27-5'],
    ['D-Limonene (technical grade)', '5989-27-5'],
    ['xylene', '95-47-6'],
    ['xylenes (mixed isomers)', '1330-20-7'],
    ['citric acid', '5949-29-1'],
    ['copper sulfate', '7758-99-8'],
    ['mineral spirits', '64742-88-7'],
    ['Stoddard solvent', '8052-41-3'],
    ['naphtha', '64742-48-9'],
    ['bleach', '7681-52-9'],
    ['Sodium hypochlorite 12.5 %', '7681-52-9'],
    ['IPA', '67-63-0'],
    ['Isopropanol', '67-63-0'],
    ['denatured alcohol', '64-17-5'],
    ['butyl cellosolve', '111-76-2'],
    ['glycol ether EB', '111-76-2'],
    ['sulphuric acid', '7664-93-9'],
    ['sulfuric acid', '7664-93-9'],
    ['sodium laureth sulfate', '68891-38-3'],
    ['Surfactant 91-6', '68439-46-3'],
    ['fragrance Lemon Breeze', '5989-27-5'],
    ['Dye Blue 9', '3844-45-9'],
    ['CMIT/MIT (3:1)', '55965-84-9'],
    ['hydrogen peroxide 35 %', '7722-84-1'],
    ['EDTA', '60-00-4'],
    ['tetrasodium EDTA', '64-02-8'],
    ['silica', '14808-60-7'],
    ['MEA', '141-43-5'],
    ['glycerin', '56-81-5'],
    ['propylene glycol USP', '57-55-6'],
    ['formalin', '50-00-0'],
    ['soda ash light', '497-19-8'],
    ['TSP', '7601-54-9'],
  ])('%s with %s', (name, cas) => {
    expect(ask(name, cas)).toBeNull();
  });

  it('every row of Table 3 and every common name is itself', () => {
    const wrong: string[] = [];
    for (const [key, found] of names.keys)
      for (const { cas, name } of found) if (ask(name, cas)) wrong.push(`${key}: ${cas}`);
    expect(wrong).toEqual([]);
    expect(names.keys.size).toBeGreaterThan(4500);
  });
});

describe('a name without a number', () => {
  const proposed = (name: string) => {
    const question = ask(name, null);
    return question?.kind === 'number-missing' ? question.proposals.map(({ cas }) => cas) : [];
  };

  it.each([
    ['isopropyl alcohol', '67-63-0'],
    ['Isopropyl alcohol 99 %', '67-63-0'],
    ['isopropil alcohol', '67-63-0'],
    ['sodium hydroxyde', '1310-73-2'],
    ['hydrochloric acid', '7647-01-0'],
    ['2-butoxyethanol', '111-76-2'],
    ['ammonia', '7664-41-7'],
    ['ammonia', '1336-21-6'],
  ])('%s is proposed as %s', (name, cas) => {
    expect(proposed(name)).toContain(cas);
  });

  // 1,2- and 1,3- are two substances, not a slip.
  it.each(['surfactant blend', 'fragrance', 'Lemon Breeze 4471', 'dye', '9-butoxyethanol'])(
    'nothing is proposed for %s',
    name => {
      expect(ask(name, null)).toBeNull();
    },
  );
});
