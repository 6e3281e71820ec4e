/** Words written together: "Glasperlenkette", "silverbracelet". */
import { nearest } from './nearest.ts';
import type { Opened, Role, Sense } from './open.ts';

/** Shorter ones are found in too many words. */
const LEAST_NAME = 4;
const LEAST_WORD = 4;
/** A short last word counts behind a long one: "gravelbar". */
const LEAST_LAST = 3;
const LONG_FIRST = 5;
/** What German puts between the parts. */
const JOINTS = ['', 's', 'n', 'en', 'es', 'e'];
const MOST_PARTS = 3;
/** Roles that a part may play; the small words are found in too many. */
const WITHIN: readonly Role[] = ['idle', 'clasp', 'elsewhere', 'shade', 'wrist', 'ankle', 'neck'];

function whole(key: string, opened: Opened): Sense | null {
  const sense = key.length < 3 ? null : opened.sense(key);
  const fit = sense?.as === 'concept' || (sense?.as === 'role' && WITHIN.includes(sense.role));
  if (fit && (key.length >= LEAST_NAME || sense.as === 'concept')) return sense;
  return key.length >= LEAST_WORD ? (opened.word(key, true) ?? opened.loose(key)) : null;
}

/** The senses of the parts of a word written together, as few as may be; null where it can't be parted into what is known. */
export function partsOf(key: string, opened: Opened): readonly Sense[] | null {
  for (let count = 2; count <= MOST_PARTS; count += 1) {
    const parts = parted(key, opened, count);
    if (parts !== null) return parts;
  }
  const [first, last] = [key.slice(0, -LEAST_LAST), key.slice(-LEAST_LAST)];
  const head = first.length < LONG_FIRST ? null : opened.word(first, true);
  const tail = head === null ? null : opened.word(last, true);
  return head === null || tail === null ? null : [head, tail];
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

/** Shorter parts are found too near too much. */
const LEAST_MENDED = 4;
/** One slip, however it is told. */
const MOST_FAR = 1.2;

type Mended = { readonly senses: readonly Sense[]; readonly corrected: string };

/** The parts of a word written together of which one is mistyped: "Perlenarmbnad", "Holtzkette". The least mistyped way to part it. */
export function mendedParts(key: string, opened: Opened): Mended | null {
  let best: Mended | null = null;
  let least = Infinity;
  const offer = (far: number, mended: Mended): void => {
    if (far < least) [best, least] = [mended, far];
  };
  for (let at = key.length - LEAST_MENDED; at >= LEAST_MENDED; at -= 1) {
    const [first, last] = [key.slice(0, at), key.slice(at)];
    const [head, tail] = [whole(first, opened), whole(last, opened)];
    const near = head === null ? (tail?.as === 'concept' ? first : null) : tail === null ? last : null;
    const meant = near === null ? null : nearest(near, opened);
    if (meant?.sense.as !== 'concept' || meant.far > MOST_FAR || meant.key[0] !== near?.[0]) continue;
    if (head !== null)
      offer(meant.far, { senses: [head, meant.sense], corrected: `${first} ${meant.written}` });
    else if (tail !== null)
      offer(meant.far, { senses: [meant.sense, tail], corrected: `${meant.written} ${last}` });
  }
  return best;
}

/** Letters before a colour that say which of it: "königsblau", "knallrot". */
const LEAST_SHADE = 4;

/** The colour that a German word ends in; its beginning only says which shade of it. */
export function colourWithin(key: string, { candidates, vocabulary }: Opened): Sense | null {
  if (vocabulary.lang !== 'de') return null;
  const ending = candidates.find(
    ({ key: end, sense }) =>
      sense.as === 'concept' && sense.concept.group === 'colour' && key.slice(LEAST_SHADE).endsWith(end),
  );
  return ending?.sense ?? null;
}
