import { writeFileSync } from 'node:fs';
import { packagePath, packageRoot } from '../reference/package-files.ts';
import { generateAllocations } from './allocation.ts';
import { generateCommandList } from './command-list.ts';
import { generateExposure } from './exposure.ts';
import { generateHarmonised } from './harmonised.ts';
import { generatePublicTypes } from './public-types.ts';
import { readingsTable } from './readings.ts';
import { generateRecordSchema } from './record-schema.ts';
import { generateRegulatory } from './regulatory.ts';

// Everything that is made from something else in the tree; tests check that each file is current.
generateRecordSchema(packageRoot());
await generateCommandList(packageRoot());
generatePublicTypes(packageRoot());
generateHarmonised(packagePath('hazard-data'));
generateExposure(packagePath('hazard-data'));
generateRegulatory(packagePath('hazard-data'));
generateAllocations(packagePath('hazard-data'));
writeFileSync(packagePath('hazard-data', 'READINGS.md'), readingsTable());
