import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import { includedFile } from './_inclusion.ts';
import { findingsOf } from './_issues.ts';
import { rawMaterial } from './_lines.ts';
import { mended } from './_mended.ts';
import { readRecordFile } from './_read-file.ts';
import type { RecordEnv } from './files.ts';
import { rawMaterialSchema } from './formula-schema.ts';
import type { Path, Places } from './places.ts';
import type { RawMaterial } from './product-record.ts';
import type { Parsed } from './yaml.ts';

/** A product has some dozens of raw materials; more files than this is a mistake. */
const MAX_FILES = 500;
/** A raw material in a raw material and so on; deeper than this is a mistake. */
const MAX_CHAIN = 200;

/** Reads the raw materials that records name; each file once, chains that close on themselves are findings. */
export class Materials {
  readonly #env: RecordEnv;
  readonly #findings: Diagnostic[];
  readonly #read = new Map<string, RawMaterial | null>();
  readonly #chain: string[] = [];
  readonly #root: string;
  #opened = 0;
  #lost = false;

  constructor(env: RecordEnv, findings: Diagnostic[], root: string) {
    this.#env = env;
    this.#findings = findings;
    this.#root = root;
    this.#chain.push(root);
  }

  /** A raw material could not be had, or not its amounts. */
  get lost(): boolean {
    return this.#lost;
  }

  /** The raw material that a `use:` names; null where a finding says why there is none. */
  find(named: string, from: Places, path: Path): RawMaterial | null {
    const found = this.#find(named, from, path);
    this.#lost ||= found === null;
    return found;
  }

  #find(named: string, from: Places, path: Path): RawMaterial | null {
    const file = includedFile(named, from, path, this.#env, this.#root);
    if (typeof file !== 'string') {
      this.#findings.push(file);
      return null;
    }
    const complain = (code: string, message: string, hint?: string): null => {
      this.#findings.push(from.finding(path, code, message, hint));
      return null;
    };
    const from0 = this.#chain.indexOf(file);
    if (from0 >= 0) {
      const circle = [...this.#chain.slice(from0), file].join(' uses ');
      return complain(
        'circular-use',
        `a record contains itself: ${circle}`,
        'take one of these `use` lines out',
      );
    }
    const known = this.#read.get(file);
    if (known !== undefined) return known;
    if (this.#opened >= MAX_FILES)
      return complain('too-many-files', `the record names more than ${MAX_FILES} raw-material files`);
    if (this.#chain.length > MAX_CHAIN)
      return complain(
        'chain-too-long',
        `raw materials contain raw materials more than ${MAX_CHAIN} levels deep`,
        'write the composition of this one out',
      );
    this.#opened++;
    this.#chain.push(file);
    const material = this.#load(file, from, path);
    this.#chain.pop();
    this.#read.set(file, material);
    return material;
  }

  /** A warning about a line. */
  warn(finding: Diagnostic): void {
    this.#findings.push({ ...finding, severity: 'warning' });
  }

  /** Follows every `use:` of a formula as parsed, so that problems in files show beside those of the record. */
  follow(formula: unknown, places: Places, base: Path): void {
    if (!Array.isArray(formula)) return;
    formula.forEach((line: unknown, index) => {
      if (typeof line !== 'object' || line === null || !('use' in line)) return;
      const path = [...base, index, 'use'];
      if (typeof line.use === 'string') this.find(line.use, places, path);
      else if (typeof line.use === 'object' && line.use !== null && 'formula' in line.use)
        this.follow(line.use.formula, places, [...path, 'formula']);
    });
  }

  /** Reads the raw material that reading begins with. */
  read(file: string): RawMaterial | null {
    const parsed = readRecordFile(file, 'raw-material', this.#env);
    this.#findings.push(...parsed.diagnostics);
    return parsed.ok ? this.#checked(parsed.value, hasErrors(this.#findings)) : null;
  }

  #load(file: string, from: Places, path: Path): RawMaterial | null {
    const at = from.at(path);
    const parsed = readRecordFile(file, 'raw-material', this.#env, at);
    // Where the file is missing, the line that names it is shown.
    for (const finding of parsed.diagnostics)
      this.#findings.push(finding.at === at ? { ...finding, excerpt: from.excerpt(at) } : finding);
    return parsed.ok ? this.#checked(parsed.value, hasErrors(parsed.diagnostics)) : null;
  }

  #checked({ value, places, warnings }: Parsed, failed: boolean): RawMaterial | null {
    this.#findings.push(...warnings);
    const checked = rawMaterialSchema.safeParse(value);
    if (!checked.success) this.#findings.push(...findingsOf(checked.error.issues, value, places));
    this.follow((value as { formula?: unknown }).formula, places, ['formula']);
    const data = checked.success ? checked.data : mended(rawMaterialSchema, value, checked.error.issues);
    return failed || !data || this.#lost ? null : rawMaterial(data, places, [], this);
  }
}
