#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import { compiledFile, loadProgram } from './program.ts';

loadProgram(compiled()).run();

function compiled(): Buffer | undefined {
  try {
    return readFileSync(compiledFile);
  } catch {
    return undefined;
  }
}
