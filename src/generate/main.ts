import { writeFileSync } from 'node:fs';
import { basisIds } from '../reference/basis.ts';
import { packagePath, packageRoot, readPackageFile } from '../reference/package-files.ts';
import { generateAllocations } from './allocation.ts';
import { generateCommandList } from './command-list.ts';
import { generateExposure } from './exposure.ts';
import { generateHarmonised } from './harmonised.ts';
import { generateHazardousMaterials } from './hazardous-materials.ts';
import { generatePublicTypes } from './public-types.ts';
import { readingsTable } from './readings.ts';
import { generateRecordSchema } from './record-schema.ts';
import { generateRegulatory } from './regulatory.ts';
import { generateSheetSchema } from './sheet-schema.ts';
import { readThresholds } from './thresholds-schema.ts';

// The figures of each basis are checked before anything is made of them.
for (const id of basisIds)
  readThresholds(JSON.parse(readPackageFile('hazard-data', id, 'thresholds.json').toString()));

// Everything that is made from something else in the tree; tests check that each file is current.
generateRecordSchema(packageRoot());
generateSheetSchema(packageRoot());
await generateCommandList(packageRoot());
generatePublicTypes(packageRoot());
generateHarmonised(packagePath('hazard-data'));
generateExposure(packagePath('hazard-data'));
generateRegulatory(packagePath('hazard-data'));
generateAllocations(packagePath('hazard-data'));
generateHazardousMaterials(packagePath('hazard-data'));
writeFileSync(packagePath('hazard-data', 'READINGS.md'), readingsTable());
