/** What is typed into a form's fields, as an address: for a drawing of it. */
import type { FormNode } from '../../intake/contentForm/formTree.ts';

export function typedQuery(nodes: readonly FormNode[]): string {
  const typed = nodes.flatMap((node) =>
    node.node === 'value' && node.typed !== '' ? [[node.key, node.typed]] : [],
  );
  return new URLSearchParams(typed).toString();
}
