import { dirname, isAbsolute, normalize, relative, sep } from 'node:path';
import type { Diagnostic } from '../report/diagnostic.ts';
import { resolvePath } from './_read-file.ts';
import type { RecordEnv } from './files.ts';
import type { Path, Places } from './places.ts';

const realPath = (env: RecordEnv, path: string): string => env.realPath?.(path) ?? normalize(path);

const within = (path: string, folder: string): boolean => {
  const way = relative(folder, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
};

/**
 * The file that a record names, where it may be read: a relative path that leads to a place in the folder tree of
 * the record, or in a folder that the caller allows. Links are resolved first.
 * @param root the record file that reading began with.
 */
export function includedFile(
  named: string,
  places: Places,
  path: Path,
  env: RecordEnv,
  root: string,
): string | Diagnostic {
  const file = resolvePath(named, places.file);
  if (file === null)
    return places.finding(
      path,
      'not-relative',
      `\`${named}\` is not a relative path`,
      `name the file as seen from this one, such as ${path.at(-1) === 'maker' ? 'maker.yaml' : 'drums/base.yaml'}`,
    );
  const folders = [dirname(root), ...(env.allow ?? [])].map(folder => realPath(env, folder));
  const real = realPath(env, file);
  if (folders.some(folder => within(real, folder))) return file;
  return places.finding(
    path,
    'outside-folder',
    `\`${named}\` leads out of the folder of the record; it is not read`,
    'keep the file below the folder of the record, or allow its folder: --allow DIR',
  );
}
