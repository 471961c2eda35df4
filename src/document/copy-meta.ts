import type { CopyMark } from '../provenance/copy-mark.ts';

/** The mark of a copy as metadata of a web page. */
export const copyMeta = ({ kind, fingerprint }: CopyMark): string =>
  `<meta name="labelwright:copy" content="${kind}">\n<meta name="labelwright:fingerprint" content="${fingerprint}">`;

/** The mark of a copy as a comment of Markdown, HTML or SVG. */
export const copyComment = ({ kind, fingerprint }: CopyMark): string =>
  `<!-- labelwright copy: ${kind}; fingerprint: ${fingerprint} -->`;
