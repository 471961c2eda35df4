import { UsageError } from './arguments.ts';

/**
 * Takes `--allow DIR` out of the arguments; every command has it, and it may be given several times.
 * @throws UsageError where the folder is missing.
 */
export function takeAllow(args: readonly string[]): { allow: string[]; rest: string[] } {
  const [allow, rest]: [string[], string[]] = [[], []];
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (arg.startsWith('--allow=')) allow.push(arg.slice('--allow='.length));
    else if (arg !== '--allow') rest.push(arg);
    else if (args[i + 1] === undefined) throw new UsageError('--allow needs a folder');
    else allow.push(args[++i]!);
  }
  return { allow, rest };
}
