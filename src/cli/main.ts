#!/usr/bin/env node
import * as module from 'node:module';
import { call } from './call.ts';
import { commandList } from './command-list.ts';
import { endWithOutput, processIo } from './process-io.ts';

// Newer engines keep what they compiled between runs.
(module as { enableCompileCache?: () => unknown }).enableCompileCache?.();
endWithOutput();
process.exitCode = await call(process.argv.slice(2), processIo(), commandList);
