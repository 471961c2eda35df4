import { isSourceTree, packageFilesBelow, readPackageFile } from '../environment/package-files.ts';
import { sha256 } from '../provenance/inputs.ts';

/** Which data and templates are inside this program. */
export interface Edition {
  /** Hash of the law data. */
  readonly law: string;
  /** Every date in the law data, sorted: between two of them no figure, entry or statement changes. */
  readonly dates: readonly string[];
  /** Hash of the templates. */
  readonly templates: string;
}

/** Set by the build: a bundle holds its data inside, and the files beside it may be others. */
declare const LABELWRIGHT_EDITION: Edition | undefined;

let known: Edition | null = null;

/** The edition of this program; it does not change while the program runs. */
export function edition(): Edition {
  known ??= typeof LABELWRIGHT_EDITION === 'undefined' ? readEdition() : LABELWRIGHT_EDITION;
  return known;
}

/**
 * The edition of the source tree, read from its files.
 * @throws Error outside a source tree
 */
export function readEdition(): Edition {
  if (!isSourceTree())
    throw new Error('the files of the law data are not here, and the build has not set their edition');
  const law = filesOf('hazard-data', /\.(json|tsv|ya?ml)$/).filter(
    path => !path.startsWith('hazard-data/sources/'),
  );
  const templates = filesOf('templates', /\.(hbs|json|ya?ml)$/).filter(
    path => !/^templates\/(demo|starter)\//.test(path),
  );
  const dates = law.flatMap(path => textOf(path).match(/\b(?:19|20)\d\d-\d\d-\d\d\b/g) ?? []);
  return { law: hashOf(law), dates: [...new Set(dates)].sort(), templates: hashOf(templates) };
}

/** Files of a folder of the package, by path from its root, sorted. */
const filesOf = (folder: string, wanted: RegExp): string[] =>
  packageFilesBelow(folder).filter(path => wanted.test(path));

const textOf = (path: string): string => readPackageFile(path).toString('latin1');

const hashOf = (files: readonly string[]): string =>
  sha256(files.map(path => `${path} ${sha256(readPackageFile(path))}`).join('\n'));
