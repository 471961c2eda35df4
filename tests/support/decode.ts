import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Canvas } from '@napi-rs/canvas';
import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';

const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
let prepared = false;

/** A bar code as an independent decoder reads it. */
export interface Decoded {
  readonly format: string;
  readonly text: string;
  /** `]C1` for GS1-128 (ISO/IEC 15424). */
  readonly identifier: string;
}

/** Every bar code that the decoder finds on a canvas. */
export async function decodeAll(canvas: Canvas, formats: ReaderOptions['formats']): Promise<Decoded[]> {
  if (!prepared) {
    const bytes = await readFile(wasm);
    const wasmBinary = bytes.buffer.slice(
      bytes.byteOffset,
      bytes.byteOffset + bytes.byteLength,
    ) as ArrayBuffer;
    await prepareZXingModule({ overrides: { wasmBinary }, fireImmediately: true });
    prepared = true;
  }
  const image = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const found = await readBarcodes(image as never, {
    formats: formats ?? [],
    tryRotate: true,
    tryHarder: true,
    maxNumberOfSymbols: 8,
    textMode: 'HRI',
  });
  return found.map(({ format, text, symbologyIdentifier }) => ({
    format,
    text,
    identifier: symbologyIdentifier,
  }));
}
