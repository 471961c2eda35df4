import { describe, expect, it } from 'vitest';
import { labelElements } from '../../src/labelling/elements.ts';
import { labelPurposes, type Sale, workplaceStatements } from '../../src/labelling/purposes.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { en } from '../../src/words/en/index.ts';
import { classified } from './_classified.ts';

const decided = (sale: Sale | null, hazardous = true) =>
  Object.fromEntries(labelPurposes(sale, hazardous).map(({ purpose, outcome }) => [purpose, outcome]));

// 29 CFR 1910.1200(b)(5)(v) and (b)(6)(ix), 16 CFR 1500.3(b)(14), read word for word; CLP Article 17 from memory.
describe('which labels a product needs', () => {
  it.each([
    [['workplace'], ['us'], 'due', 'not-due', 'not-due'],
    [['consumers'], ['us'], 'not-due', 'due', 'not-due'],
    [['workplace', 'consumers'], ['us'], 'due', 'due', 'not-due'],
    [['consumers', 'workplace'], ['us', 'eu'], 'due', 'due', 'due'],
    [['workplace'], ['eu'], 'not-due', 'not-due', 'due'],
    [['consumers'], ['eu'], 'not-due', 'not-due', 'due'],
  ] as const)('%j in %j', (users, markets, workplace, consumer, supply) => {
    expect(decided({ users, markets })).toEqual({
      'us-workplace': workplace,
      'us-consumer': consumer,
      'eu-supply': supply,
    });
  });

  it('nothing is decided where the record does not say who buys it', () => {
    expect(new Set(Object.values(decided(null)))).toEqual(new Set(['open']));
    for (const each of labelPurposes(null, true)) expect(en.purpose(each)).toContain('sold-to');
    expect(en.purposes(labelPurposes(null, true))).toHaveLength(1);
  });

  // 16 CFR 1500.3(b)(4): toxic, irritant and the like are tests of that law.
  it('a product without hazards needs no label for workplaces; consumers rest on tests', () => {
    expect(decided({ users: ['workplace', 'consumers'], markets: ['us', 'eu'] }, false)).toEqual({
      'us-workplace': 'not-due',
      'us-consumer': 'open',
      'eu-supply': 'not-due',
    });
  });

  it('every decision is told with its paragraph', () => {
    const sale = { users: ['workplace', 'consumers'], markets: ['us'] } as const;
    for (const each of labelPurposes(sale, true)) {
      expect(en.purpose(each)).not.toContain(each.ground);
      expect(en.purpose(each)).toContain(each.cites[0]);
    }
  });
});

// C.2.4.9: a statement shown to be inappropriate to the product may be omitted.
describe('words for a plant on a quart', () => {
  it('are proposed to fall away for consumers, each with its ground', async () => {
    const { precautionaryStatements } = labelElements(
      classified('us-hcs', ['Flam. Liq. 2', 'Skin Sens. 1', 'Eye Irrit. 2A']),
      await loadLabelData('us-hcs'),
      { form: 'liquid' },
    );
    const found = workplaceStatements(precautionaryStatements);
    expect(found.map(({ code }) => code)).toEqual(['P240', 'P241', 'P242', 'P243', 'P272']);
    const told = en.workplaceWords(found);
    expect(told).toHaveLength(2);
    expect(told[0]).toContain('P240, P241, P242, P243');
    expect(told.join()).toContain('statements.omit');
  });
});
