/** Longest line that is kept, in characters; a record has far fewer. What is beyond is counted, not kept. */
export const LONGEST_LINE = 4_000_000;

/**
 * Lines of a stream of UTF-8 bytes, without their ends. Reads on only when the next line is asked for, and holds no
 * more than a piece of the stream and one line. A line longer than `LONGEST_LINE` comes cut, one character over.
 */
export async function* readLines(stream: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let parts: string[] = [];
  let length = 0;
  const keep = (part: string) => {
    const kept = part.slice(0, Math.max(0, LONGEST_LINE + 1 - length));
    if (kept !== '') parts.push(kept);
    length += kept.length;
  };
  const take = () => {
    const line = parts.join('');
    [parts, length] = [[], 0];
    return line.endsWith('\r') ? line.slice(0, -1) : line;
  };
  for await (const bytes of stream) {
    const text = decoder.decode(bytes, { stream: true });
    let from = 0;
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      keep(text.slice(from, end));
      yield take();
      from = end + 1;
    }
    keep(text.slice(from));
  }
  keep(decoder.decode());
  if (length > 0) yield take();
}
