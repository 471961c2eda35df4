import { describe, expect, it } from 'vitest';
import { changed, load, told } from './_example.ts';

const entry = (text: string): string[] =>
  told(load(changed(['evidence: []', `evidence:\n  - {${text}, method: OECD 404, source: report 26-114}`])));

describe('evidence', () => {
  it('that is bridged says by which principle', () => {
    expect(
      entry('class: Skin Irrit., result: Skin Irrit. 2, kind: bridging, principle: interpolation'),
    ).toEqual([]);
    const [missing] = entry('class: Skin Irrit., result: Skin Irrit. 2, kind: bridging');
    expect(missing).toMatch(
      /^\d+:5 bad-value: .*by which principle -> add `principle: …`, one of dilution, batching/,
    );
    const [misspelt] = entry(
      'class: Skin Irrit., result: Skin Irrit. 2, kind: bridging, principle: dilutoin',
    );
    expect(misspelt).toMatch(/bad-value: .*`dilutoin` -> did you mean `dilution`/);
  });

  it.each(['test', 'reserve'])('of kind %s has no principle', kind => {
    const found = entry(`class: Skin Irrit., result: Skin Irrit. 2, kind: ${kind}, principle: dilution`);
    expect(found).toEqual([expect.stringMatching(/bad-value: .*`principle` stands beside `kind: /)]);
  });

  // 29 CFR 1910.1200 App. D, Table D.1, 2(c): such hazards are described in section 2.
  it('knows no class of hazards not otherwise classified, and says where they go', () => {
    for (const name of ['HNOC', 'Hazards not otherwise classified'])
      expect(entry(`class: ${name}, result: not classified, kind: test`)).toEqual([
        expect.stringMatching(/is not a hazard class -> .*`sds: \{other-hazards: …\}`/),
      ]);
  });
});
