import * as fontkit from 'fontkit';
import { PDFDocument, type PDFFont, type PDFPage } from 'pdf-lib';
import type { FrameItem } from '../layout/frame.ts';
import type { FaceName, FontLibrary } from '../text/glyph-run.ts';

/** fontkit 2 subsets at once; pdf-lib asks for a stream. */
const adapter = {
  create(bytes: Uint8Array) {
    const font = fontkit.create(bytes as Buffer) as unknown as { createSubset(): { encode(): Uint8Array } };
    const createSubset = font.createSubset.bind(font);
    font.createSubset = () => {
      const subset = createSubset() as { encode(): Uint8Array; encodeStream?: unknown };
      subset.encodeStream = () => {
        const listeners: Record<string, (data?: Uint8Array) => void> = {};
        const stream = {
          on(event: string, listener: (data?: Uint8Array) => void) {
            listeners[event] = listener;
            if (event === 'end')
              queueMicrotask(() => {
                listeners.data?.(subset.encode());
                listeners.end?.();
              });
            return stream;
          },
        };
        return stream;
      };
      return subset;
    };
    return font;
  },
};

/** A page by pdf-lib alone: the same faces embedded, one drawing call for each item. */
export async function barePage(fonts: FontLibrary, items: readonly FrameItem[]): Promise<void> {
  const document = await PDFDocument.create();
  document.registerFontkit(adapter as never);
  const faces = new Map<FaceName, PDFFont>();
  const page: PDFPage = document.addPage([400, 400]);
  for (const item of items) {
    if (item.kind !== 'text') {
      page.drawRectangle({ x: 10, y: 10, width: 5, height: 5 });
      continue;
    }
    const { face, text } = item.run;
    let font = faces.get(face);
    if (!font) {
      font = await document.embedFont(fonts.bytes(face), { subset: true });
      faces.set(face, font);
    }
    page.drawText(text, { x: item.x, y: item.y, size: item.size, font });
  }
  await document.save();
}
