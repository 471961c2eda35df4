import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { edition, readEdition } from '../../src/reference/edition.ts';
import { labelwright, workshop } from '../cli/_command.ts';

describe('the edition of the law data', () => {
  it('knows the dates on which a text came into force', () => {
    const { dates } = edition();
    // 29 CFR 1910.1200 as amended by 89 FR 44144: effective 19 July 2024.
    expect(dates).toContain('2024-07-19');
    expect(dates).toEqual([...dates].sort());
  });

  it('is built into the program as the files of the source give it', () => {
    const cwd = workshop();
    expect(labelwright(['label', 'patio-cleaner.yaml', '--out', 'made'], { cwd }).status).toBe(0);
    const { inputs } = JSON.parse(readFileSync(join(cwd, 'made', 'manifest.json'), 'utf8')) as {
      inputs: { law: { sha256: string }; program: { templates: string } };
    };
    const { law, templates } = readEdition();
    expect([inputs.law.sha256, inputs.program.templates]).toEqual([law, templates]);
  });
});
