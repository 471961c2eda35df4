/** Bytes as ICC profiles hold numbers, most significant first. */
const big = (value: number, bytes: number): number[] =>
  Array.from({ length: bytes }, (_, at) => Math.floor(value / 256 ** (bytes - 1 - at)) % 256);
const ascii = (text: string): number[] => [...new TextEncoder().encode(text)];

/** A table of 8 bits (ICC.1:2022 10.11, `mft1`) with two grid points a channel; its colors are invented. */
function table(inputs: number, outputs: number): number[] {
  const matrix = [1, 0, 0, 0, 1, 0, 0, 0, 1].flatMap(value => big(value * 65536, 4));
  const ramp = Array.from({ length: 256 }, (_, at) => at);
  const curves = (count: number) => Array.from({ length: count }, () => ramp).flat();
  const grid = Array.from({ length: 2 ** inputs }, (_, point) => {
    const ink = [...point.toString(2)].filter(digit => digit === '1').length / inputs;
    return Array.from({ length: outputs }, (_, at) =>
      outputs === 3 ? (at === 0 ? Math.round(255 * (1 - ink)) : 128) : Math.round(255 * (1 - ink)),
    );
  }).flat();
  return [
    ...ascii('mft1'),
    ...big(0, 4),
    inputs,
    outputs,
    2,
    0,
    ...matrix,
    ...curves(inputs),
    ...grid,
    ...curves(outputs),
  ];
}

export interface ProfileHead {
  readonly deviceClass?: string;
  readonly space?: string;
  readonly tags?: readonly string[];
}

/**
 * A small but whole ICC profile of version 2 for a press that does not exist: for tests alone, no printing condition
 * of any registry.
 */
export function pressProfile({
  deviceClass = 'prtr',
  space = 'CMYK',
  tags = ['desc', 'cprt', 'wtpt', 'A2B0', 'B2A0'],
}: ProfileHead = {}): Uint8Array {
  const name = 'Invented press';
  const contents: Record<string, number[]> = {
    desc: [
      ...ascii('desc'),
      ...big(0, 4),
      ...big(name.length + 1, 4),
      ...ascii(name),
      0,
      ...big(0, 4),
      ...big(0, 4),
      ...big(0, 2),
      0,
      ...big(0, 67),
    ],
    cprt: [...ascii('text'), ...big(0, 4), ...ascii('Public domain'), 0],
    wtpt: [
      ...ascii('XYZ '),
      ...big(0, 4),
      ...[0.9642, 1, 0.8249].flatMap(v => big(Math.round(v * 65536), 4)),
    ],
    A2B0: table(4, 3),
    B2A0: table(3, 4),
  };
  const data: number[] = [];
  const entries: number[] = [];
  const start = 128 + 4 + 12 * tags.length;
  for (const tag of tags) {
    const content = contents[tag]!;
    entries.push(...ascii(tag), ...big(start + data.length, 4), ...big(content.length, 4));
    data.push(...content, ...big(0, (4 - (content.length % 4)) % 4));
  }
  const head = new Uint8Array(128);
  const put = (at: number, bytes: readonly number[]) => head.set(bytes, at);
  put(0, big(start + data.length, 4));
  put(8, [2, 0x40, 0, 0]);
  put(12, ascii(deviceClass));
  put(16, ascii(space));
  put(20, ascii('Lab '));
  put(36, ascii('acsp'));
  put(
    68,
    [0.9642, 1, 0.8249].flatMap(v => big(Math.round(v * 65536), 4)),
  );
  return Uint8Array.from([...head, ...big(tags.length, 4), ...entries, ...data]);
}
