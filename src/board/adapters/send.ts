/** Sends what lies on the board to the bench: to be saved, or to be shown. */
import type { SaveAnswer, SaveRequest } from '../model/saving.ts';

/** null where the bench can't be reached, or answers nothing that can be read. */
export async function sendSave(request: SaveRequest): Promise<SaveAnswer | null> {
  try {
    const response = await fetch(location.pathname, {
      method: 'POST',
      headers: { 'content-type': 'application/json', accept: 'application/json' },
      body: JSON.stringify(request),
    });
    return (await response.json()) as SaveAnswer;
  } catch {
    return null;
  }
}

/** Posts the board to a page in a window of its own, as a form does. */
export function openPreview(page: string, request: SaveRequest): void {
  const form = document.createElement('form');
  Object.assign(form, { method: 'post', action: page, target: '_blank', hidden: true });
  const field = document.createElement('textarea');
  Object.assign(field, { name: 'board', value: JSON.stringify(request) });
  form.append(field);
  document.body.append(form);
  form.submit();
  form.remove();
}
