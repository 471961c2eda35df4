// Runs the test of the package on each engine that it promises: the binaries come from the registry of npm.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folder = mkdtempSync(join(tmpdir(), 'labelwright-engines-'));
const inherit = { stdio: 'inherit' };
try {
  for (const major of [20, 22, 24]) {
    const name = `node-${process.platform}-${process.arch}`;
    execFileSync(
      'npm',
      ['install', '--silent', '--no-save', '--prefix', folder, `engine-${major}@npm:${name}@${major}`],
      inherit,
    );
    const engine = join(folder, 'node_modules', `engine-${major}`, 'bin', 'node');
    console.log(`Node ${execFileSync(engine, ['--version'], { encoding: 'utf8' }).trim()}`);
    execFileSync('npx', ['vitest', 'run', 'tests/package'], {
      ...inherit,
      env: { ...process.env, ENGINE: engine },
    });
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
