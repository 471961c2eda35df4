import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { deliver } from '../../src/store/deliver.ts';
import { examine } from '../../src/store/examine.ts';
import { packetsBelow } from '../../src/store/mark-out-of-date.ts';
import { OutputError } from '../../src/store/output-error.ts';
import {
  alone,
  counting,
  delivery,
  documentsIn,
  failingAt,
  Killed,
  killedAt,
  leftovers,
  product,
  shop,
  standing,
} from './_packets.ts';
import { inputsFor, type Variant } from './_variants.ts';

// The oracle knows the bytes of both packets; it asks the store only whether it notices what the oracle sees.

/** How many changes of the disk it takes to put one packet in the place of another. */
async function changes(): Promise<number> {
  const { record, folder } = shop();
  await deliver(delivery(folder, record, 'bottle'), alone);
  const { env, count } = counting();
  await deliver(delivery(folder, record, 'flask'), env);
  return count();
}

const total = await changes();
const moments = Array.from({ length: total }, (_, i) => i + 1);

/** Which whole packet stands in a folder; null for anything else. */
function whole(folder: string): Variant | null {
  const found = JSON.stringify(documentsIn(folder), Object.keys(documentsIn(folder)).sort());
  const same = (variant: Variant) => {
    const wanted = standing(variant);
    return JSON.stringify(wanted, Object.keys(wanted).sort()) === found;
  };
  return (['bottle', 'flask'] as const).find(same) ?? null;
}

describe('a run stopped at any change of the disk', () => {
  it('is tried at more than one place of building, switching and tidying', () => {
    expect(total).toBeGreaterThan(15);
  });

  it('by kill: old or new stands whole, or what stands is told; the next run sets it right', async () => {
    const seen = new Set<string>();
    for (const moment of moments) {
      const { record, folder } = shop();
      await deliver(delivery(folder, record, 'bottle'), alone);
      await expect(deliver(delivery(folder, record, 'flask'), killedAt(moment))).rejects.toThrow(Killed);

      const stands = whole(folder);
      const against = (variant: Variant) =>
        examine(alone.files, folder, inputsFor(record, variant), { file: record, code: product.code });
      seen.add(stands ?? 'told');
      if (stands === null) {
        expect(against('flask'), `moment ${moment}`).toEqual([{ id: 'interrupted' }]);
        expect(against('bottle')).toContainEqual({ id: 'interrupted' });
      } else {
        // What is said to be current is the packet that stands there.
        const other = stands === 'bottle' ? 'flask' : 'bottle';
        expect(against(other).length, `moment ${moment}`).toBeGreaterThan(0);
      }

      await deliver(delivery(folder, record, 'flask'), alone);
      expect(whole(folder), `moment ${moment}`).toBe('flask');
      expect(leftovers(folder)).toEqual([]);
      expect(against('flask')).toEqual([]);
    }
    expect([...seen].sort()).toEqual(['bottle', 'flask', 'told']);
  });

  it.each([
    ['ENOSPC', true, 'the disk is full'],
    ['ENOSPC', false, 'the disk is full'],
    ['EACCES', true, 'you have no permission to write there'],
    ['EROFS', true, 'the disk can only be read'],
    ['EIO', false, 'the disk fails'],
  ])('by %s (lasting: %s): it is said, nothing is torn or mixed unnoticed', async (code, lasting, said) => {
    for (const moment of moments) {
      const { record, folder } = shop();
      await deliver(delivery(folder, record, 'bottle'), alone);
      const failed = deliver(delivery(folder, record, 'flask'), failingAt(moment, code, lasting));
      await expect(failed, `moment ${moment}`).rejects.toThrow(OutputError);
      await expect(failed).rejects.toThrow(`cannot write to ${folder}: ${said}`);
      // Of a run that fails and lives, nothing lies about but what a switch that is decided needs.
      if (!lasting) expect(leftovers(folder).length, `moment ${moment}`).toBeLessThanOrEqual(1);
      const now = inputsFor(record, 'flask');
      const against = examine(alone.files, folder, now, { file: record, code: product.code });
      const decided = against.some(({ id }) => id === 'interrupted');
      if (!lasting && !decided) expect(leftovers(folder), `moment ${moment}`).toEqual([]);
      if (whole(folder) === null) expect(against, `moment ${moment}`).toEqual([{ id: 'interrupted' }]);
      await deliver(delivery(folder, record, 'flask'), alone);
      expect(whole(folder)).toBe('flask');
      expect(leftovers(folder)).toEqual([]);
    }
  });

  it('in a folder that did not exist leaves no folder behind', async () => {
    const { record, folder, root } = shop();
    // The first two changes make the folder and the one above it in one call; the next builds.
    await expect(deliver(delivery(folder, record, 'flask'), failingAt(2, 'ENOSPC', false))).rejects.toThrow(
      'the disk is full',
    );
    expect(existsSync(`${root}/out`)).toBe(false);
  });
});

describe('a folder that cannot be read', () => {
  it('is said by a check, and does not stop the marking of others', async () => {
    const { record, folder, root } = shop();
    await deliver(delivery(folder, record, 'bottle'), alone);
    const denied = () => {
      throw Object.assign(new Error('no'), { code: 'EACCES' });
    };
    const blind = { ...alone, files: { ...alone.files, read: denied } };
    const now = inputsFor(record, 'bottle');
    expect(() => examine(blind.files, folder, now, { file: record, code: product.code })).toThrow(
      `cannot read ${folder}: you have no permission to read there`,
    );
    expect(packetsBelow(join(root, 'out'), record, blind)).toEqual([]);
    expect(packetsBelow(join(root, 'out'), record, alone)).toEqual([folder]);
    expect(packetsBelow(join(root, 'nowhere'), record, alone)).toEqual([]);
  });
});
