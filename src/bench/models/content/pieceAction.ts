/** What she does to a piece with one button: each is a save of its form with a few fields set. */

import type { FormNode } from '../../intake/contentForm/formTree.ts';

const ACTIONS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  retire: { status: 'past', 'lies-since': '' },
  sold: { status: 'to-order', 'lies-since': '' },
  again: { status: 'to-order' },
};

export type PieceAction = 'retire' | 'sold' | 'again';

/** What may be done to a piece as it stands in its file. */
export function actionsFor(nodes: readonly FormNode[]): readonly PieceAction[] {
  const status = nodes.find(({ key }) => key === 'status');
  const now = status?.node === 'value' ? status.shown : '';
  if (now === 'past') return ['again'];
  return now === 'available' ? ['sold', 'retire'] : ['retire'];
}

/** The form with what its button does to it, so that whatever else is typed is saved along. */
export function withPieceAction(form: URLSearchParams): URLSearchParams {
  const action = form.get('do') ?? '';
  const fields = Object.hasOwn(ACTIONS, action) ? ACTIONS[action] : undefined;
  if (fields === undefined) return form;
  const filled = new URLSearchParams(form);
  for (const [field, value] of Object.entries(fields)) filled.set(field, value);
  filled.set('do', 'save');
  return filled;
}
