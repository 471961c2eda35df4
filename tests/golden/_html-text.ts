const blocks =
  /<\/?(?:section|header|footer|p|ul|ol|li|table|caption|thead|tbody|tr|h[1-6]|title|main|div|body|dl|dt|dd)\b[^>]*>|<br>/g;

/** The text of a page, one line for each block, cells of a row set apart; attributes and styles are left out. */
export const htmlText = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .replace(/<h([1-6])\b[^>]*>/g, (_, level: string) => `\n${'#'.repeat(Number(level))} `)
    .replace(/<svg\b[^>]*aria-label="([^"]*)"[\s\S]*?<\/svg>/g, '[$1]')
    .replace(/<\/t[hd]>/g, ' | ')
    .replace(blocks, '\n')
    .replace(/<[^>]+>/g, '')
    .split('\n')
    .map(line => line.replace(/\s+/g, ' ').trim())
    .filter(line => line !== '')
    .join('\n');
