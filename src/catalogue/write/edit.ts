/** Fields of an authored file set, added and removed, and new files written. */
import { headed } from '../read/source.ts';
import { inSchemaOrder } from './order.ts';
import { applyChanges, isFields, type FieldChange, type PlainMap } from './plain.ts';
import { EditError, plainOf, rewrite, type OrderOf, type Rewritten } from './rewrite.ts';

/**
 * A YAML text with fields changed; only the text of what changes is touched.
 * @param order names of fields at a path as their schema has them; a new field goes to its place among them
 * @throws EditError where the text isn't YAML with fields
 */
export function editYaml(text: string, changes: readonly FieldChange[], order?: OrderOf): string {
  const next = applyChanges(plainOf(text), changes);
  if (!isFields(next)) throw new EditError('not-fields');
  return rewrite(text, next, order).text;
}

/** A guide's text taken apart. */
export type GuideText = { readonly head: string; readonly body: string };

function partsOf(
  text: string,
): GuideText & { readonly before: string; readonly between: string; readonly after: string } {
  const [, head, rest] = headed.exec(text) ?? [];
  if (head === undefined || rest === undefined) throw new EditError('front-matter');
  const headAt = text.indexOf('\n') + 1;
  const restAt = text.length - rest.length;
  const body = rest.trim();
  const bodyAt = restAt + (rest.length - rest.trimStart().length);
  return {
    head,
    body,
    before: text.slice(0, headAt),
    between: text.slice(headAt + head.length, bodyAt),
    after: text.slice(bodyAt + body.length),
  };
}

/**
 * A guide's heading block and what follows it, without blank lines round it.
 * @throws EditError where there is no heading block
 */
export function guideText(text: string): GuideText {
  const { head, body } = partsOf(text);
  return { head, body };
}

/** A guide made to say something else: its heading block `next`, and `body` in place of what follows. */
export function rewriteGuide(text: string, next: PlainMap, body?: string, order?: OrderOf): Rewritten {
  const parts = partsOf(text);
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const { text: head, reformatted } = rewrite(parts.head, next, order);
  // The block's last line end stands before its closing dashes.
  const lines = head.replace(/\r?\n$/, '');
  const written = body === undefined ? parts.body : body.trim().replaceAll(/\r\n?|\n/g, eol);
  const between =
    parts.body === '' && written !== '' ? `${parts.between.trimEnd()}${eol}${eol}` : parts.between;
  const after = parts.body === '' && written !== '' ? eol : parts.after;
  return { text: parts.before + lines + between + written + after, reformatted };
}

/**
 * A guide with fields of its heading block changed, and its body where one is given.
 * @throws EditError where there is no heading block, or it isn't YAML with fields
 */
export function editGuide(
  text: string,
  changes: readonly FieldChange[],
  body?: string,
  order?: OrderOf,
): string {
  const next = applyChanges(plainOf(partsOf(text).head), changes);
  if (!isFields(next)) throw new EditError('not-fields');
  return rewriteGuide(text, next, body, order).text;
}

/** The text of a new file; a guide's where it has a body. Fields stand in the order of their schema. */
export function newEntry(data: PlainMap, order?: OrderOf, body?: string): string {
  const { text } = rewrite('', inSchemaOrder(data, order?.([]) ?? []), order);
  return body === undefined ? text : `---\n${text}---\n\n${body.trim().replaceAll(/\r\n?/g, '\n')}\n`;
}
