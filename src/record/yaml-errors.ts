import type { ErrorCode, YAMLError } from 'yaml';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { Places } from './places.ts';

interface Wording {
  readonly message: string;
  readonly hint: string;
}

const indent: Wording = {
  message: 'the lines here do not line up',
  hint: 'keys of one group begin in the same column; indent with spaces',
};
const bracket: Wording = {
  message: 'a bracket or brace is not closed here or shortly before',
  hint: 'check that every [ has its ] and every { its }',
};
const colon: Wording = {
  message: 'this is not `key: value`',
  hint: 'write a key, a colon and a space, then the value',
};
const needsQuotes = (message: string): Wording => ({
  message,
  hint: 'put the whole text in "double quotes"',
});
const tab: Wording = { message: 'the line is indented with a tab', hint: 'indent with spaces' };

const strangeSpace: Wording = {
  message: 'the line holds a no-break space or another space that is not a plain one',
  hint: 'delete the space after the colon or at the start of the line and type it anew',
};

/** By the parser's code and, where one code means several things, by its text. */
const wordings: readonly (readonly [ErrorCode, RegExp | null, Wording])[] = [
  ['TAB_AS_INDENT', null, tab],
  [
    'MISSING_CHAR',
    /closing/,
    {
      message: 'a quote is opened and not closed',
      hint: 'look in this line and above for a quote without its partner',
    },
  ],
  ['MISSING_CHAR', /^Flow/, bracket],
  ['MISSING_CHAR', /without - indicator/, indent],
  ['MISSING_CHAR', /,/, { message: 'a comma is missing', hint: 'separate entries with commas' }],
  ['MISSING_CHAR', null, colon],
  ['BAD_INDENT', /^Flow/, bracket],
  ['BAD_INDENT', null, indent],
  [
    'BLOCK_IN_FLOW',
    null,
    { message: 'a comma or a bracket is missing here', hint: 'separate entries with commas' },
  ],
  [
    'UNEXPECTED_TOKEN',
    /Block scalar|Not a YAML token/,
    needsQuotes('a text that begins with > or | needs quotes'),
  ],
  [
    'UNEXPECTED_TOKEN',
    /node end/,
    {
      message: 'the text goes on after its closing quote',
      hint: 'put the whole text in one pair of "double quotes", with \\" for a quote inside it',
    },
  ],
  [
    'UNEXPECTED_TOKEN',
    /block-seq-ind/,
    {
      message: 'a list begins in the line of its key',
      hint: 'begin the `-` in a line of its own, or write [a, b]',
    },
  ],
  ['BAD_ALIAS', null, needsQuotes('a text that begins with * or & needs quotes')],
  ['MULTIPLE_ANCHORS', null, needsQuotes('a text that begins with & needs quotes')],
  ['BAD_SCALAR_START', null, needsQuotes('a text may not begin with this character without quotes')],
  ['TAG_RESOLVE_FAILED', null, needsQuotes('a text that begins with ! needs quotes')],
  ['MULTIPLE_TAGS', null, needsQuotes('a text that begins with ! needs quotes')],
  ['BAD_DIRECTIVE', null, needsQuotes('a line may not begin with %')],
  [
    'BAD_DQ_ESCAPE',
    null,
    {
      message: 'a backslash stands in double quotes',
      hint: "write the text in 'single quotes', or the backslash twice",
    },
  ],
  ['BLOCK_AS_IMPLICIT_KEY', /compact/, needsQuotes('a second colon, or a line that is indented too far')],
  ['BLOCK_AS_IMPLICIT_KEY', null, colon],
  ['MULTILINE_IMPLICIT_KEY', null, colon],
  ['KEY_OVER_1024_CHARS', null, colon],
];

const unknown: Wording = {
  message: 'the file cannot be read from here on',
  hint: 'check quotes, brackets and indentation here and in the line above',
};

/** White space that looks right and is not: a tab as indent, a no-break space beside a key. */
function oddSpace(line: string): Wording | null {
  if (/^ *\t\s*[^\s#]/.test(line)) return tab;
  return /^[\s-]*[\u00a0\u2000-\u200b\u202f\u3000]|:[\u00a0\u2000-\u200b\u202f\u3000]/.test(line)
    ? strangeSpace
    : null;
}

/** An error of the YAML parser in the words of someone who fills in a record. */
export function yamlFinding(error: YAMLError, text: string, places: Places): Diagnostic {
  let offset = Math.min(error.pos[0], text.length);
  // An error found at the end of the file is shown at the end of its last line with text.
  const end = text.trimEnd().length;
  if (offset > end) offset = end;
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1).split('\n', 1)[0]!;
  const known = wordings.find(
    ([code, pattern]) => code === error.code && (pattern === null || pattern.test(error.message)),
  );
  const wording = oddSpace(line) ?? known?.[2] ?? unknown;
  return places.findingAt(offset, 'not-yaml', wording.message, wording.hint);
}
