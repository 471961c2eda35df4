import { fingerprintOf, type Inputs, sha256 } from '../../src/provenance/inputs.ts';
import type { OutputFile } from '../../src/store/delivery.ts';

/** Two states of one product: the pack is renamed between them. */
export type Variant = 'bottle' | 'flask';

export const inputsFor = (record: string, variant: Variant): Inputs => ({
  record: { path: record, sha256: sha256(variant) },
  included: [{ path: 'maker.yaml', sha256: sha256('maker') }],
  law: { since: '2026-11-25', sha256: sha256('law') },
  program: { version: '0.1.0', templates: sha256('templates') },
});

/** Documents of some length, each naming its variant from end to end and carrying the fingerprint. */
export function documentsOf(variant: Variant): OutputFile[] {
  const fingerprint = fingerprintOf(inputsFor('', variant));
  const text = (name: string) => `fingerprint: ${fingerprint}\n${`${name} of ${variant}\n`.repeat(1500)}`;
  return [`label-${variant}.pdf`, 'sds.pdf', 'sds.html', 'sds.json', 'index.html'].map(name => ({
    name,
    kind: name === 'index.html' ? 'review' : 'distribution',
    bytes: text(name),
  }));
}
