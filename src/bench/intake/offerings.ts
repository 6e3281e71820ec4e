/** The form of pasted texts and dropped files, read. */
import type { Offering } from './takeIn.ts';

/** Files looked at in one go. */
const MOST_FILES = 200;

/** Offerings of a form, an empty text where there are none; `pasted`: what stands for the text in messages. */
export async function readOfferings(form: FormData, pasted: string): Promise<Offering[]> {
  const offerings: Offering[] = [];
  const text = form.get('text');
  if (typeof text === 'string' && text.trim() !== '') {
    const way = /^\s*https?:\S+\s*$/.test(text) ? 'link' : 'paste';
    offerings.push({ source: pasted, way, bytes: new TextEncoder().encode(text) });
  }
  for (const file of form.getAll('files').slice(0, MOST_FILES)) {
    // A browser sends an empty nameless file where none was chosen.
    if (typeof file === 'string' || (file.size === 0 && file.name === '')) continue;
    offerings.push({
      source: plainName(file.name),
      way: 'file',
      bytes: new Uint8Array(await file.arrayBuffer()),
    });
  }
  const nothing: Offering = { source: pasted, way: 'paste', bytes: new Uint8Array() };
  return offerings.length === 0 ? [nothing] : offerings;
}

/** A file's name for a message: its last part, without what can't be seen. Nothing is ever opened by it. */
function plainName(name: string): string {
  return (name.split(/[\\/]/).at(-1) ?? '').replace(/\p{C}/gu, '').slice(0, 80) || '?';
}
