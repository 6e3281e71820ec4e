/** A guide is text: nothing in it runs, and its links lead to pages, files or addresses. */
import { fromMarkdown } from 'mdast-util-from-markdown';
import type { CatalogueError } from '#words/catalogueCodes.ts';
import type { Source } from '../read/source.ts';
import type { Problem } from '../read/problem.ts';

type Root = ReturnType<typeof fromMarkdown>;
type Nodes = Root | Root['children'][number];

/** Where a link may lead; one without a scheme stays within the shop. */
const SCHEMES = ['https:', 'http:', 'mailto:', 'tel:'];

/** Browsers pass over blanks and control characters in a scheme: `java⇥script:` is one. */
const schemeOf = (address: string): string =>
  /^[a-z][a-z0-9+.-]*:/i.exec(address.replace(/[\u0000-\u0020]/g, ''))?.[0] ?? '';

function errorOf(node: Nodes): CatalogueError | null {
  if (node.type === 'html') {
    // A remark shows nothing, and what is closed has been told of where it opened.
    return /^(?:<!--[\s\S]*-->|<\/[^>]*>)$/.test(node.value)
      ? null
      : { code: 'html-in-guide', tag: node.value.slice(0, 40) };
  }
  if (!('url' in node)) return null;
  const scheme = schemeOf(node.url).toLowerCase();
  return scheme === '' || SCHEMES.includes(scheme)
    ? null
    : { code: 'link-scheme', address: node.url.slice(0, 60) };
}

/** Problems of a guide's Markdown, in the order of its lines. */
export function assertPlainGuide({ file, body, bodyLine }: Source): Problem[] {
  const found: Problem[] = [];
  const look = (node: Nodes): void => {
    const error = errorOf(node);
    if (error !== null) {
      found.push({ file, line: bodyLine + (node.position?.start.line ?? 1) - 1, field: '', error });
    }
    if ('children' in node) node.children.forEach(look);
  };
  look(fromMarkdown(body));
  return found;
}
