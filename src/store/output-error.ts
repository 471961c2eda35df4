/** Why an output folder cannot be written or read, as a code of the system (`ENOSPC`) or of a lock (`ELOCKED`). */
export class OutputError extends Error {
  readonly folder: string;
  readonly code: string;

  constructor(folder: string, error: unknown, verb: 'write to' | 'read' = 'write to') {
    const { code = '', message } = error as NodeJS.ErrnoException;
    const reason = (verb === 'read' ? unread[code] : undefined) ?? reasons[code] ?? message;
    super(`cannot ${verb} ${folder}: ${reason}`);
    this.folder = folder;
    this.code = code;
  }
}

const unread: Readonly<Record<string, string>> = {
  EACCES: 'you have no permission to read there',
  EPERM: 'you have no permission to read there',
};

const reasons: Readonly<Record<string, string>> = {
  EEXIST: 'a file of that name is in the way; name a folder',
  ENOTDIR: 'a part of that path is a file, not a folder',
  EISDIR: 'a folder stands where a file is to be written',
  EACCES: 'you have no permission to write there',
  EPERM: 'you have no permission to write there',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EFBIG: 'the file would be too large',
  EIO: 'the disk fails',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'no folder can be made there',
  ELOCKED: 'another run is writing there and does not end',
};
