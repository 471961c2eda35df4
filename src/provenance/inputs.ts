import { createHash } from 'node:crypto';

/** A file that was read, with the hash of its bytes. */
export interface InputFile {
  readonly path: string;
  /** SHA-256, 64 hexadecimal digits. */
  readonly sha256: string;
}

/** The files of the maker: the record, and what it names. */
export interface Sources {
  readonly record: InputFile;
  /** Maker and raw materials, by path as seen from the record. */
  readonly included: readonly InputFile[];
}

/** Which texts of the law, in which edition of the data. */
export interface LawVersion {
  /** YYYY-MM-DD: the newest date in the data up to which the law was asked; until the next nothing can differ. */
  readonly since: string;
  /** Hash of the tables of all bases. */
  readonly sha256: string;
}

/** The program that made a document. */
export interface ProgramVersion {
  readonly version: string;
  /** Hash of the templates. */
  readonly templates: string;
}

/** All from which documents are made. */
export interface Inputs extends Sources {
  readonly law: LawVersion;
  readonly program: ProgramVersion;
}

export const sha256 = (bytes: Uint8Array | string): string =>
  createHash('sha256').update(bytes).digest('hex');

/**
 * One hash of all inputs, 64 hexadecimal digits. Where the record lies is no part of it: the same files in another
 * folder give the same.
 */
export const fingerprintOf = ({ record, included, law, program }: Inputs): string =>
  sha256(
    JSON.stringify([
      record.sha256,
      [...included].map(({ path, sha256: hash }) => [path, hash]).sort(([a], [b]) => (a! < b! ? -1 : 1)),
      [law.since, law.sha256],
      [program.version, program.templates],
    ]),
  );
