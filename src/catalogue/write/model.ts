/** The last way to change a text: its model is changed and written out whole. Remarks are kept, the layout isn't. */
import { isCollection, isMap, isScalar, type Document } from 'yaml';
import type { FieldPath } from '../read/problem.ts';
import { isFields, isScalarValue, samePlain, type Plain, type PlainMap } from './plain.ts';

function setFields(document: Document.Parsed, path: FieldPath, old: PlainMap, next: PlainMap): void {
  for (const name of Object.keys(old)) {
    if (!Object.hasOwn(next, name)) document.deleteIn([...path, name]);
  }
  for (const [name, value] of Object.entries(next)) {
    if (!samePlain(old[name], value)) setValue(document, [...path, name], old[name], value);
  }
}

function setValue(document: Document.Parsed, path: FieldPath, old: Plain | undefined, next: Plain): void {
  const node = document.getIn(path, true);
  if (isMap(node) && isFields(old) && isFields(next)) setFields(document, path, old, next);
  else if (isScalar(node) && isScalarValue(next)) node.value = next;
  else document.setIn(path, document.createNode(next));
}

/** The document written out with what it shall say; null where it can't be. */
export function throughModel(
  document: Document.Parsed,
  old: PlainMap,
  next: PlainMap,
  eol: string,
): string | null {
  if (!isCollection(document.contents)) return null;
  try {
    setFields(document, [], old, next);
    return document.toString({ lineWidth: 0 }).replaceAll('\n', eol);
  } catch {
    return null;
  }
}
