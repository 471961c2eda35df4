import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { filesAllowing, nodeFiles } from '../../src/cli/files.ts';
import { memoryFiles, noFiles } from '../../src/record/files.ts';
import { loadRecord, parseRecordJson, parseRecordText, parseRecordValue } from '../../src/record/load.ts';
import { renderText } from '../../src/report/render.ts';
import { changed, env, load, told } from './_example.ts';

const bare = { labelwright: 'product/1', name: 'A', code: 'A-1', form: 'liquid' };
const water = { name: 'water', amount: 'balance' };
const codes = (outcome: { diagnostics: readonly { code: string }[] }) =>
  outcome.diagnostics.map(({ code }) => code);

describe('a line of a formula is kept or an error', () => {
  it.each([
    ['a number', 4711],
    ['a text that names no file', 'drums/none.yaml'],
    ['a list', ['a.yaml']],
    ['a truth value', true],
  ])('where `use` is %s', (_name, use) => {
    const value = { ...bare, formula: [{ use, percent: 40 }, water] };
    expect(parseRecordValue(value, noFiles).ok).toBe(false);
    expect(parseRecordJson(JSON.stringify(value), 'record', noFiles).ok).toBe(false);
    expect(parseRecordText(JSON.stringify(value), 'r.yaml', noFiles).ok).toBe(false);
  });

  it('where the maker is a number, that is a finding', () => {
    const value = { ...bare, maker: 60, formula: [water] };
    expect(codes(parseRecordValue(value, noFiles))).toEqual(['missing-file']);
    expect(codes(parseRecordText('maker: 60\n', 'r.yaml', noFiles)).length).toBeGreaterThan(0);
  });
});

describe('one reader for YAML and JSON', () => {
  const findings = (outcome: ReturnType<typeof parseRecordText>) =>
    outcome.diagnostics.map(({ code, path, message }) => `${path} ${code}: ${message}`).sort();

  it.each([
    { ...bare, formula: [{ name: 'x', percent: '9,5' }, water] },
    { ...bare, form: 7, formula: [{ name: 12, percent: 1.5 }, water] },
    { ...bare, formula: [{ name: 'x', percent: [3, 1] }, water], packs: [{ id: 1 }] },
    {
      ...bare,
      formula: [
        { name: 'x', percent: 101 },
        { ...water, density: 1 },
      ],
      batch: 3,
    },
    { ...bare, formula: {} },
    { ...bare, evidence: [{ class: 'constructor' }], formula: [water] },
  ])('says the same of a value, a line and a file: %j', value => {
    const text = JSON.stringify(value);
    const file = findings(parseRecordText(text, 'record', noFiles));
    expect(file.length).toBeGreaterThan(0);
    expect(findings(parseRecordValue(value, noFiles))).toEqual(file);
    expect(findings(parseRecordJson(text, 'record', noFiles))).toEqual(file);
  });

  it('tells a key given twice in a JSON line, as in a file', () => {
    const text = JSON.stringify({ ...bare, formula: [water] }).replace('"code"', '"name":"B","code"');
    expect(codes(parseRecordJson(text, 'record', noFiles))).toEqual(['repeated-key']);
  });

  it('keeps digits of a JSON line that a double would lose', () => {
    const text = JSON.stringify({ ...bare, formula: [water] }).replace('"A-1"', '61414100000000000123');
    const read = parseRecordJson(text, 'record', noFiles);
    expect(read.ok && read.value.code).toBe('61414100000000000123');
  });

  it('skips a byte order mark', () => {
    const text = `\ufeff${JSON.stringify({ ...bare, formula: [water] })}`;
    expect(parseRecordJson(text, 'record', noFiles).ok).toBe(true);
    expect(loadRecord('r.json', memoryFiles({ 'r.json': text })).ok).toBe(true);
  });

  it('comes to an end on a value that contains itself', () => {
    const value: Record<string, unknown> = { ...bare };
    Object.assign(value, { formula: value, packs: value, copy: value });
    expect(codes(parseRecordValue(value, noFiles))).toEqual(['nested-too-deep']);
  });
});

describe('text that YAML cuts', () => {
  it('behind a # is told', () => {
    const outcome = load(changed(['name: Kerbstone Patio Cleaner', 'name: Kerbstone Patio Cleaner #5']));
    expect(outcome.ok).toBe(true);
    expect(told(outcome)).toEqual([
      '2:31 text-cut: `#5` is read as a comment: the text ends before it -> put the whole text in quotes, "Kerbstone Patio Cleaner #5", or write a space behind the # of a comment',
    ]);
  });

  it('at a comma of a list is told, and a list of short items is not', () => {
    const outcome = load(
      changed([
        'advised-against: [Do not use on aluminum]',
        'advised-against: [Do not use on tin, zinc or lead]',
      ]),
    );
    expect(codes(outcome)).toEqual(['text-cut']);
    expect(told(outcome)[0]).toContain('"Do not use on tin, zinc or lead"');
    const list = changed([
      'advised-against: [Do not use on aluminum]',
      'advised-against: [Aluminum, Zinc plate, Lead.]',
    ]);
    expect(load(list).diagnostics).toEqual([]);
  });

  it('at a colon in brackets gets quotes as its fix', () => {
    const outcome = load(
      changed(['hazards: [Flam. Liq. 3', 'hazards: [Acute Tox. 4 (inhalation: mist), Flam. Liq. 3']),
    );
    expect(outcome.ok).toBe(false);
    expect(told(outcome)[0]).toContain('"Acute Tox. 4 (inhalation: mist)"');
  });

  it('between organs gets quotes as its fix', () => {
    const outcome = load(
      changed(['hazards: [Flam. Liq. 3', 'hazards: [STOT RE 2 (kidney, liver), Flam. Liq. 3']),
    );
    expect(told(outcome)[0]).toContain('quotes');
  });
});

describe('fixes that are right', () => {
  it.each([
    ['pH: 12.6', 'pH: 9,5', /`9\.5`/],
    ['percent: 1.5', 'percent: 1,5', /`1\.5`/],
    ['density: 1.09 g/mL', 'density: 1,09 g/mL', /`1\.09 g\/mL`/],
  ])('%s as %s', (from, to, fix) => {
    expect(told(load(changed([from, to])))[0]).toMatch(fix);
  });

  it('a decimal comma in a group on one line', () => {
    const value =
      '{labelwright: product/1, name: A, code: A, form: liquid, properties: {pH: 9,5}, formula: [{name: water, percent: 100}]}';
    expect(told(parseRecordText(value, 'r.yaml', noFiles)).join()).toMatch(/decimal point/);
  });

  it('an empty raw-material file is told what it begins with', () => {
    const outcome = load(changed(), { 'drums/hypochlorite-12.yaml': '' });
    expect(told(outcome)[0]).toMatch(/empty-file.*labelwright: raw-material\/1/);
  });

  it('a kind that is not known hides no other finding', () => {
    const outcome = load(
      changed(['labelwright: product/1', 'labelwright: prodct/1'], ['pH: 12.6', 'pH: 99']),
    );
    expect(codes(outcome)).toEqual(['wrong-kind', 'bad-value']);
  });
});

describe('files that a record names', () => {
  const folder = mkdtempSync(join(tmpdir(), 'inclusion-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const drum = 'labelwright: raw-material/1\nname: drum\nformula: [{name: water, percent: 100}]\n';
  const record = (use: string) =>
    `labelwright: product/1\nname: A\ncode: A\nform: liquid\nformula:\n  - {use: ${use}, percent: 100}\n`;
  const secret = 'user: root\npassword: hunter2 # [\n';
  mkdirSync(join(folder, 'shop', 'drums'), { recursive: true });
  mkdirSync(join(folder, 'other'));
  writeFileSync(join(folder, 'other', 'drum.yaml'), drum);
  writeFileSync(join(folder, 'other', 'secret.yaml'), secret);
  writeFileSync(join(folder, 'shop', 'near.yaml'), secret);
  writeFileSync(join(folder, 'shop', 'broken.yaml'), `${secret}  - {[\n`);
  symlinkSync(join(folder, 'other', 'secret.yaml'), join(folder, 'shop', 'drums', 'link.yaml'));
  symlinkSync(join(folder, 'other'), join(folder, 'shop', 'way'));
  const open = (use: string, files = nodeFiles) => {
    const path = join(folder, 'shop', 'record.yaml');
    writeFileSync(path, record(use));
    return loadRecord(path, files);
  };

  it.each(['../other/drum.yaml', 'way/drum.yaml', 'drums/link.yaml', '../other/none.yaml', 'way/none.yaml'])(
    '%s leads out and is not read',
    use => expect(codes(open(use))).toEqual(['outside-folder']),
  );

  it('may lie in a folder that is allowed', () => {
    const files = filesAllowing([join(folder, 'other')]);
    expect(open('../other/drum.yaml', files).ok).toBe(true);
    expect(open('way/drum.yaml', files).ok).toBe(true);
  });

  it.each(['near.yaml', 'broken.yaml'])('%s is no record, and nothing of it is shown', use => {
    const outcome = open(use);
    expect(outcome.ok).toBe(false);
    expect(renderText(outcome.diagnostics)).not.toMatch(/hunter2|password|root/);
  });

  it('have a stated limit of levels', () => {
    const chain = Object.fromEntries(
      Array.from({ length: 2000 }, (_, i) => [
        `d${i}.yaml`,
        `labelwright: raw-material/1\nname: d\nformula:\n  - {use: d${i + 1}.yaml, percent: 100}\n`,
      ]),
    );
    const outcome = loadRecord('r.yaml', memoryFiles({ ...chain, 'r.yaml': record('d0.yaml') }));
    expect(codes(outcome)).toEqual(['chain-too-long']);
    expect(told(outcome)[0]).toContain('200 levels');
  });
});

it('wrong check digits have a code of their own', () => {
  expect(codes(load(changed(['1310-73-2', '1310-73-1'])))).toEqual(['check-digit']);
  expect(
    codes(
      parseRecordValue({ ...bare, formula: [{ name: 'x', cas: '1310-73-1', percent: 1 }, water] }, env()),
    ),
  ).toEqual(['check-digit']);
});

it('artwork and logo stay in the folder of the record too', () => {
  const brand = { logo: '../logo.svg' };
  const copy = { artwork: { file: '/etc/passwd', areas: [] } };
  const outcome = parseRecordValue({ ...bare, formula: [water], copy, maker: { brand } }, noFiles);
  expect(codes(outcome)).toContain('outside-folder');
  expect(codes(outcome)).toContain('not-relative');
});

it('no fix proposes what is in a drum', () => {
  const outcome = load(changed(), {
    'drums/hypochlorite-12.yaml': 'labelwright: raw-material/1\nname: drum\nhazards: 7\n',
  });
  expect(told(outcome).join()).not.toMatch(/water|balance/);
  expect(told(parseRecordValue({ ...bare, formula: 7 }, noFiles)).join()).not.toMatch(/water/);
});
