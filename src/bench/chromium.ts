import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Duplex } from 'node:stream';
import { pathToFileURL } from 'node:url';

/** A browser that is already open, spoken to over its pipe (Chrome DevTools Protocol). */
export interface Browser {
  /** Opens a page and prints it as PDF. */
  print(html: string): Promise<Uint8Array>;
  close(): Promise<void>;
}

interface Answer {
  readonly id?: number;
  readonly method?: string;
  readonly result?: Record<string, unknown>;
  readonly error?: { readonly message: string };
}

const HEADLESS = ['--headless', '--no-sandbox', '--disable-gpu'];

/** Starts Chromium, prints one page as PDF and ends it, as a script does for each document. */
export function printOnce(page: string, pdf: string, program = 'chromium'): void {
  const { status } = spawnSync(
    program,
    [...HEADLESS, '--no-pdf-header-footer', `--print-to-pdf=${pdf}`, pathToFileURL(page).href],
    { stdio: 'ignore' },
  );
  if (status !== 0) throw new Error(`${program} ended with ${status}`);
}

/** Opens headless Chromium where the machine has it; null where it has none. */
export async function openBrowser(program = 'chromium'): Promise<Browser | null> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const child = spawn(program, [...HEADLESS, '--remote-debugging-pipe', `--user-data-dir=${folder}`], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
  });
  const gone = new Promise<void>(resolve => child.once('exit', () => resolve()));
  const close = async (): Promise<void> => {
    if (child.kill('SIGKILL')) await gone;
    rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
  };
  const started = await new Promise<boolean>(resolve => {
    child.once('error', () => resolve(false));
    child.once('spawn', () => resolve(true));
  });
  if (!started) {
    rmSync(folder, { recursive: true });
    return null;
  }
  const [, , , into, from] = child.stdio as unknown as [null, null, null, Duplex, Duplex];
  const waiting = new Map<number, (answer: Answer) => void>();
  const events = new Map<string, () => void>();
  let rest = '';
  from.setEncoding('utf8');
  from.on('data', (piece: string) => {
    const messages = (rest + piece).split('\0');
    rest = messages.pop()!;
    for (const message of messages) {
      const answer: Answer = JSON.parse(message);
      if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
      else if (answer.method) events.get(answer.method)?.();
    }
  });
  let last = 0;
  const call = (method: string, params: object = {}, sessionId?: string): Promise<Record<string, unknown>> =>
    new Promise((resolve, reject) => {
      const id = ++last;
      waiting.set(id, ({ result, error }) => {
        waiting.delete(id);
        if (error) reject(new Error(`${method}: ${error.message}`));
        else resolve(result ?? {});
      });
      into.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
  const { targetId } = await call('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await call('Target.attachToTarget', { targetId, flatten: true });
  const page = sessionId as string;
  await call('Page.enable', {}, page);
  let file = 0;
  return {
    async print(html) {
      const path = join(folder, `${file++}.html`);
      writeFileSync(path, html);
      const loaded = new Promise<void>(resolve => events.set('Page.loadEventFired', resolve));
      await call('Page.navigate', { url: pathToFileURL(path).href }, page);
      await loaded;
      const { data } = await call(
        'Page.printToPDF',
        { preferCSSPageSize: true, printBackground: true },
        page,
      );
      return Buffer.from(data as string, 'base64');
    },
    close,
  };
}
