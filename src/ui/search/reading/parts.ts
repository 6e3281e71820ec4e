/** Words written together: "Glasperlenkette", "silverbracelet". */
import { nearest } from './nearest.ts';
import type { Opened, Role, Sense } from './open.ts';

/** Shorter ones are found in too many words. */
const LEAST_NAME = 4;
const LEAST_WORD = 4;
/** What German puts between the parts. */
const JOINTS = ['', 's', 'n', 'en', 'es', 'e'];
const MOST_PARTS = 3;
/** Roles that a part may play; the small words are found in too many. */
const WITHIN: readonly Role[] = ['idle', 'elsewhere', 'shade', 'wrist', 'ankle', 'neck'];

function whole(key: string, opened: Opened): Sense | null {
  const sense = key.length < 3 ? null : opened.sense(key);
  const fit = sense?.as === 'concept' || (sense?.as === 'role' && WITHIN.includes(sense.role));
  if (fit && (key.length >= LEAST_NAME || sense.as === 'concept')) return sense;
  return key.length >= LEAST_WORD ? opened.word(key, true) : null;
}

/** The senses of the parts of a word written together, as few as may be; null where it can't be parted into what is known. */
export function partsOf(key: string, opened: Opened): readonly Sense[] | null {
  for (let count = 2; count <= MOST_PARTS; count += 1) {
    const parts = parted(key, opened, count);
    if (parts !== null) return parts;
  }
  return null;
}

function parted(key: string, opened: Opened, count: number): readonly Sense[] | null {
  if (count === 1) {
    const sense = whole(key, opened);
    return sense === null ? null : [sense];
  }
  for (let at = 3; at <= key.length - 3; at += 1) {
    const rest = parted(key.slice(at), opened, count - 1);
    if (rest === null) continue;
    for (const joint of JOINTS) {
      const first = key.slice(0, at);
      const head = first.endsWith(joint) ? whole(first.slice(0, at - joint.length), opened) : null;
      if (head !== null) return [head, ...rest];
    }
  }
  return null;
}

/** Shorter ends are found too near too much. */
const LEAST_MENDED = 5;

/** The parts of a word written together whose last part is mistyped: "Perlenarmbnad". */
export function mendedParts(
  key: string,
  opened: Opened,
): { readonly senses: readonly Sense[]; readonly corrected: string } | null {
  for (let at = LEAST_NAME; at <= key.length - LEAST_MENDED; at += 1) {
    const head = whole(key.slice(0, at), opened);
    const tail = head === null ? null : nearest(key.slice(at), opened);
    if (head !== null && tail?.sense.as === 'concept')
      return { senses: [head, tail.sense], corrected: `${key.slice(0, at)} ${tail.written}` };
  }
  return null;
}
