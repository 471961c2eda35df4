import { mkdirSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { nodeEnvironment } from '../../src/environment/node.ts';
import { deliver } from '../../src/store/deliver.ts';
import { delivery, leftovers, shop } from './_packets.ts';
import { anHourLater, bundleWriter, seen, startWriter } from './_processes.ts';

// `npm run torture` asks for more of each.
const kills = Number(process.env.KILLS ?? 25);
const pairs = Number(process.env.PAIRS ?? 4);
const minutes = 60_000;

describe('a writer that is killed at a random moment', () => {
  it(
    `leaves a whole packet or tells, ${kills} times over, and the next run sets it right`,
    async () => {
      const { root, record, folder } = shop();
      const writer = await bundleWriter(root);
      const counts: Record<string, number> = {};
      let lefts = 0;
      for (let kill = 0; kill < kills; kill++) {
        const { child, ended } = startWriter(writer, [
          folder,
          record,
          '1000000',
          kill % 2 === 0 ? 'bottle' : 'flask',
        ]);
        await new Promise(resolve => child.stdout!.once('data', resolve));
        await pause(Math.random() * 200);
        child.kill('SIGKILL');
        expect(await ended).toMatchObject({ signal: 'SIGKILL', said: '' });
        mkdirSync(folder, { recursive: true });
        const stands = seen(folder);
        counts[stands] = (counts[stands] ?? 0) + 1;
        lefts += leftovers(folder).length;
        expect(stands, `kill ${kill}`).not.toBe('fault');
        anHourLater(folder);
        // Not each time: the next writer must cope with what was left, too.
        if (kill % 5 === 4) {
          await deliver(delivery(folder, record, 'flask'), nodeEnvironment);
          expect(seen(folder)).toBe('flask');
          expect(leftovers(folder)).toEqual([]);
        }
      }
      process.stdout.write(`kills ${kills}: ${JSON.stringify(counts)}, leftovers met ${lefts}\n`);
      // Else no kill hit a run at work, and nothing was tried.
      expect(lefts).toBeGreaterThan(0);
      await deliver(delivery(folder, record, 'bottle'), nodeEnvironment);
      expect(seen(folder)).toBe('bottle');
      expect(leftovers(folder)).toEqual([]);
    },
    Math.max(5, kills / 20) * minutes,
  );
});

describe('two writers of one folder, of the same process id', () => {
  it(
    `take turns, ${pairs} pairs`,
    async () => {
      const { root, record, folder } = shop();
      const writer = await bundleWriter(root);
      for (let pair = 0; pair < pairs; pair++) {
        const both = (['bottle', 'flask'] as const).map(first =>
          startWriter(writer, [folder, record, '6', first]),
        );
        for (const { ended } of both) expect(await ended).toEqual({ code: 0, signal: null, said: '' });
        expect(['bottle', 'flask']).toContain(seen(folder));
        expect(leftovers(folder)).toEqual([]);
      }
    },
    Math.max(5, pairs / 5) * minutes,
  );
});
