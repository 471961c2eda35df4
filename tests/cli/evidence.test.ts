import { describe, expect, it } from 'vitest';
import { run as check } from '../../src/cli/commands/check.ts';
import { run as classify } from '../../src/cli/commands/classify.ts';
import { inProcess, put, workshop } from './_command.ts';

const record = `labelwright: product/1
name: Bridged
code: B-1
form: liquid
formula:
  - {name: water, percent: 99}
  - {name: formaldehyde, cas: 50-00-0, percent: 1}
evidence:
  - {class: Carc., result: not classified, kind: bridging, principle: interpolation, method: m, source: s, reason: r}
`;

describe('evidence bridged by a principle that the class does not have', () => {
  // 29 CFR 1910.1200 App. A, A.6.3.3: dilution, batching and substantially similar mixtures only.
  it('is refused with its place and paragraph, and by check not, which has no basis', async () => {
    const path = put(workshop(), 'p.yaml', record);
    const refused = await inProcess(classify, [path]);
    expect(refused.status).toBe(2);
    expect(refused.out).toBe('');
    expect(refused.err).toContain('p.yaml:9:5: error: the bridging principle `interpolation`');
    expect(refused.err).toContain('A.6.3.3');
    expect((await inProcess(check, [path])).status).toBe(0);
  });
});
