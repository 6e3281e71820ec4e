/** The fields of each kind of entry, and which of them its form at the bench asks for. */
import { isFieldOf, isNeededFor, usualFor } from '#catalogue/build/component.ts';
import { componentSchema } from '#catalogue/schemas/component.ts';
import { describeFields, type FormField } from '#catalogue/schemas/describe.ts';
import { guideSchema } from '#catalogue/schemas/guide.ts';
import { pieceSchema } from '#catalogue/schemas/piece.ts';
import { shopSchema } from '#catalogue/schemas/shop.ts';
import { wireSchema } from '#catalogue/schemas/wire.ts';
import type { FormNode } from '../../intake/contentForm/formTree.ts';
import type { EntryKind } from '../../content/entry.ts';

/** What a piece is strung of is set on the board; its photographs and its tutorial have pages of their own. */
const ELSEWHERE: readonly string[] = [
  ...['wire', 'closing', 'pendant', 'one-sided', 'upright', 'mirrored', 'sections', 'strands', 'lie', 'gap'],
  ...['pictures', 'teach'],
];

export const entryFields: Readonly<Record<EntryKind, readonly FormField[]>> = {
  component: describeFields(componentSchema),
  wire: describeFields(wireSchema),
  guide: describeFields(guideSchema),
  piece: describeFields(pieceSchema).filter(({ name }) => !ELSEWHERE.includes(name)),
  shop: describeFields(shopSchema),
};

/** Of a piece what its tutorial says. */
export const tutorialFields: readonly FormField[] = describeFields(pieceSchema).filter(
  ({ name }) => name === 'teach',
);

/** What stands in the field `kind` of a form of a component. */
export function kindIn(nodes: readonly FormNode[]): string {
  const node = nodes.find(({ key }) => key === 'kind');
  return node?.node === 'value' ? node.typed : '';
}

/** How a field stands with a component of its kind: whether it has to be chosen, and what holds where it isn't. */
export function needOf(kind: EntryKind, nodes: readonly FormNode[]): (node: FormNode) => Need {
  if (kind !== 'component') return ({ required }) => ({ required, usual: null });
  const of = kindIn(nodes);
  return ({ key, required }) => ({
    required: required || isNeededFor(key, of),
    usual: usualFor(key, of),
  });
}

export type Need = { readonly required: boolean; readonly usual: string | null };

/** Whether a field has its control: not one that only other kinds have, unless something stands in it. */
export function isOffered(kind: EntryKind, nodes: readonly FormNode[]): (node: FormNode) => boolean {
  if (kind !== 'component') return () => true;
  const of = kindIn(nodes);
  return (node) => isFieldOf(node.key, of) || (node.node === 'value' && node.typed !== '');
}
