import { afterAll, describe, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { nodeFiles } from '../../src/cli/files.ts';
import type { Io } from '../../src/cli/io.ts';
import { reasonWriter } from '../../src/draft/because-json.ts';
import { harmonisedTable } from '../../src/draft/open-reference.ts';
import { findConstituent } from '../../src/headroom/find-constituent.ts';
import { headroom } from '../../src/headroom/headroom.ts';
import { headroomJson } from '../../src/headroom/headroom-json.ts';
import { headroomText } from '../../src/headroom/headroom-text.ts';
import { labelHeadBy } from '../../src/headroom/label-head.ts';
import { stripChart } from '../../src/headroom/strip-chart.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { en } from '../../src/words/en/index.ts';
import { compare, nothingElseIn } from './_compare.ts';
import { json } from './_json.ts';
import { AS_OF, classified, demos, must, nameOf, records } from './_products.ts';

// Golden dumps of this program's own output: no outside source, they show what a change changes.

type Run = (args: readonly string[], io: Io) => Promise<number>;

/** What a command shows on a terminal, with its exit status. */
async function shown(run: Run, args: readonly string[]): Promise<string> {
  let [out, err] = ['', ''];
  const status = await run([...args, '--as-of', AS_OF], {
    stdin: async () => '',
    lines: async function* () {},
    out: text => {
      out += text;
    },
    err: text => {
      err += text;
    },
    files: nodeFiles,
    today: AS_OF,
  });
  return `exit ${status}\n${err === '' ? '' : `--- standard error\n${err}`}--- standard output\n${out}`;
}

const refused = records.filter(path => nameOf(path) === 'evidence-refused');
const shownPaths = [...demos, ...refused];

describe('terminal', () => {
  it.each(shownPaths)('classify %s', async path => {
    compare(`terminal/classify-${nameOf(path)}.txt`, await shown(classify, [path]));
  });

  it('check', async () => {
    // No folder of outputs, so that sheets of an earlier run say nothing.
    const args = [...demos, ...records, '--out', 'out/none'];
    compare('terminal/check.txt', await shown(check, args));
  });
});

const asked = [
  ['patio-cleaner', 'sodium hydroxide', 'water'],
  ['degreaser', 'd-limonene', 'scaled'],
] as const;

describe('headroom', () => {
  it.each(asked)('of %s: %s', async (name, written, others) => {
    const { record, formula, reference } = await classified(`templates/demo/${name}.yaml`, 'us-hcs');
    const found = findConstituent(formula, written) as { index: number };
    const labelOf = labelHeadBy(await loadLabelData('us-hcs'), { form: record.form, choice: () => null });
    const entriesOf = (cas: string) => harmonisedTable().candidates(cas, AS_OF);
    const input = { record, formula, ...reference, entriesOf, labelOf };
    const result = must(headroom(input, found.index, others));
    compare(`headroom/${name}.txt`, headroomText(result, en));
    compare(
      `headroom/${name}.json`,
      json(headroomJson(result, record, breakpoint => reasonWriter(breakpoint, en).because)),
    );
    compare(`headroom/${name}.svg`, stripChart(result, record.name));
  });
});

afterAll(() => {
  nothingElseIn('terminal', [
    'terminal/check.txt',
    ...shownPaths.map(path => `terminal/classify-${nameOf(path)}.txt`),
  ]);
  nothingElseIn(
    'headroom',
    asked.flatMap(([name]) => ['txt', 'json', 'svg'].map(end => `headroom/${name}.${end}`)),
  );
});
