import { writeFileSync } from 'node:fs';
import { packagePath } from '../reference/package-files.ts';
import { compiledFile, loadProgram } from './program.ts';

// A step of the build. The engine compiles a function when it is first called, so the program is run once before.
const { script, run } = loadProgram();
process.argv.splice(
  1,
  Number.POSITIVE_INFINITY,
  compiledFile,
  'classify',
  packagePath('templates', 'demo', 'patio-cleaner.yaml'),
);
process.stdout.write = () => true;
process.on('exit', () => writeFileSync(compiledFile, script.createCachedData()));
run();
