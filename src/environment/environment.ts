/** The file system as outputs see it. Every operation may throw an error with a code of the system, such as `ENOSPC`. */
export interface OutputFiles {
  /** What stands at a path; null where nothing does. */
  kind(path: string): 'file' | 'folder' | 'other' | null;
  /** The bytes of a file; null where there is none. */
  read(path: string): Uint8Array | null;
  /** Names of what stands in a folder, sorted; none where there is no such folder. */
  list(folder: string): readonly string[];
  /** Makes a folder with those above it; gives the topmost that was not there, or null. */
  makeFolder(folder: string): string | null;
  /** Writes a file that is not there yet and flushes it to the disk. */
  writeFile(path: string, bytes: Uint8Array): void;
  /** Gives a file another name in one step, also over a file of that name. */
  rename(from: string, to: string): void;
  /** Gives a file a name that no other has, in one step; false, and the file gone, where another has it. */
  claim(from: string, to: string): boolean;
  /** Removes a file, or a folder with all in it; nothing happens where nothing stands. */
  remove(path: string): void;
  /** Removes a folder where nothing is in it. */
  removeEmpty(folder: string): void;
  /** Flushes the names in a folder to the disk. */
  flushFolder(folder: string): void;
  /** The path without links; as it is where nothing stands. */
  realPath(path: string): string;
}

/** A lock that is held. */
export interface Held {
  /** Whether it is still ours: false where another took it over, as after a long standstill of this process. */
  readonly ours: () => boolean;
  release(): Promise<void>;
}

/** What a program gets from the machine it runs on, as an argument. */
export interface Environment {
  readonly files: OutputFiles;
  /** The instant. */
  readonly now: () => Date;
  /** A name that nobody else draws: letters and digits, at least 64 bits of chance. */
  readonly randomName: () => string;
  /**
   * Takes the lock that stands at a path, waiting while another holds it.
   * @throws with code `ELOCKED` where it was not let go in good time.
   */
  readonly lock: (path: string) => Promise<Held>;
}
