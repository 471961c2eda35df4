import { nodeEnvironment } from '../../src/environment/node.ts';
import { deliver } from '../../src/store/deliver.ts';
import { OutputError } from '../../src/store/output-error.ts';
import { documentsOf, inputsFor, type Variant } from './_variants.ts';

// A process that puts packets into one folder, one after another, until its number is done or it is killed. Every one
// says that it has the same process id, as in containers that share a folder.
Object.defineProperty(process, 'pid', { value: 7 });
const [, , folder, record, times, first] = process.argv as [string, string, string, string, string, Variant];
const other = first === 'bottle' ? 'flask' : 'bottle';
process.stdout.write('ready\n');
for (let turn = 0; turn < Number(times); turn++) {
  const variant = turn % 2 === 0 ? first : other;
  try {
    const { refused } = await deliver(
      {
        folder,
        product: { name: 'Kerbstone Patio Cleaner', code: 'KP-946' },
        inputs: inputsFor(record, variant),
        asOf: '2026-11-25',
        files: documentsOf(variant),
        whole: true,
        missing: [],
        replace: false,
      },
      nodeEnvironment,
    );
    if (refused.length > 0) throw new Error(JSON.stringify(refused));
  } catch (error) {
    if (!(error instanceof OutputError)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 2;
  }
}
