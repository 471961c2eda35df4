const BLOCK = 100;

/** UTF-16, big-endian, in hexadecimal digits. */
export const utf16 = (text: string): string =>
  Array.from({ length: text.length }, (_, index) =>
    text.charCodeAt(index).toString(16).toUpperCase().padStart(4, '0'),
  ).join('');

/**
 * A ToUnicode map for two-byte codes (ISO 32000-1 9.10.3), in blocks of at most 100 entries as that clause demands.
 * @param texts what each code stands for; a code without text is left out
 */
export const toUnicode = (texts: readonly string[]): string => {
  const entries = texts.flatMap((text, code) =>
    text === '' ? [] : [`<${code.toString(16).toUpperCase().padStart(4, '0')}> <${utf16(text)}>`],
  );
  const blocks: string[] = [];
  for (let start = 0; start < entries.length; start += BLOCK) {
    const block = entries.slice(start, start + BLOCK);
    blocks.push(`${block.length} beginbfchar\n${block.join('\n')}\nendbfchar\n`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <FFFF>
endcodespacerange
${blocks.join('')}endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
};
