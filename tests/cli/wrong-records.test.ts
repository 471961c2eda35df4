import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { demo, demoWith, inProcess, labelwright, put, stackTrace, workshop } from './_command.ts';

// What is wrong, the record, and what must be said: the place, the fact and the fix.
const wrong: readonly (readonly [string, string | Uint8Array, readonly (string | RegExp)[]])[] = [
  [
    'a misspelt key',
    demoWith(['appearance:', 'apearance:']),
    ['bad.yaml:7:1: error: unknown key `apearance`', 'did you mean `appearance`?'],
  ],
  [
    'a sum of 104 %',
    demoWith(['  - name: water\n    amount: balance\n', '  - name: water\n    percent: 57.2884\n']),
    [
      'bad.yaml:18:5: error: Kerbstone Patio Cleaner: the lines sum to 104 %: 4 % too much',
      'all lines together make 100 %',
    ],
  ],
  [
    'a CAS number with a wrong check digit',
    demoWith(['1310-73-2', '1310-73-3']),
    ['bad.yaml:21:10: error: CAS number `1310-73-3`', 'it would end in 2: 1310-73-2'],
  ],
  [
    'a GTIN with a wrong check digit',
    demoWith(['"0614141000418"', '"0614141000417"']),
    ['error: GTIN `0614141000417` has a wrong check digit', '"0614141000418"'],
  ],
  [
    'a volume without a density',
    demoWith(['percent: 1.5', 'amount: 3 gal']),
    [
      /bad\.yaml:20:5: error: `3 gal` of sodium hydroxide is a volume, and its density is not given/,
      'add `density: … g/mL` to the line',
    ],
  ],
  [
    'an unknown unit',
    demoWith(['380 kg', '380 stone']),
    [
      'bad.yaml:19:13: error: `amount`: `380 stone` has the unit `stone`, which is not known',
      'use one of kg, g,',
    ],
  ],
  [
    'an amount without a unit',
    demoWith(['380 kg', '380']),
    ['`380` has no unit', 'write for example `380 kg`'],
  ],
  [
    'a quote that is not closed',
    demoWith(['name: builder blend', 'name: "builder blend']),
    ['bad.yaml:', 'a quote is opened and not closed'],
  ],
  [
    'a tab',
    demoWith(['  - name: builder', '\t- name: builder']),
    ['indented with a tab', 'indent with spaces'],
  ],
  [
    'a second colon',
    demoWith(['name: builder blend', 'name: builder: blend']),
    ['a second colon', '"double quotes"'],
  ],
  ['an empty file', '', ['bad.yaml:1:1: error: the file is empty', 'begin with `labelwright: product/1`']],
  [
    'a binary file',
    Uint8Array.from({ length: 512 }, (_, at) => (at * 73 + 128) % 256),
    ['is not UTF-8 text', 'save the file as plain text in UTF-8'],
  ],
  [
    'a file in UTF-16',
    new Uint8Array(Buffer.from(`\ufeff${demo}`, 'utf16le')),
    ['the file is saved as UTF-16', 'UTF-8'],
  ],
  [
    'a file of 50 MB',
    new Uint8Array(50_000_000).fill(97),
    ['`', 'has 50.0 MB; a record has at most 2 MB', 'is this the right file?'],
  ],
  [
    'a table instead of a record',
    'name,cas,percent\nwater,7732-18-5,95\n',
    ['this is plain text, not a record', '`labelwright: product/1`'],
  ],
  [
    'a record that contains itself',
    demoWith(['drums/hypochlorite-12.yaml', 'bad.yaml']),
    ['bad.yaml:18:10: error:', 'contains itself', 'take one of these `use` lines out'],
  ],
  [
    'a decimal comma',
    demoWith(['percent: 1.5', 'percent: 1,5']),
    ['bad.yaml:22:14: error: `percent`: `1,5` has a decimal comma', 'write `1.5`'],
  ],
  [
    'a raw material that is not there',
    demoWith(['drums/hypochlorite-12.yaml', 'drums/hypo.yaml']),
    ['bad.yaml:18:10: error: there is no file `', 'hypo.yaml`', 'relative to the file that names them'],
  ],
  [
    'a maker that is not there',
    demoWith(['maker: maker.yaml', 'maker: makers.yaml']),
    ['bad.yaml:8:8: error: there is no file `'],
  ],
  [
    'a key twice',
    demoWith(['form: liquid', 'form: liquid\nform: solid']),
    ['bad.yaml:7:1: error: `form` is given twice; the first is in line 6', 'keep one of the two'],
  ],
  [
    'a negative amount',
    demoWith(['percent: 1.5', 'percent: -3']),
    ['bad.yaml:22:14: error: `percent`: `-3` is not between 0 and 100 %'],
  ],
  [
    'more than all',
    demoWith(['percent: 1.5', 'percent: 150']),
    ['bad.yaml:22:14: error: `percent`: `150` is not between 0 and 100 %'],
  ],
  [
    'a word for a number',
    demoWith(['percent: 1.5', 'percent: abc']),
    ['bad.yaml:22:14: error: `percent`: `abc` is not a number', 'such as 4.1'],
  ],
  [
    'a range that begins with its higher end',
    demoWith(['percent: 1.5', 'percent: 2-1']),
    ['the range begins with its higher end', 'write the lower number first'],
  ],
  [
    'two balance lines',
    demoWith(['percent: 3\n', 'amount: balance\n']),
    ['a second balance line', 'give this one a percentage'],
  ],
  [
    'more than is left for the balance',
    demoWith(['percent: 1.5', 'percent: 65']),
    ['nothing is left for it', /take \d+\.\d+ % out/],
  ],
  [
    'an unknown reading',
    demoWith(['packs:', 'choices:\n  - {reading: us-specific-limit, take: use, reason: x}\npacks:']),
    ['there is no reading `us-specific-limit`', 'did you mean `us-specific-limits`?'],
  ],
  [
    'a hazard that is none',
    demoWith(['Skin Irrit. 2,', 'Skin Irritates 2,']),
    ['"Skin Irritates 2" is no hazard class and category', 'did you mean Skin Irrit. 2?'],
  ],
  [
    'an H-code that leaves the category open',
    demoWith(['Skin Irrit. 2,', 'H314,']),
    ['H314 alone leaves open which class and category is meant', 'Skin Corr. 1A'],
  ],
  ['a pH off the scale', demoWith(['value: 12.6', 'value: 126']), ['`126` is not a pH', '0 to 14']],
  [
    'a density in the wrong unit',
    demoWith(['1.09 g/mL', '1090 g/mL']),
    ['`1090 g/mL` is not a density that a product can have', 'check the unit'],
  ],
  [
    'a code that names a folder above',
    demoWith(['code: KP-946', 'code: ../../KP']),
    ['bad.yaml:3:7: error: code `../../KP` cannot be part of a file name'],
  ],
  [
    'a form in capitals',
    demoWith(['form: liquid', 'form: Liquid']),
    ['`form` cannot be `Liquid`', 'did you mean `liquid`?'],
  ],
  ['no code', demoWith(['code: KP-946\n', '']), ['`code` is missing', 'add for example `code: ']],
  [
    'a length without a unit',
    demoWith(['width: 130 mm', 'width: 130']),
    ['`width`: `130` has no unit', '`130 mm`'],
  ],
];

describe('a record that cannot be used', () => {
  let folder: string;
  beforeAll(() => {
    folder = workshop();
  });

  it.each(wrong)('%s', async (what, content, said) => {
    const path = put(folder, 'bad.yaml', content);
    const out = join(folder, 'made');
    const checked = await inProcess(check, [path]);
    expect(checked.status).toBe(what.includes('check digit') ? 1 : 2);
    expect(checked.out).toBe('');
    for (const words of said) {
      if (typeof words === 'string') expect(checked.err).toContain(words);
      else expect(checked.err).toMatch(words);
    }
    expect(checked.err).toContain('bad.yaml');
    expect(checked.err).not.toMatch(stackTrace);
    const made = await inProcess(packet, [path, '--out', out]);
    expect(made).toEqual({ status: checked.status, out: '', err: checked.err });
    expect(existsSync(out)).toBe(false);
  });

  it.each([
    [
      'a file that is not there',
      'check',
      'nothere.yaml',
      'nothere.yaml: error: there is no file `nothere.yaml`',
    ],
    ['a folder', 'label', 'drums', 'drums: error: `drums` is a folder, not a file'],
    [
      'a maker',
      'sds',
      'maker.yaml',
      'maker.yaml:1:14: error: this is a maker record, where a product record is needed',
    ],
    [
      'a raw material',
      'classify',
      'drums/surfactant-blend.yaml',
      'drums/surfactant-blend.yaml:2:14: error: this is a raw-material record, where a product record is needed',
    ],
  ])('%s, given to %s', (_, command, path, said) => {
    const { status, out, err } = labelwright([command, path], { cwd: folder });
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(said);
    expect(err).not.toMatch(stackTrace);
    expect(existsSync(join(folder, 'out'))).toBe(false);
  });

  it('reads the others of several records, and says 2 at the end', () => {
    put(folder, 'bad.yaml', demoWith(['form: liquid', 'form: Liquid']));
    const { status, out, err } = labelwright(['check', 'bad.yaml', 'descaler.yaml'], { cwd: folder });
    expect(status).toBe(2);
    expect(err).toContain('bad.yaml:6:7: error');
    expect(out).toContain('(LD-1000)');
  });

  it('shows every problem at once, in order of place', async () => {
    const path = put(
      folder,
      'bad.yaml',
      demoWith(
        ['form: liquid', 'form: Liquid'],
        ['percent: 1.5', 'percent: 1,5'],
        ['width: 130 mm', 'width: 130'],
      ),
    );
    const { err } = await inProcess(check, [path]);
    expect([...err.matchAll(/bad\.yaml:(\d+):/g)].map(([, line]) => Number(line))).toEqual([6, 22, 45]);
  });

  it('keeps control characters of the record off the terminal', async () => {
    const path = put(folder, 'bad.yaml', demoWith(['form: liquid', 'form: "\\e[31mred"']));
    const { err } = await inProcess(check, [path]);
    expect(err).toContain('`form` cannot be');
    expect(err).not.toContain('\u001b');
  });
});

describe('a record that is read in spite of its looks', () => {
  it.each([
    ['line ends and mark of another system', `\ufeff${demo.replaceAll('\n', '\r\n')}`],
    ['a GTIN without quotes', demoWith(['"0614141000418"', '0614141000418'])],
    ['a per cent sign', demoWith(['percent: 1.5', 'percent: 1.5 %'])],
    [
      'JSON',
      JSON.stringify({
        labelwright: 'product/1',
        name: 'Brine',
        code: 'B-1',
        form: 'liquid',
        formula: [{ name: 'water', amount: 'balance' }],
      }),
    ],
  ])('%s', async (_, content) => {
    // No folder of outputs, so that a sheet of an earlier run says nothing.
    const folder = workshop();
    const args = [put(folder, 'good.yaml', content), '--out', join(folder, 'none')];
    const { status, err } = await inProcess(check, args);
    expect({ status, err }).toEqual({ status: 0, err: '' });
  });
});
