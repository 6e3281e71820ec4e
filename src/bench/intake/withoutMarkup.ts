/** HTML mail as the lines that its reader saw. */
import { convert, type FormatCallback, type HtmlToTextOptions } from 'html-to-text';

/** Deeper nesting than any mail program writes; what lies below is left out. */
const DEEPEST = 200;
/** Elements left open, more than a letter of a whole year's table has; the parser's time grows with their square. */
const MOST_OPENED = 10_000;

const BLANK_LINE = /<(p|div)\b[^<>]*>(?:\s|&nbsp;|&#160;|<br\b[^<>]*>|<\/?(?:o:p|span)\b[^<>]*>)*<\/\1\s*>/gi;
const BLANK_PARAGRAPH = /^<p/i;
const HTML =
  /^\s*<(?:!--|(?:!doctype\s+html|html|head|body|meta|style|div|p|pre|span|font|table|ul|ol|blockquote|br|a|b|h[1-6])\b)/i;

/** True for a text that is a page of HTML, such as a mail saved by its reader. */
export const isHtml = (text: string): boolean => HTML.test(text);

/** The text of an HTML mail, a line for each line that was seen; only ever shown and read as text. */
export function withoutMarkup(html: string): string {
  if (opened(html) > MOST_OPENED) return html.replace(/<[^<>]*>/g, '\n');
  let spaced = false;
  // Mail programs write an empty line as an empty paragraph, which would otherwise leave nothing.
  const marked = html.replace(BLANK_LINE, (whole, tag: string) => {
    spaced ||= BLANK_PARAGRAPH.test(whole);
    return `<${tag}>&nbsp;</${tag}>`;
  });
  // Where empty paragraphs make the empty lines, each other paragraph is one line.
  return convert(marked, spaced ? LINE_PARAGRAPHS : PARAGRAPHS);
}

/** Elements that are left open, voids among them. */
function opened(html: string): number {
  return (html.match(/<[a-z]/gi) ?? []).length - (html.match(/<\//g) ?? []).length;
}

/** Cells of a row stand on one line, parted so that a label is told from its value. */
const cell: FormatCallback = (element, walk, builder) => {
  walk(element.children, builder);
  builder.addLiteral('\t');
};

const options = (breaks: 1 | 2): HtmlToTextOptions => ({
  wordwrap: false,
  limits: { maxDepth: DEEPEST },
  // A forwarded message may stand behind the first body.
  baseElements: { selectors: [], returnDomByDefault: true },
  formatters: { cell },
  selectors: [
    ...['head', 'style', 'script', 'img'].map((selector) => ({ selector, format: 'skip' })),
    ...['td', 'th'].map((selector) => ({ selector, format: 'cell' })),
    { selector: 'tr', format: 'block' },
    { selector: 'a', options: { ignoreHref: true } },
    { selector: 'p', options: { leadingLineBreaks: breaks, trailingLineBreaks: breaks } },
    ...[1, 2, 3, 4, 5, 6].map((level) => ({ selector: `h${level}`, options: { uppercase: false } })),
  ],
});
const PARAGRAPHS = options(2);
const LINE_PARAGRAPHS = options(1);
