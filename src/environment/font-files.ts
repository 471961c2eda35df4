import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';

const PACKAGE = '@expo-google-fonts/roboto-condensed';
const FILES: Readonly<Record<'regular' | 'bold' | 'italic', string>> = {
  regular: '400Regular/RobotoCondensed_400Regular.ttf',
  bold: '700Bold/RobotoCondensed_700Bold.ttf',
  italic: '400Regular_Italic/RobotoCondensed_400Regular_Italic.ttf',
};

/** The build lays the faces into `fonts/` beside the folder of this code; the source tree has them as a package. */
function fontPath(face: keyof typeof FILES): string {
  const shipped = fileURLToPath(new URL(`../fonts/${basename(FILES[face])}`, import.meta.url));
  return existsSync(shipped) ? shipped : createRequire(import.meta.url).resolve(`${PACKAGE}/${FILES[face]}`);
}

/** The bytes of the faces that the package brings: static TrueType, regular, bold and italic. */
export const readFontFiles = async (): Promise<Readonly<Record<keyof typeof FILES, Uint8Array>>> => {
  const read = (face: keyof typeof FILES) => readFile(fontPath(face));
  const [regular, bold, italic] = await Promise.all([read('regular'), read('bold'), read('italic')]);
  return { regular, bold, italic };
};
