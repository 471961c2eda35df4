import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFString,
} from 'pdf-lib';

/** The structure tree of a PDF file as an indented list: type, text for readers, attributes, pieces of content. */
export async function pdfTagTree(bytes: Uint8Array): Promise<string> {
  const { context, catalog } = await PDFDocument.load(bytes, { updateMetadata: false });
  const look = (value: PDFObject | undefined): PDFObject | undefined => value && context.lookup(value);
  const get = (dict: PDFDict, key: string): PDFObject | undefined => look(dict.get(PDFName.of(key)));
  const told = (value: PDFObject | undefined): string =>
    value instanceof PDFHexString || value instanceof PDFString ? value.decodeText() : String(value ?? '');
  const lines: string[] = [];

  const kidsOf = (dict: PDFDict): PDFObject[] => {
    const kids = get(dict, 'K');
    if (kids instanceof PDFArray) return kids.asArray().map(kid => look(kid)!);
    return kids ? [kids] : [];
  };
  const attributes = (value: PDFObject | undefined): string => {
    if (value instanceof PDFArray)
      return value
        .asArray()
        .map(each => attributes(look(each)))
        .join('');
    if (!(value instanceof PDFDict)) return '';
    return value
      .entries()
      .filter(([key]) => key !== PDFName.of('O'))
      .map(([key, each]) => ` ${key}=${each}`)
      .join('');
  };
  const walk = (dict: PDFDict, depth: number): void => {
    const kids = kidsOf(dict);
    const isContent = (kid: PDFObject) =>
      kid instanceof PDFNumber || (kid instanceof PDFDict && !kid.has(PDFName.of('S')));
    const content = kids.filter(isContent).length;
    const words = ['Alt', 'Lang', 'ActualText', 'T']
      .filter(key => dict.has(PDFName.of(key)))
      .map(key => ` ${key}=${told(get(dict, key))}`)
      .join('');
    lines.push(
      `${'  '.repeat(depth)}${get(dict, 'S') ?? '/StructTreeRoot'}${words}${attributes(get(dict, 'A'))}${content > 0 ? ` (${content})` : ''}`,
    );
    for (const kid of kids) if (!isContent(kid)) walk(kid as PDFDict, depth + 1);
  };
  walk(get(catalog, 'StructTreeRoot') as PDFDict, 0);
  return lines.join('\n');
}
