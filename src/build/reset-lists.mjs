// Before lists are generated: takes out of them what may no longer be there, so that the tree can be built.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const commands = 'src/cli/command-list.ts';
const entry = / {2}\{\n(?: {4}.*\n)* {4}load: \(\) => import\('\.\/(.*)'\),\n {2}\},\n/g;
const text = readFileSync(commands, 'utf8');
writeFileSync(
  commands,
  text.replace(entry, (row, file) => (existsSync(`src/cli/${file}`) ? row : '')),
);
writeFileSync('src/public-types.ts', 'export type {};\n');
