import { describe, expect, it } from 'vitest';
import {
  mergeSupplemental,
  supplementalStatements,
} from '../../src/classify/supplemental/supplemental-statements.ts';
import { fillStatement } from '../../src/labelling/statement-text.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { codes, contextOf, supplementalOf } from './_context.ts';

const sensitizer = (hazard: string, percent: number, limits: string[] = []) => ({
  name: `sensitizer ${hazard}`,
  percent,
  hazards: [hazard],
  ...(limits.length > 0 ? { limits } : {}),
  source: 'test',
});

describe('EUH208 (CLP Annex II 2.8, Annex I Table 3.4.6)', () => {
  // The same figures stand in Annex II 2.10: 0.1 % for Category 1 and 1B, 0.01 % for 1A.
  it.each([
    ['Skin Sens. 1', 0.1],
    ['Skin Sens. 1A', 0.01],
    ['Skin Sens. 1B', 0.1],
    ['Resp. Sens. 1', 0.1],
    ['Resp. Sens. 1A', 0.01],
    ['Resp. Sens. 1B', 0.1],
  ])('%s from %s percent', async (hazard, from) => {
    expect(codes(await supplementalOf([sensitizer(hazard, from)]))).toContain('EUH208');
    expect(codes(await supplementalOf([sensitizer(hazard, from * 0.99)]))).not.toContain('EUH208');
  });

  // Annex II 2.10: "one tenth of the specific concentration limit"
  it.each([
    ['Skin Sens. 1; C >= 0.036', 0.0036],
    ['Skin Sens. 1A; C >= 0.0015', 0.00015],
    ['Skin Sens. 1; C >= 5', 0.5],
  ])('one tenth of the specific limit %s', async (limit, from) => {
    expect(codes(await supplementalOf([sensitizer('Skin Sens. 1', from, [limit])]))).toContain('EUH208');
    expect(codes(await supplementalOf([sensitizer('Skin Sens. 1', from * 0.99, [limit])]))).not.toContain(
      'EUH208',
    );
  });

  // Annex VI Table 3: 2-methylisothiazol-3(2H)-one, Skin Sens. 1A from 0.0015 %.
  it('reads the limit of the harmonised entry', async () => {
    const mit = (percent: number) => [{ name: 'MIT', cas: '2682-20-4', percent }];
    expect(codes(await supplementalOf(mit(0.00015)))).toContain('EUH208');
    expect(codes(await supplementalOf(mit(0.00014)))).not.toContain('EUH208');
    expect(codes(await supplementalOf(mit(0.0015)))).not.toContain('EUH208');
  });

  it('is not given to a mixture that is classified for either kind', async () => {
    const other = [sensitizer('Skin Sens. 1', 1), sensitizer('Resp. Sens. 1', 0.5)];
    expect(codes(await supplementalOf(other))).not.toContain('EUH208');
  });

  it('names every sensitizer in the text that the law prescribes', async () => {
    const found = await supplementalOf([sensitizer('Skin Sens. 1', 0.2), sensitizer('Resp. Sens. 1B', 0.3)]);
    const { fields } = found.statements.find(({ code }) => code === 'EUH208')!;
    const text = (await loadLabelData('eu-clp')).statements.supplemental!.EUH208!;
    const filled = fillStatement(text, fields);
    expect(filled).toEqual({
      text: 'Contains sensitizer Resp. Sens. 1B and sensitizer Skin Sens. 1. May produce an allergic reaction.',
    });
  });
});

describe('several corners and other bases', () => {
  it('joins the names of every corner and drops questions on what is due', async () => {
    const one = await supplementalOf([sensitizer('Skin Sens. 1', 0.2)]);
    const other = await supplementalOf([sensitizer('Skin Sens. 1B', 0.2)]);
    const warning = {
      id: 'supplemental-open',
      code: 'EUH208',
      open: 'mayBeInhaled',
      because: { kind: 'classes', inhaled: false, cites: [] },
      cites: [],
    } as const;
    const question = { code: 'EUH208', warning, readings: [] };
    const merged = mergeSupplemental([one, other, { statements: [], questions: [question] }]);
    expect(merged.statements.find(({ code }) => code === 'EUH208')!.fields.sensitizer).toEqual([
      'sensitizer Skin Sens. 1',
      'sensitizer Skin Sens. 1B',
    ]);
    expect(merged.questions.map(({ code }) => code)).not.toContain(question.code);
  });

  it.each(['us-hcs', 'un-ghs'] as const)('has no such statements under %s', async basis => {
    const { context, results } = await contextOf([sensitizer('Skin Sens. 1', 0.2)], {}, {}, basis);
    expect(supplementalStatements(context, results)).toEqual({ statements: [], questions: [] });
  });
});
