// Licences of the packages that a bundle holds.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';

const packageOf = /node_modules\/((?:@[^/]+\/)?[^/]+)\/(?!.*node_modules\/)/;

/** Names of the packages whose code stands in a bundle, from the report of esbuild on it. */
export function packagesIn({ outputs }) {
  const names = Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) =>
      bytesInOutput > 0 ? (packageOf.exec(path)?.[1] ?? []) : [],
    ),
  );
  return [...new Set(names)].sort();
}

/** The licence files of a package; where it has none, what its description and its read-me say. */
function licenceOf(name) {
  const folder = `node_modules/${name}`;
  const files = readdirSync(folder);
  const { license, author, repository } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  if (!license) throw new Error(`${name} names no licence`);
  const found = files.filter(each => /^(licen[cs]e|copying|notice)/i.test(each));
  if (found.length > 0)
    return found.map(each => readFileSync(`${folder}/${each}`, 'utf8').trim()).join('\n\n');
  const by = typeof author === 'string' ? author : author?.name;
  const at = typeof repository === 'string' ? repository : repository?.url;
  const text = { MIT: mit, ISC: isc }[license];
  if (!text || !by) throw new Error(`${name} comes without its licence`);
  return `By ${by}, under the ${license} licence, of which the package holds no copy of its own (${at}). Its text:\n\n${text}`;
}

const mit = readFileSync('LICENSE', 'utf8')
  .slice(readFileSync('LICENSE', 'utf8').indexOf('Permission'))
  .trim();

const isc = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

/** Writes name, version and full licence of each package to one file; a package without a licence stops the build. */
export function writeNotices(file, names) {
  const notices = names.map(name => {
    const { version, license } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8'));
    return `${name} ${version} (${license})\n\n${licenceOf(name)}\n`;
  });
  const head = 'Software and fonts that come inside this package, each under its own licence.\n';
  writeFileSync(file, [head, ...notices].join(`\n${'-'.repeat(78)}\n\n`));
}
