import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run as packet } from '../../src/cli/commands/packet.ts';
import { inProcess } from '../cli/_command.ts';
import { degreaser, glassCleaner, houseWash, neutralDetergent, week, wheelCleaner } from './_products.ts';
import { checked, correct, type Product, shop } from './_week.ts';

const folder = shop();
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const outOf = ({ code }: Product) => join(folder, 'out', code);
const read = (product: Product, name: string) => readFileSync(join(outOf(product), name), 'utf8');
const classified = (product: Product) => JSON.parse(read(product, 'classification.json'));
const codes = (product: Product): readonly string[] =>
  classified(product).hazards.map(({ code }: { code: string }) => code);

// Supplier data invented, worded as sheets of the United States print them: ranges, "Category 1", trade secrets.
describe.each(week.map(product => [product.file, product] as const))('%s, as first typed', (_, product) => {
  it('learns all its errors at once, and is a whole packet after two rounds', async () => {
    const first = await checked(folder, product);
    expect(first.status).toBe(2);
    expect(first.errors).toEqual(product.errors);
    correct(folder, product.first);
    const second = await checked(folder, product);
    expect(second.errors).toEqual([]);
    correct(folder, product.second);
    const third = await checked(folder, product);
    expect(third.findings.filter(({ severity }) => severity === 'warning')).toEqual([]);

    const { status } = await inProcess(packet, [join(folder, product.file), '--out', outOf(product)]);
    expect(status).toBe(0);
    const { missing, files } = JSON.parse(read(product, 'manifest.json'));
    expect(missing ?? []).toEqual([]);
    for (const { name } of files) expect(existsSync(join(outOf(product), name)), name).toBe(true);
  }, 60_000);
});

describe('what a chemist expects of the five', () => {
  // 29 CFR 1910.1200 App. A, Table A.2.3 (1 x Skin Corr. 1 >= 5 %) and A.2.3.3.4 (pH >= 11.5); NFPA, note of 13 April
  // 2020: bleach with acids or ammonia gives toxic gas.
  it('house wash: corrosive, never to be mixed, its sources named', () => {
    const { hazardStatements, constituents } = classified(houseWash);
    expect(codes(houseWash)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^Skin Corr\. 1/), 'Eye Dam. 1']),
    );
    expect(hazardStatements.map(({ code }: { code: string }) => code)).toContain('H314');
    expect(read(houseWash, 'sds.html')).toContain(
      'Do not mix with acids, ammonia or other cleaners: toxic gas may form',
    );
    const bleach = constituents.find(({ cas }: { cas: string }) => cas === '7681-52-9');
    expect(bleach.source).toContain('supplier SDS rev 3, 2025-11-04');
    // 49 CFR 172.101: hypochlorite solutions.
    expect(JSON.parse(read(houseWash, 'transport.json')).un).toBe('UN1791');
  });

  // A.2.3.3.4: pH 11.5 or more is Category 1; 40 CFR 372.65(c): certain glycol ethers.
  it('degreaser: corrosive by its pH, the glycol ether named in section 15', () => {
    expect(codes(degreaser)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^Skin Corr\. 1/), 'Eye Dam. 1']),
    );
    expect(read(degreaser, 'sds.html')).toMatch(/glycol ethers/i);
  });

  // B.6.2: 35 C lies between 23 and 60 C; Table A.3.3: 10 % Eye Irrit. 2A reach the limit; A.8.3.4.6: 20 % narcotic.
  it('glass cleaner: flammable and irritating to eyes, the narcotic effect below its limit', () => {
    expect(codes(glassCleaner)).toEqual(['Flam. Liq. 3', 'Eye Irrit. 2A']);
    expect(existsSync(join(outOf(glassCleaner), 'label-sprayer-32-us-consumer.pdf'))).toBe(true);
  });

  // A.2.3.3.4: pH 2 or less; NFPA, as above: acids and bleach.
  it('wheel cleaner: corrosive by its pH, never to be mixed with bleach', () => {
    expect(codes(wheelCleaner)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^Skin Corr\. 1/), 'Eye Dam. 1']),
    );
    expect(read(wheelCleaner, 'sds.html')).toContain('Do not mix with bleach');
  });

  // Table A.3.3: 3 % Eye Dam. 1; Table A.4.5: 0.1 % of a skin sensitizer.
  it('neutral detergent: a neutral pH takes no hazard away', () => {
    expect(codes(neutralDetergent)).toEqual(['Eye Dam. 1', 'Skin Sens. 1']);
  });
});
