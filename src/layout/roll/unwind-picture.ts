import type { Millimetres } from '../../quantity/length.ts';

/** What the picture shows; lengths in millimetres. */
export interface UnwindPicture {
  readonly label: { readonly width: Millimetres; readonly height: Millimetres };
  readonly gap: Millimetres;
  readonly linerWidth: Millimetres;
  readonly coreDiameter: Millimetres;
  readonly diameter: Millimetres;
  readonly leadingEdge: 'top' | 'bottom' | 'left' | 'right';
  readonly wound: 'out' | 'in';
  /** Words of the picture, in the language of its reader. */
  readonly captions: {
    readonly title: string;
    /** What is not certain; empty where all is. */
    readonly doubt: string;
    /** On each label, at its top. */
    readonly top: string;
    readonly name: string;
    readonly direction: string;
    readonly pitch: string;
    readonly liner: string;
    readonly roll: string;
  };
}

const SHOWN = 3;
/** Width of a letter of a common face, in ems, rather too much than too little. */
const LETTER = 0.62;
/** The top of the label points this way, in degrees clockwise from up, when the web runs to the right. */
const TURN = { top: 90, right: 0, bottom: -90, left: 180 } as const;

const escaped = (text: string): string =>
  text.replace(/[&<>"]/gu, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign);

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

/** A roll from the side and three labels on the web from above, to scale, as they come off the roll: SVG. */
export function unwindPicture(picture: UnwindPicture): string {
  const { label, gap, linerWidth, coreDiameter, diameter, leadingEdge, wound, captions } = picture;
  const sideways = leadingEdge === 'left' || leadingEdge === 'right';
  const along = sideways ? label.width : label.height;
  const across = sideways ? label.height : label.width;
  const pitch = along + gap;
  const web = SHOWN * pitch + gap;
  const type = Math.max(4, web / 60);
  const margin = 2 * type;
  const left = margin;
  const lettering = (letters: number) => letters * type * LETTER;
  const width =
    Math.max(
      web,
      diameter + 1.5 * pitch,
      lettering(captions.title.length + 2),
      lettering(captions.doubt.length),
      diameter + type + lettering(captions.roll.length),
    ) +
    2 * margin;
  const out: string[] = [];
  const text = (x: number, y: number, content: string, more = '') =>
    out.push(
      `<text x="${rounded(x)}" y="${rounded(y)}" font-size="${rounded(type)}"${more}>${escaped(content)}</text>`,
    );
  const line = (x1: number, y1: number, x2: number, y2: number, more = '') =>
    out.push(
      `<line x1="${rounded(x1)}" y1="${rounded(y1)}" x2="${rounded(x2)}" y2="${rounded(y2)}" stroke="#222" stroke-width="${rounded(type / 12)}"${more}/>`,
    );
  text(left, margin + type, captions.title, ' font-weight="bold"');

  // From the side: the web leaves at the top and runs to the right.
  const radius = diameter / 2;
  if (captions.doubt !== '') text(left, margin + 2.6 * type, captions.doubt, ' fill="#b22"');
  const middleY = margin + 5 * type + radius;
  const middleX = left + radius;
  for (const [r, fill] of [
    [radius, '#e8e4da'],
    [coreDiameter / 2, '#b9a98c'],
    [coreDiameter / 2 - 4, '#fff'],
  ] as const)
    if (r > 0)
      out.push(
        `<circle cx="${rounded(middleX)}" cy="${rounded(middleY)}" r="${rounded(r)}" fill="${fill}" stroke="#222" stroke-width="${rounded(type / 12)}"/>`,
      );
  const top = middleY - radius;
  const end = width - margin;
  line(middleX, top, end, top);
  const thick = type / 3;
  for (let x = middleX + gap; x + along <= end; x += pitch)
    out.push(
      `<rect x="${rounded(x)}" y="${rounded(wound === 'out' ? top - thick : top)}" width="${rounded(along)}" height="${rounded(thick)}" fill="#1f4e79"/>`,
    );
  text(middleX + radius + type, middleY, captions.roll);

  // From above, print towards the reader.
  const webTop = middleY + radius + 3 * type;
  arrow(left, webTop, Math.min(web, 12 * type), type, out);
  text(left + Math.min(web, 12 * type) + type, webTop + type * 0.35, captions.direction);
  const strip = webTop + 2 * type;
  out.push(
    `<rect x="${rounded(left)}" y="${rounded(strip)}" width="${rounded(web)}" height="${rounded(linerWidth)}" fill="#f3efe6" stroke="#222" stroke-width="${rounded(type / 12)}"/>`,
  );
  for (let index = 0; index < SHOWN; index += 1) {
    const x = left + gap + index * pitch;
    const y = strip + (linerWidth - across) / 2;
    out.push(
      `<rect x="${rounded(x)}" y="${rounded(y)}" width="${rounded(along)}" height="${rounded(across)}" rx="2" fill="#fff" stroke="#1f4e79" stroke-width="${rounded(type / 8)}"/>`,
    );
    // Words stand as on the label: in its own axes, turned with it.
    const size = Math.min(label.width / 10, label.height / 5);
    out.push(
      `<g transform="translate(${rounded(x + along / 2)} ${rounded(y + across / 2)}) rotate(${TURN[leadingEdge]})" text-anchor="middle" fill="#1f4e79">`,
      `<text y="${rounded(-label.height / 2 + 1.4 * size)}" font-size="${rounded(size)}">${escaped(captions.top)}</text>`,
      `<text y="${rounded(size * 0.4)}" font-size="${rounded(Math.min(size * 1.2, (label.width * 1.6) / Math.max(1, captions.name.length)))}" font-weight="bold">${escaped(captions.name)}</text>`,
      '</g>',
    );
  }
  const below = strip + linerWidth + type;
  const from = left + gap;
  line(from, below, from + pitch, below);
  line(from, below - type / 2, from, below + type / 2);
  line(from + pitch, below - type / 2, from + pitch, below + type / 2);
  text(from, below + 1.6 * type, captions.pitch);
  text(from, below + 3.2 * type, captions.liner);
  const height = below + 4 * type + margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${rounded(width)}mm" height="${rounded(height)}mm" viewBox="0 0 ${rounded(width)} ${rounded(height)}" font-family="sans-serif" role="img" aria-label="${escaped(captions.title)}">`,
    `<rect width="100%" height="100%" fill="#fff"/>`,
    ...out,
    '</svg>',
    '',
  ].join('\n');
}

/** An arrow to the right. */
function arrow(x: number, y: number, length: number, size: number, out: string[]): void {
  const points = [
    [x, y - size / 6],
    [x + length - size, y - size / 6],
    [x + length - size, y - size / 2],
    [x + length, y],
    [x + length - size, y + size / 2],
    [x + length - size, y + size / 6],
    [x, y + size / 6],
  ];
  out.push(`<polygon points="${points.map(point => point.map(rounded).join(',')).join(' ')}" fill="#b22"/>`);
}
