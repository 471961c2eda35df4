import { writeFileSync } from 'node:fs';
import { packagePath, packageRoot } from '../reference/package-files.ts';
import { generateAllocations } from './allocation.ts';
import { generateExposure } from './exposure.ts';
import { generateHarmonised } from './harmonised.ts';
import { generateHazardousMaterials } from './hazardous-materials.ts';
import { readingsTable } from './readings.ts';
import { generateRecordSchema } from './record-schema.ts';

// Everything that is made from something else in the tree; tests check that each file is current.
generateRecordSchema(packageRoot());
generateHarmonised(packagePath('hazard-data', 'substances'));
generateExposure(packagePath('hazard-data', 'exposure'));
generateAllocations(packagePath('hazard-data'));
generateHazardousMaterials(packagePath('hazard-data'));
writeFileSync(packagePath('hazard-data', 'READINGS.md'), readingsTable());
