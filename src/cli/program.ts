import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';

/** The command line in one file, as the build leaves it beside this one. */
const program = fileURLToPath(new URL('./program.cjs', import.meta.url));

/** What the engine made of it when it was built. */
export const compiledFile = `${program}.compiled`;

/**
 * The program, not yet run. It starts in about three quarters of the time with what `compiledFile` holds; another
 * version of Node.js sees that it is not its own, and compiles the text.
 */
export function loadProgram(cachedData?: Buffer) {
  const text = readFileSync(program, 'latin1');
  const script = new Script(`(function (require, __filename) {${text}\n})`, {
    filename: program,
    cachedData,
  });
  return { script, run: () => void script.runInThisContext()(createRequire(program), program) };
}
