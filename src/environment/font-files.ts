import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliDecompress } from 'node:zlib';

const PACKAGE = '@expo-google-fonts/roboto-condensed';
const FILES = {
  regular: '400Regular/RobotoCondensed_400Regular.ttf',
  bold: '700Bold/RobotoCondensed_700Bold.ttf',
  italic: '400Regular_Italic/RobotoCondensed_400Regular_Italic.ttf',
} as const;

type Face = keyof typeof FILES;

/** The build packs the faces into `fonts/` beside the folder of this code; the source tree has them as a package. */
async function readFace(face: Face): Promise<Uint8Array> {
  const shipped = fileURLToPath(new URL(`../fonts/${basename(FILES[face])}.br`, import.meta.url));
  if (existsSync(shipped)) return promisify(brotliDecompress)(await readFile(shipped));
  return readFile(createRequire(import.meta.url).resolve(`${PACKAGE}/${FILES[face]}`));
}

/** The bytes of the faces that the package brings: static TrueType, regular, bold and italic. */
export const readFontFiles = async (): Promise<Readonly<Record<Face, Uint8Array>>> => {
  const [regular, bold, italic] = await Promise.all([
    readFace('regular'),
    readFace('bold'),
    readFace('italic'),
  ]);
  return { regular, bold, italic };
};
