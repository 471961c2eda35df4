import type { RecordEnv } from '../record/files.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic, Position } from '../report/diagnostic.ts';
import type { ArtFiles } from './label-art.ts';

/** Largest file of artwork that is read, in bytes; common practice, no source. */
const MOST = 100_000_000;

/** The files of artwork that a record names, and what is wrong with them as files. */
export interface ReadArtFiles {
  readonly files: ArtFiles;
  readonly findings: readonly Diagnostic[];
}

/**
 * Reads artwork and logo of a record, so that they are among its inputs. One that cannot be read is a warning: without
 * it everything but the label can be made.
 */
export function artFilesOf({ copy, maker }: ProductRecord, env: RecordEnv): ReadArtFiles {
  const files = new Map<string, Uint8Array>();
  const findings: Diagnostic[] = [];
  const named: readonly (readonly [string | null | undefined, Position | undefined])[] = [
    [copy.artwork?.file, copy.artwork?.at],
    [maker?.brand?.logo, maker?.brand ? { file: maker.brand.file } : undefined],
  ];
  for (const [file, at] of named) {
    if (!file) continue;
    const fault = read(file, env, files);
    if (fault)
      findings.push({
        code: 'art-missing',
        severity: 'warning',
        message: `${file} ${fault}: no label can be made with it`,
        hint: 'put the file there, or correct its path in the record',
        at,
      });
  }
  return { files, findings };
}

function read(file: string, env: RecordEnv, into: Map<string, Uint8Array>): string | null {
  const stat = env.statFile(file);
  if (stat.kind === 'missing') return 'is not there';
  if (stat.kind === 'directory') return 'is a folder';
  if (stat.kind === 'unreadable') return `cannot be read (${stat.reason})`;
  if (stat.bytes > MOST) return `has more than ${MOST / 1_000_000} MB`;
  try {
    into.set(file, env.readFile(file));
    return null;
  } catch (error) {
    return `cannot be read (${(error as Error).message})`;
  }
}
