import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Canvas } from '@napi-rs/canvas';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
let prepared = false;

/** Bar codes that an independent decoder finds on a rendered page. */
export async function decode(canvas: Canvas): Promise<readonly { format: string; text: string }[]> {
  if (!prepared) {
    const bytes = await readFile(wasm);
    await prepareZXingModule({
      overrides: {
        wasmBinary: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
      },
      fireImmediately: true,
    });
    prepared = true;
  }
  const image = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const found = await readBarcodes(image as never, {
    formats: ['EAN13', 'EAN8', 'UPCA', 'UPCE', 'ITF'],
    tryRotate: true,
    maxNumberOfSymbols: 4,
  });
  return found.map(({ format, text }) => ({ format, text }));
}
