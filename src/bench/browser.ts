import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { packagePath } from '../environment/package-files.ts';
import { openBrowser, printOnce } from './chromium.ts';
import type { Ratio } from './classification.ts';
import { type Drafted, demoDrafts } from './drafts.ts';
import { secondsInTurn } from './timing.ts';

/** The same command as a process of its own, which reads the record, classifies, drafts, reads back and writes. */
function runCommand(args: readonly string[], folder: string): void {
  const main = packagePath('out', 'dist', 'cli', 'main.js');
  const { status } = spawnSync(process.execPath, [main, ...args, '--out', folder], { stdio: 'ignore' });
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended with ${status}`);
}

async function ratiosOf(
  { name, page, setAndWritten, drafted, whole, command }: Drafted,
  print: (html: string) => Promise<Uint8Array>,
  folder: string,
): Promise<Ratio[]> {
  const file = join(folder, `${name}.html`);
  writeFileSync(file, page);
  const [written, draft, open, once, process] = await secondsInTurn(
    async () => void (await setAndWritten()),
    drafted,
    async () => void (await print(page)),
    async () => printOnce(file, join(folder, `${name}.pdf`)),
    async () => runCommand(command, join(folder, 'out')),
  );
  const browsers = [
    ['Chromium, already open', open!],
    ['Chromium, started for each document', once!],
  ] as const;
  const ours = [
    [`the ${name} laid out and written as PDF`, written!],
    [`the ${name} drafted whole: ${whole}, read back and checked`, draft!],
  ] as const;
  const kilobytes = (await setAndWritten()).length / 1000;
  return [
    ...ours.flatMap(([against, seconds]) =>
      browsers.map(([browser, others]) => ({
        what: `${browser}, prints the ${name}`,
        against,
        ratio: others / seconds,
        seconds: [others, seconds] as const,
      })),
    ),
    {
      what: `Chromium, started for each document, prints the ${name}`,
      against: `labelwright ${command[0]}, started for each document: from record to files`,
      ratio: once! / process!,
      seconds: [once!, process!],
    },
    {
      what: `PDF of the ${name}, kilobytes`,
      against: name === 'sheet' ? '250 at most' : '80 at most, without a profile',
      ratio: kilobytes,
    },
  ];
}

/**
 * A sheet and a label against headless Chromium that prints the same content: already open, and started for each
 * document. None where the machine has no Chromium.
 */
export async function browserRatios(): Promise<Ratio[]> {
  const browser = await openBrowser();
  if (!browser) return [];
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const ratios: Ratio[] = [];
    for (const drafted of await demoDrafts())
      ratios.push(...(await ratiosOf(drafted, browser.print, folder)));
    return ratios;
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
