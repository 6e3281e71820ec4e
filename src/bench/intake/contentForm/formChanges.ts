/** What she changed in a form, and nothing else: a field that reads as its file does is left as it is written. */
import type { FieldChange, Plain } from '#catalogue/write/plain.ts';
import type { FormNode, GroupNode, RowsNode, ValueNode, ValuesNode } from './formTree.ts';
import { shownAs, writtenAs } from './writtenAs.ts';

/** What one value comes to; undefined for none. */
function valueOf({ shape, typed, shown }: ValueNode, currency: string): Plain | undefined {
  return typed === '' ? undefined : writtenAs(shape, typed, shown, currency);
}

const listed = ({ shape, typed }: ValuesNode, currency: string): readonly Plain[] =>
  typed.map((one) => writtenAs(shape, one, '', currency));

/** Whether anything of it is typed that isn't there by itself. */
function isFilled(node: FormNode): boolean {
  if (node.node === 'value') return node.typed !== '' && node.typed !== node.fallback;
  if (node.node === 'values') return node.typed.length > 0;
  if (node.node === 'group') return node.nodes.some(isFilled);
  return node.rows.some(({ gone, group }) => !gone && isFilled(group));
}

/** What it comes to where its file has nothing yet; undefined for nothing. */
function freshOf(node: FormNode, currency: string): Plain | undefined {
  if (!isFilled(node)) return undefined;
  if (node.node === 'value') return valueOf(node, currency);
  if (node.node === 'values') return listed(node, currency);
  if (node.node === 'group') return freshFields(node.nodes, currency);
  return node.rows.flatMap(({ gone, group }) => {
    const fresh = gone ? undefined : freshOf(group, currency);
    return fresh === undefined ? [] : [fresh];
  });
}

const nameOf = ({ path }: FormNode): string => String(path.at(-1));

/** An entry out of nothing but its form. */
export function freshFields(nodes: readonly FormNode[], currency: string): Record<string, Plain> {
  const named = nodes.flatMap((node) => {
    const value = freshOf(node, currency);
    return value === undefined ? [] : [[nameOf(node), value] as const];
  });
  return Object.fromEntries(named);
}

function ofValue(node: ValueNode, currency: string): FieldChange[] {
  const { shape, typed, shown, path } = node;
  if (typed === shown) return [];
  const value = valueOf(node, currency);
  // She typed what it says already, in another way.
  return value !== undefined && shownAs(shape, value) === shown ? [] : [{ path, value }];
}

function ofValues(node: ValuesNode, currency: string): FieldChange[] {
  const { shape, shown, path } = node;
  const now = listed(node, currency);
  const same = now.length === shown.length && now.every((one, at) => shownAs(shape, one) === shown[at]);
  if (same) return [];
  return [{ path, value: now.length === 0 ? undefined : now }];
}

function ofGroup(group: GroupNode, currency: string): FieldChange[] {
  if (!group.present) {
    const value = freshOf(group, currency);
    return value === undefined ? [] : [{ path: group.path, value }];
  }
  // What she emptied and may be left out goes as a whole.
  if (!group.required && !isFilled(group)) return [{ path: group.path, value: undefined }];
  return group.nodes.flatMap((node) => changesOf(node, currency));
}

function ofRows({ rows, present, path }: RowsNode, currency: string): FieldChange[] {
  const there = rows.slice(0, present);
  const added = rows.slice(present).flatMap(({ gone, group }) => {
    const value = gone ? undefined : freshOf(group, currency);
    return value === undefined ? [] : [value];
  });
  if (there.every(({ gone }) => gone) && added.length === 0) {
    return present === 0 ? [] : [{ path, value: undefined }];
  }
  if (present === 0) return [{ path, value: added }];
  return [
    ...there.flatMap(({ gone, group }) => (gone ? [] : ofGroup(group, currency))),
    ...added.map((value, at) => ({ path: [...path, present + at], value })),
    // From the last, so that places of the others hold.
    ...there.flatMap(({ gone }, at) => (gone ? [{ path: [...path, at], value: undefined }] : [])).reverse(),
  ];
}

function changesOf(node: FormNode, currency: string): FieldChange[] {
  if (node.node === 'value') return ofValue(node, currency);
  if (node.node === 'values') return ofValues(node, currency);
  if (node.node === 'group') return ofGroup(node, currency);
  return ofRows(node, currency);
}

/**
 * What the form changes, to be done one after the other.
 * @param currency of the shop, for amounts typed without one
 */
export function formChanges(nodes: readonly FormNode[], currency: string): readonly FieldChange[] {
  return nodes.flatMap((node) => changesOf(node, currency));
}
