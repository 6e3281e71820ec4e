/** fetch as a Post. */
import type { Answer, Post } from '../model/ports.ts';

/** Long enough for a slow phone network; then it is tried again. */
const PATIENCE_MS = 20_000;

export const browserPost: Post = async (address, type, text): Promise<Answer> => {
  if (!navigator.onLine) return { kind: 'offline' };
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { 'content-type': type, accept: 'application/json' },
      body: text,
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    return { kind: 'answer', status: response.status, json: await response.json().catch(() => null) };
  } catch {
    return { kind: 'none' };
  }
};
