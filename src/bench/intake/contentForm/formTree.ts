/**
 * A form of an entry: its fields by their schema, with what the file says and
 * what is typed. Names of controls are paths: `post.groups.0.bands.1.price`.
 */
import { isFields, isList, type Plain } from '#catalogue/write/plain.ts';
import type { FieldKind } from '#catalogue/fields/kind.ts';
import type { FieldPath } from '#catalogue/read/problem.ts';
import type { FieldShape, FormField } from '#catalogue/schemas/describe.ts';
import { shownAs } from './writtenAs.ts';

type Node = {
  /** Name of the control, and what others of the same field begin with. */
  readonly key: string;
  /** Within the entry. */
  readonly path: FieldPath;
  readonly required: boolean;
};

/** One value. `shown`: as the file or what stands in for it says. */
export type ValueNode = Node & {
  readonly node: 'value';
  readonly shape: FieldKind;
  readonly fallback: string;
  readonly shown: string;
  readonly typed: string;
  /** As the file has it. */
  readonly written: Plain | undefined;
};

/** Several values of one kind. */
export type ValuesNode = Node & {
  readonly node: 'values';
  readonly shape: FieldKind;
  readonly shown: readonly string[];
  readonly typed: readonly string[];
};

export type GroupNode = Node & {
  readonly node: 'group';
  /** The file has it. */
  readonly present: boolean;
  readonly nodes: readonly FormNode[];
};

/** One of a list of groups. `gone`: to be taken away. */
export type Row = { readonly key: string; readonly gone: boolean; readonly group: GroupNode };

export type RowsNode = Node & {
  readonly node: 'rows';
  /** How many the file has; rows after them are new. */
  readonly present: number;
  readonly rows: readonly Row[];
};

export type FormNode = ValueNode | ValuesNode | GroupNode | RowsNode;

/** What was posted; null for a form that nothing was typed into. */
export type Posted = URLSearchParams | null;

/** More rows than any list has use for; a posted form can't ask for more. */
const MOST_ROWS = 100;

/** Names of controls beside a field's own: which rows there are, which go, whether a field was offered at all. */
export const besides = {
  rows: (key: string) => `${key}~rows`,
  gone: (key: string) => `${key}~gone`,
  offered: (key: string) => `${key}~offered`,
  without: (key: string) => `${key}~without`,
  /** Value of the button `do` that adds a row. */
  add: (key: string) => `add:${key}`,
} as const;

type Place = { readonly path: FieldPath; readonly required: boolean; readonly fallback: string };

const keyOf = (path: FieldPath): string => path.join('.');

const trimmed = (text: string): string => text.replaceAll('\r\n', '\n').trim();

function valueNode(
  shape: FieldKind,
  { path, required, fallback }: Place,
  data: Plain | undefined,
  posted: Posted,
) {
  const key = keyOf(path);
  const shown = data === undefined ? fallback : shownAs(shape, data);
  // A control that can't be empty, as a colour's, has a tick beside it that says that there is none.
  const without = posted?.has(besides.without(key)) === true;
  const typed = without ? '' : trimmed(posted?.get(key) ?? shown);
  return { node: 'value', key, path, required, shape, fallback, shown, typed, written: data } as const;
}

/** Values are typed one a line, or countries with commas between, or ticked. */
function valuesNode(
  shape: FieldKind,
  { path, required }: Place,
  data: Plain | undefined,
  posted: Posted,
): ValuesNode {
  const key = keyOf(path);
  const written = data === undefined ? [] : isList(data) ? data : [data];
  const shown = written.map((one) => shownAs(shape, one));
  const offered = posted?.has(besides.offered(key)) === true;
  const typed = offered
    ? posted.getAll(key).flatMap((text) => text.split(shape.kind === 'country' ? /[,;\n]/ : '\n'))
    : shown;
  return {
    node: 'values',
    key,
    path,
    required,
    shape,
    shown,
    typed: typed.map(trimmed).filter((one) => one !== ''),
  };
}

function groupNode(
  fields: readonly FormField[],
  place: Place,
  data: Plain | undefined,
  posted: Posted,
): GroupNode {
  const { path, required } = place;
  const nodes = fields.map((field) => fieldNode(field, path, isFields(data) ? data : {}, posted));
  return { node: 'group', key: keyOf(path), path, required, present: data !== undefined, nodes };
}

function rowsNode(
  fields: readonly FormField[],
  { path, required }: Place,
  data: Plain | undefined,
  posted: Posted,
): RowsNode {
  const key = keyOf(path);
  const written = isList(data) ? data : [];
  const asked = Number(posted?.get(besides.rows(key)) ?? written.length);
  const more = posted?.get('do') === besides.add(key) ? 1 : 0;
  const count = Math.max(written.length, Math.min(MOST_ROWS, Number.isInteger(asked) ? asked + more : 0));
  const rows = Array.from({ length: count }, (_, index): Row => {
    const place = { path: [...path, index], required: true, fallback: '' };
    const group = groupNode(fields, place, written[index], posted);
    return { key: group.key, gone: posted?.has(besides.gone(group.key)) === true, group };
  });
  return { node: 'rows', key, path, required, present: written.length, rows };
}

function shapeNode(shape: FieldShape, place: Place, data: Plain | undefined, posted: Posted): FormNode {
  if (shape.kind === 'group') return groupNode(shape.fields, place, data, posted);
  if (shape.kind !== 'list') return valueNode(shape, place, data, posted);
  const { item } = shape;
  if (item.kind === 'group') return rowsNode(item.fields, place, data, posted);
  // A list of lists has no place in an entry, and would have no form.
  if (item.kind === 'list') throw new TypeError(`${keyOf(place.path)} is a list of lists`);
  return valuesNode(item, place, data, posted);
}

function fieldNode(
  field: FormField,
  base: FieldPath,
  data: { readonly [name: string]: Plain },
  posted: Posted,
): FormNode {
  const { name, required, shape } = field;
  const fallback =
    field.fallback === null
      ? ''
      : shape.kind === 'group' || shape.kind === 'list'
        ? ''
        : shownAs(shape, field.fallback);
  const written = Object.hasOwn(data, name) ? data[name] : undefined;
  // A field without a value says nothing.
  return shapeNode(shape, { path: [...base, name], required, fallback }, written ?? undefined, posted);
}

/**
 * The form of an entry.
 * @param data the entry's own plain data, as its file had it when she opened the form
 * @param posted what she typed; a field that was not on her form stays as it is
 */
export function formTree(fields: readonly FormField[], data: Plain, posted: Posted): readonly FormNode[] {
  return groupNode(fields, { path: [], required: true, fallback: '' }, data, posted).nodes;
}

/** Every node of a form, groups before what is in them. */
export function allNodes(nodes: readonly FormNode[]): readonly FormNode[] {
  return nodes.flatMap((node) => {
    if (node.node === 'group') return [node, ...allNodes(node.nodes)];
    if (node.node === 'rows') return [node, ...node.rows.flatMap(({ group }) => allNodes([group]))];
    return [node];
  });
}
