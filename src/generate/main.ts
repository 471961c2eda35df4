import { writeFileSync } from 'node:fs';
import {
  packageFilesBelow,
  packagePath,
  packageRoot,
  readPackageFile,
} from '../environment/package-files.ts';
import { generateAllocations } from './allocation.ts';
import { generateCommandList } from './command-list.ts';
import { dataFaults, tableFaults } from './data-schemas.ts';
import { generateExposure } from './exposure.ts';
import { generateHarmonised } from './harmonised.ts';
import { generateHazardousMaterials } from './hazardous-materials.ts';
import { generatePublicTypes } from './public-types.ts';
import { readingsTable } from './readings.ts';
import { generateRecordSchema } from './record-schema.ts';
import { generateRegulatory } from './regulatory.ts';
import { generateSheetSchema } from './sheet-schema.ts';

// Written by hand or compiled: a file that holds anything else than its schema says is refused.
function checkData(): void {
  const faults = packageFilesBelow('hazard-data').flatMap(path => {
    const text = readPackageFile(path).toString();
    const name = path.slice('hazard-data/'.length);
    if (path.endsWith('.json')) return dataFaults(name, JSON.parse(text));
    return path.endsWith('.tsv') && !name.startsWith('sources/') ? tableFaults(name, text) : [];
  });
  if (faults.length > 0) throw new Error(faults.join('\n'));
}

checkData();

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
checkData();
