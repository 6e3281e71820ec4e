/** The name of a piece for a slip: the shop's own where it can be asked, else its id made readable. */
import type { Lang } from '#words/lang.ts';

/** "focal-river" reads "Focal river". */
export function readableId(id: string): string {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The name in the shop's data file of a piece, null where there is none to be had (no network, a piece long gone). */
export async function askPieceName(dataAddress: string, lang: Lang): Promise<string | null> {
  try {
    const response = await fetch(dataAddress);
    return response.ok ? nameIn(await response.json(), lang) : null;
  } catch {
    return null;
  }
}

function nameIn(data: unknown, lang: Lang): string | null {
  if (typeof data !== 'object' || data === null || !('name' in data)) return null;
  const names = data.name;
  if (typeof names !== 'object' || names === null) return null;
  const byLang = names as Readonly<Record<string, unknown>>;
  const name = byLang[lang] ?? byLang['en'];
  return typeof name === 'string' ? name : null;
}
