/** The head of an ICC profile and its table of tags (ICC.1:2022 7.2 and 7.3). */
const HEADER = 128;
const TAG = 12;
/** Tags without which an output profile says nothing of ink (ICC.1:2022 8.5.2). */
const NEEDED = ['A2B0', 'B2A0'];

const ascii = (bytes: Uint8Array, start: number): string =>
  String.fromCharCode(...bytes.subarray(start, start + 4));

/** What keeps bytes from being the profile of a CMYK press, in words that go on from the name of the file; null where nothing does. */
export function iccFault(bytes: Uint8Array): string | null {
  if (bytes.length < HEADER || ascii(bytes, 36) !== 'acsp') return 'is not an ICC profile';
  if (ascii(bytes, 12) !== 'prtr') return 'is not the profile of an output device';
  const space = ascii(bytes, 16).trim();
  if (space !== 'CMYK') return `is a profile for ${space}, not for CMYK`;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const size = view.getUint32(0);
  if (size > bytes.length) return `is cut off: ${bytes.length} bytes of ${size}`;
  const version = bytes[8]!;
  if (version !== 2 && version !== 4) return `is an ICC profile of version ${version}, not 2 or 4`;
  const count = bytes.length < HEADER + 4 ? 0 : view.getUint32(HEADER);
  if (HEADER + 4 + count * TAG > size) return 'is cut off in its table of tags';
  const found = new Set<string>();
  for (let at = 0; at < count; at += 1) {
    const entry = HEADER + 4 + at * TAG;
    if (view.getUint32(entry + 4) + view.getUint32(entry + 8) > size) return 'is cut off in one of its tags';
    found.add(ascii(bytes, entry));
  }
  const missing = NEEDED.filter(name => !found.has(name));
  return missing.length > 0 ? `has no ${missing.join(' and ')}, which an output profile needs` : null;
}
