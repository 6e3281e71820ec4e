/** A change's form, read. */
import { LETTERS, ORDER_STATES } from '#words/benchCodes.ts';
import { isDay, NOTE_CAP, type Change } from '../book/change.ts';

export type ChangeForm = { readonly version: number; readonly change: Change };

/** Reads the form of `Changes.tsx` or `Letters.tsx`; null for one that neither sends. */
export function readChange(form: URLSearchParams): ChangeForm | null {
  const version = Number(form.get('version') ?? '');
  const change = changeOf(form);
  return change === null || !Number.isInteger(version) || version < 1 ? null : { version, change };
}

function changeOf(form: URLSearchParams): Change | null {
  const kind = form.get('kind');
  if (kind === 'state') {
    const state = ORDER_STATES.find((one) => one === form.get('state'));
    return state === undefined ? null : { kind, state };
  }
  if (kind === 'due') {
    const on = form.get('on') ?? '';
    if (on !== '' && !isDay(on)) return null;
    return { kind, on: on === '' ? null : on };
  }
  if (kind === 'note') {
    const text = (form.get('text') ?? '').trim().replace(/\r\n?/g, '\n');
    return text === '' || text.length > NOTE_CAP ? null : { kind, text };
  }
  const message = LETTERS.find((one) => one === form.get('message'));
  return kind === 'message' && message !== undefined ? { kind, message } : null;
}
