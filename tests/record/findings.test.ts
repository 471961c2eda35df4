import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { filesAllowing } from '../../src/cli/files.ts';
import { loadRecord, parseRecordValue } from '../../src/record/load.ts';
import { renderText } from '../../src/report/render.ts';
import { changed, env, files, load, product, told } from './_example.ts';

type Case = readonly [name: string, from: string, to: string, finding: RegExp];

describe('every slip is told with its place and its fix', () => {
  // Line and column are those of the slip in the example, counted by hand in the file.
  it.each<Case>([
    [
      'unknown key',
      'advised-against',
      'advice-against',
      /^5:1 unknown-key: .*`advice-against` -> did you mean `advised-against`/,
    ],
    [
      'unknown key far from all',
      'copy:',
      'warranty: none\ncopy:',
      /^49:1 unknown-key: .* -> known here: name, code, ufi, use/,
    ],
    ['key in the wrong case', '  pH: 12.6', '  ph: 12.6', /^10:3 unknown-key: .* -> did you mean `pH`/],
    ['key of a line', '    unknown: [', '    unknwn: [', /^32:5 unknown-key: .* -> did you mean `unknown`/],
    [
      'unknown word',
      'form: liquid',
      'form: liqid',
      /^6:7 bad-value: `form` cannot be `liqid` -> did you mean `liquid`/,
    ],
    [
      'decimal comma',
      'percent: 1.5',
      'percent: 1,5',
      /^21:14 bad-value: .*`1,5` has a decimal comma -> write `1.5`/,
    ],
    ['decimal comma with unit', '1.09 g/mL', '"1,09 g/mL"', /^11:12 bad-value: .* -> write `1.09 g\/mL`/],
    [
      'range without upper end',
      'percent: 1.5',
      'percent: "> 5"',
      /^21:14 bad-value: .*no upper end -> ask for/,
    ],
    [
      'range text upside down',
      'percent: 1.5',
      'percent: 2-1',
      /^21:14 bad-value: .*higher end -> write the low/,
    ],
    [
      'range upside down',
      'percent: 1.5',
      'percent: [2, 1]',
      /^21:14 bad-value: .*higher end -> write the lower/,
    ],
    ['range of three', 'percent: 1.5', 'percent: [1, 2, 3]', /^21:14 bad-value: .*two numbers/],
    ['percent above 100', 'percent: 1.5', 'percent: 150', /^21:14 bad-value: .*not between 0 and 100/],
    ['percent below 0', 'percent: 1.5', 'percent: -1', /^21:14 bad-value: .*not between 0 and 100/],
    ['percent as amount', 'amount: 40 kg', 'amount: 40 %', /^18:13 bad-value: .* -> write `percent: 40`/],
    [
      'amount without unit',
      'amount: 40 kg',
      'amount: 40',
      /^18:13 bad-value: .*no unit -> write for example `40 kg`/,
    ],
    [
      'unknown unit',
      'amount: 40 kg',
      'amount: 40 stone',
      /^18:13 bad-value: .*`stone`.* -> use one of kg, g/,
    ],
    [
      'word as amount',
      'amount: balance',
      'amount: the rest',
      /^38:13 bad-value: .*not an amount -> .*`balance`/,
    ],
    ['CAS digit', '1310-73-2', '1310-73-1', /^20:10 check-digit: .*1310-73-1.* -> .*end in 2: 1310-73-2/],
    ['CAS form', '1310-73-2', '1310732', /^20:10 bad-value: .*not a CAS number/],
    ['GTIN digit', '0614141000418', '0614141000417', /^44:11 check-digit: .* -> .*end in 8: "0614141000418"/],
    ['case GTIN digit', '10614141000415', '10614141000414', /^48:29 check-digit: .* -> .*end in 5/],
    ['hazard', 'Skin Irrit. 2,', 'Skin Irit. 2,', /^25:29 bad-value: .*Skin Irit. 2.*Skin Irrit. 2/],
    ['limit', 'C >= 1"', 'C => 1"', /^26:14 bad-value: /],
    ['ATE without unit', '4400 mg/kg', '4400', /^27:17 bad-value: .*no unit/],
    ['M-factor', '{acute: 1,', '{acute: 3,', /^28:24 bad-value: .*M-factor/],
    ['endpoint', '[acute-oral,', '[acute-orl,', /^32:15 bad-value: .* -> did you mean `acute-oral`/],
    ['yes for true', 'additive: false', 'additive: no', /^36:15 wrong-type: .*true or false, not `no`/],
    ['temperature without unit', '100 C', '100', /^13:26 bad-value: .*no unit/],
    ['below absolute zero', '100 C', '-300 C', /^13:26 bad-value: .*absolute zero/],
    ['density in the wrong unit', '1.09 g/mL', '1090 g/mL', /^11:12 bad-value: .* -> check the unit/],
    [
      'flash point above nothing',
      'flash-point: none',
      'flash-point: "> warm"',
      /^12:16 bad-value: .* -> write a number and a unit/,
    ],
    ['pH', 'pH: 12.6', 'pH: 126', /^10:7 bad-value: .*not a pH/],
    [
      'length without unit',
      'diameter: 88 mm',
      'diameter: 88',
      /^45:44 bad-value: .*no unit -> write for example `88 mm`/,
    ],
    ['count', 'count: 20', 'count: 2.5', /^48:19 bad-value: .*not a count/],
    ['empty value', 'percent: 3', 'percent:', /^31:13 empty-value: `formula\[3\].percent` is empty/],
    [
      'list for text',
      'use: Cleaner for outdoor stone and concrete',
      'use: [a]',
      /^4:6 wrong-type: `use` must be a text, not a list/,
    ],
    [
      'text for list',
      'choices: []',
      'choices: none',
      /^40:10 wrong-type: `choices` must be a list, not `none`/,
    ],
    [
      'missing key',
      'form: liquid',
      '# form',
      /^1:1 missing-key: `form` is missing -> add for example `form: liquid`/,
    ],
    [
      'missing name of a line',
      'name: builder blend',
      'source: stock book',
      /^30:5 bad-value: the line has no `name`/,
    ],
    ['no amount', '    percent: 1.5\n', '', /^19:5 bad-value: the line does not say how much/],
    [
      'two amounts',
      'amount: 40 kg',
      'amount: 40 kg\n    percent: 3',
      /^18:13 bad-value: `amount` stands beside `percent`/,
    ],
    [
      'use and cas',
      'amount: 40 kg',
      'amount: 40 kg\n    cas: 7681-52-9',
      /^19:10 bad-value: `cas` stands beside `use`/,
    ],
    [
      'no hazards without source',
      'percent: 3',
      'percent: 3\n    hazards: []',
      /^32:14 bad-value: .* -> add `source/,
    ],
    [
      'acute toxicity of no route',
      'percent: 3',
      'percent: 3\n    hazards: [Acute Tox. 3]',
      /^32:15 bad-value: .*by which route -> write `Acute Tox\. 3 \(oral\)`/,
    ],
    ['repeated key', 'code: KP-946', 'code: KP-946\nname: Other', /^4:1 repeated-key: .*first is in line 2/],
    ['code as path', 'code: KP-946', 'code: ../../etc', /^3:7 bad-value: .*file name/],
    ['control character', 'odor: chlorine', 'odor: "a\\u0007b"', /^7:40 bad-value: .*cannot be printed/],
    ['date', 'copy:', 'revised: 25.11.2026\ncopy:', /^49:10 bad-value: .*not a date -> .*2026-11-25/],
    ['no such day', 'copy:', 'revised: 2026-02-30\ncopy:', /^49:10 bad-value: .*not a date/],
    ['later format', 'product/1', 'product/2', /^1:14 unknown-version: version 2/],
    ['misspelled kind', 'product/1', 'prodct/1', /^1:14 wrong-kind: .* -> did you mean `product\/1`/],
    [
      'other kind',
      'product/1',
      'maker/1',
      /^1:14 wrong-kind: this is a maker record, where a product record/,
    ],
    ['no kind', 'labelwright: product/1', '', /missing-kind/],
    ['absolute path', 'maker: maker.yaml', 'maker: /etc/maker.yaml', /^8:8 not-relative: /],
    [
      'missing maker file',
      'maker: maker.yaml',
      'maker: makr.yaml',
      /^8:8 missing-file: there is no file `makr.yaml`/,
    ],
    [
      'missing drum file',
      'hypochlorite-12',
      'hypochlorite',
      /^17:10 missing-file: there is no file `drums\/hypochlorite.yaml`/,
    ],
    [
      'product as drum',
      'use: drums/hypochlorite-12.yaml',
      'use: maker.yaml',
      /^1:14 wrong-kind: this is a maker record, where a raw-material/,
    ],
  ])('%s', (_name, from, to, finding) => {
    const outcome = load(changed([from, to]));
    expect(outcome.ok).toBe(false);
    expect(told(outcome)[0]).toMatch(finding);
    expect(outcome.diagnostics).toHaveLength(1);
  });

  it.each<Case>([
    ['tab', '  - name: sodium', '\t- name: sodium', /^19:1 not-yaml: .*tab/],
    [
      'no-break space after a colon',
      'use: Cleaner',
      'use:\u00a0Cleaner',
      /^4:\d+ not-yaml: the line holds a no-break space/,
    ],
    ['no-break space as indent', '  - name: sodium', '\u00a0 - name: sodium', /no-break space/],
    ['missing bracket', 'Rinse well.]', 'Rinse well.', /^51:\d+ not-yaml: a bracket/],
    ['missing quote', 'tagline: Lifts', 'tagline: "Lifts', /not-yaml: a quote is opened/],
    ['missing colon', 'use: Cleaner', 'use Cleaner', /^4:1 not-yaml: this is not `key: value`/],
    ['second colon', 'tagline: Lifts', 'tagline: Note: lifts', /^50:12 not-yaml: a second colon/],
    [
      'indentation',
      '    cas: 1310-73-2',
      '   cas: 1310-73-2',
      /^20:1 not-yaml: the lines here do not line up/,
    ],
    ['greater sign', 'flash-point: none', 'flash-point: > 93 C', /^12:\d+ not-yaml: .*> or \|/],
    [
      'alias',
      'tagline: Lifts grime and traffic film from stone',
      'tagline: *x',
      /^50:12 (not-yaml|yaml-alias): /,
    ],
    [
      'two documents',
      'copy:',
      '---\nlabelwright: product/1\ncopy:',
      /^49:1 not-yaml: a second record begins/,
    ],
    ['tag', 'odor: chlorine', 'odor: !chlorine x', /^7:40 not-yaml: .*begins with !/],
  ])('text that is not YAML: %s', (_name, from, to, finding) => {
    const outcome = load(changed([from, to]));
    expect(told(outcome)).toHaveLength(1);
    expect(told(outcome)[0]).toMatch(finding);
  });

  it('refuses aliases, and so the repetition of repetitions', () => {
    const bomb = [
      'a: &a [x, x, x]',
      ...'bcdefghi'.split('').map((key, i) => `${key}: &${key} [*${'abcdefgh'[i]}, *${'abcdefgh'[i]}]`),
    ];
    const outcome = load(`labelwright: product/1\n${bomb.join('\n')}\n`);
    expect(outcome.ok).toBe(false);
    expect(told(outcome)[0]).toMatch(/^3:8 yaml-alias: `\*a` .* -> write the value out/);
  });

  it('tells all problems of all files at once, in order of place', () => {
    const outcome = load(
      changed(
        ['form: liquid', 'form: liqid'],
        ['percent: 1.5', 'percent: 1,5'],
        ['    percent: 4\n', ''],
        ['9 kg}', '9 kilo}'],
      ),
      {
        'maker.yaml': files['maker.yaml']!.replace('hours:', 'hour:'),
        'drums/hypochlorite-12.yaml': 'labelwright: raw-material/1\n',
      },
    );
    expect(outcome.diagnostics.map(({ at, code }) => `${at!.file}:${at!.line} ${code}`)).toEqual([
      'cleaner.yaml:6 bad-value',
      'cleaner.yaml:21 bad-value',
      'cleaner.yaml:33 bad-value',
      'drums/hypochlorite-12.yaml:1 missing-key',
      'drums/hypochlorite-12.yaml:1 bad-value',
      'maker.yaml:5 missing-key',
      'maker.yaml:5 unknown-key',
    ]);
  });

  it('names both packs of one id', () => {
    const pack = product.slice(product.indexOf('  - id:'), product.indexOf('copy:'));
    expect(told(load(changed(['copy:', `${pack}copy:`])))).toEqual([
      '49:9 bad-value: `id`: two packs are called `bottle-946` -> give each pack an id of its own',
      '51:11 bad-value: GTIN `0614141000418` is also that of the pack `bottle-946` -> each pack and each case has a number of its own',
      '55:29 bad-value: GTIN `10614141000415` is also that of the case of `bottle-946` -> each pack and each case has a number of its own',
    ]);
  });

  it('carries a path where the record never was text', () => {
    const value = parse(product);
    value.formula[1].percent = '1,5';
    const outcome = parseRecordValue(value, env(), 'cleaner.yaml');
    expect(outcome.diagnostics).toMatchObject([{ path: 'formula[1].percent', at: { file: 'cleaner.yaml' } }]);
  });

  it('reads as the text beside the fixture', () => {
    const { diagnostics } = loadRecord(
      'tests/fixtures/bad/patio-cleaner.yaml',
      filesAllowing(['tests/fixtures']),
    );
    expect(renderText(diagnostics)).toBe(readFileSync('tests/fixtures/bad/patio-cleaner.txt', 'utf8'));
  });
  it('reads as one clear block', () => {
    expect(renderText(load(changed(['percent: 1.5', 'percent: 1,5'])).diagnostics)).toBe(
      'cleaner.yaml:21:14: error: `percent`: `1,5` has a decimal comma\n    percent: 1,5\n             ^\n  -> write `1.5`\n',
    );
  });
});
