/** A design as laid out on the board, as changes to its piece's file: only what differs, everything else as she wrote it. */
import type { Design } from '#core/design/design.ts';
import { authoredDesign, namedDesign, type NamedDesign } from './authoredDesign.ts';
import { isFields, isList, samePlain, type FieldChange, type Plain, type PlainMap } from './plain.ts';

type Maybe = Plain | undefined;

/**
 * What stands in the file after a change of `before` to `after`, both in the shortest words: what means the same
 * keeps the words that it has.
 * @param full `after` with everything said that may go without saying
 */
function reworded(authored: Maybe, before: Maybe, after: Plain, full: Maybe): Plain {
  if (authored !== undefined && samePlain(before, after)) return authored;
  if (isFields(after) && isFields(authored)) return rewordedFields(authored, before, after, full);
  if (isList(after) && isList(authored)) return rewordedList(authored, before, after, full);
  return after;
}

const fieldOf = (fields: Maybe, name: string): Maybe => (isFields(fields) ? fields[name] : undefined);

function rewordedFields(authored: PlainMap, before: Maybe, after: PlainMap, full: Maybe): PlainMap {
  const kept = Object.entries(authored).flatMap(([name, value]): [string, Plain][] => {
    const wanted = after[name];
    if (wanted !== undefined) {
      return [[name, reworded(value, fieldOf(before, name), wanted, fieldOf(full, name))]];
    }
    // A field that the design knows nothing of, or says what is so without it.
    const usual = fieldOf(full, name);
    const known = usual !== undefined || fieldOf(before, name) !== undefined;
    return !known || samePlain(usual, value) ? [[name, value]] : [];
  });
  return { ...after, ...Object.fromEntries(kept) };
}

function rewordedList(
  authored: readonly Plain[],
  before: Maybe,
  after: readonly Plain[],
  full: Maybe,
): Plain[] {
  const old = isList(before) ? before : [];
  const whole = isList(full) ? full : [];
  const taken = new Set<number>();
  const sameAt = after.map((item, at) => {
    const places = [at, ...old.keys()];
    const found = places.find((place) => !taken.has(place) && samePlain(old[place], item));
    if (found !== undefined) taken.add(found);
    return found;
  });
  return after.map((item, at) => {
    const same = sameAt[at];
    if (same !== undefined) return authored[same] ?? item;
    if (taken.has(at)) return item;
    taken.add(at);
    return reworded(authored[at], old[at], item, whole[at]);
  });
}

/** Names that the file gives its strands. */
function strandNames({ strands }: PlainMap): string[] {
  return isList(strands ?? null)
    ? (strands as readonly Plain[]).map((one) => String(fieldOf(one, 'name') ?? ''))
    : [];
}

/** Of one strand, and of several. */
const IN_SHORT = ['mirrored', 'sections'];
const AT_LENGTH = ['strands', 'lie', 'gap'];

/**
 * @param data what the file says of the piece
 * @param before the design that it was read as; null where it says none yet
 */
export function pieceChanges(data: PlainMap, before: Design | null, after: NamedDesign): FieldChange[] {
  const names = strandNames(data);
  const old = before === null ? {} : authoredDesign(namedDesign(before), names);
  const next = authoredDesign(after, names);
  const full = authoredDesign(after, names, true);
  const fields = [...new Set([...Object.keys(old), ...Object.keys(next)])];
  const differing = fields.filter((name) => !samePlain(old[name], next[name]));
  const written = differing.map((name): FieldChange => {
    const wanted = next[name];
    const value = wanted === undefined ? undefined : reworded(data[name], old[name], wanted, full[name]);
    return { path: [name], value };
  });
  return [...written, ...otherForm(data, differing, next)];
}

/** A file has its beads in one of two forms: what it says in the other goes. */
function otherForm(data: PlainMap, differing: readonly string[], next: PlainMap): FieldChange[] {
  const isShort = next['sections'] !== undefined;
  if (!differing.includes(isShort ? 'sections' : 'strands')) return [];
  const gone = (isShort ? AT_LENGTH : IN_SHORT)
    .filter((name) => data[name] !== undefined && !differing.includes(name))
    .map((name): FieldChange => ({ path: [name], value: undefined }));
  // A strand that was written at length had its mirror there.
  const moved = isShort && data['strands'] !== undefined && next['mirrored'] !== undefined;
  return moved && !differing.includes('mirrored')
    ? [...gone, { path: ['mirrored'], value: next['mirrored'] }]
    : gone;
}
