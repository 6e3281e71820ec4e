/** Sends a save to the bench. */
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
