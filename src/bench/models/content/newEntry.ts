/** The form of an entry that isn't there yet: its short name is made of its name unless she gives one. */
import { isId } from '#catalogue/fields/field.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import type { PlainMap } from '#catalogue/write/plain.ts';
import type { Lang } from '#words/lang.ts';
import type { NotSaved } from '#words/notSavedCodes.ts';
import { catalogueWords, contentFormWords } from '#words/words.ts';
import { freshFields } from '../../intake/contentForm/formChanges.ts';
import { formTree } from '../../intake/contentForm/formTree.ts';
import { withTenMeasured } from '../../intake/contentForm/tenInARow.ts';
import { BODY, type EntryPlace, type EntrySheet } from './editEntry.ts';
import { entryFields, isOffered } from './entrySchemas.ts';
import { placeProblems, type Placed } from './placedProblems.ts';
import type { EntryKey, EntryKind } from '../../content/entry.ts';

/** Name of the control that holds the short name. */
export const ID = 'id~';

export type NewSheet = EntrySheet & { readonly id: string };
export type NewStep = { readonly sheet: NewSheet } | { readonly created: string };

/** What can be made: a guide in one language. */
export type Wanted = { readonly kind: EntryKind; readonly lang?: Lang };

const NOTHING: Placed = { own: [], others: [] };
// As long as a short name may be; the catalogue's own bound.
const LONGEST = 48;

/** A short name made of a written one: `Höhle, 6 mm` as `hohle-6-mm`. */
export function shortNameOf(name: string): string {
  return name
    .normalize('NFD')
    .replaceAll('ß', 'ss')
    .toLowerCase()
    .replace(/[\u0300-\u036f'’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST - 3)
    .replace(/^-+|-+$/g, '');
}

function sheetOf(
  wanted: Wanted,
  prefill: PlainMap,
  form: URLSearchParams | null,
  placed: Placed,
  why?: NotSaved,
) {
  const body = wanted.kind === 'guide' ? (form?.get(BODY) ?? '') : null;
  const key: EntryKey = { ...wanted, id: '' };
  return {
    ...{
      key,
      id: form?.get(ID) ?? '',
      nodes: formTree(entryFields[wanted.kind], prefill, form),
      body,
      placed,
    },
    seen: { digest: '', data: '{}', body: '' },
    clashes: [],
    notWritable: why ?? null,
  } satisfies NewSheet;
}

/**
 * @param prefill what stands in its fields to begin with: a copy of another, or what is usual
 * @param id its short name where that is known: of a guide that there is in the other language
 */
export const beginNew = (wanted: Wanted, prefill: PlainMap, id = ''): NewSheet => ({
  ...sheetOf(wanted, prefill, null, NOTHING),
  id,
});

/** Names that are addresses of the bench itself. */
const TAKEN: readonly string[] = ['new'];

/** The name as it is, or with the first number that makes it her own. */
export function freeName(name: string, isTaken: (id: string) => boolean): string {
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? name : `${name}-${number}`;
    if (!isTaken(id)) return id;
  }
}

/** Where a problem of the new entry is told: by its own file, or by its name in a file of several. */
function placeOf(problems: readonly Problem[], { kind }: Wanted, id: string) {
  const many = kind === 'component' || kind === 'wire';
  const isOwn = ({ file, field }: Problem): boolean =>
    many
      ? file.startsWith(`${kind}s/`) && (field === id || field.startsWith(`${id}, `))
      : file.replace(/^.*\//, '').replace(/\.[^.]*$/, '') === id;
  return { file: problems.find(isOwn)?.file ?? '', base: many ? [id] : [] };
}

/** What a posted form comes to. */
export function stepNew(posted: URLSearchParams, wanted: Wanted, { store, frame }: EntryPlace): NewStep {
  const form = wanted.kind === 'component' ? withTenMeasured(posted) : posted;
  const again = (placed: Placed, why?: NotSaved): NewStep => ({
    sheet: sheetOf(wanted, {}, form, placed, why),
  });
  if (form.get('do') !== 'save') return again(NOTHING);
  const nodes = formTree(entryFields[wanted.kind], {}, form);
  const said = contentFormWords(frame.lang);
  const refused = (what: string, fix: string): NewStep =>
    again({ own: [{ key: ID, what, fix }], others: [] });
  const typed = (form.get(ID) ?? '').trim();
  const isTaken = (id: string): boolean => TAKEN.includes(id) || store.open({ ...wanted, id }) !== null;
  const fallback = shortNameOf(form.get('name') ?? form.get('title') ?? '') || wanted.kind;
  const id = typed === '' ? freeName(fallback, isTaken) : typed;
  if (!isId(id)) {
    const { what, fix } = catalogueWords(frame.lang)['not-an-id']({ code: 'not-an-id', value: id });
    return refused(what, fix);
  }
  const taken = (): NewStep => refused(said.taken(id), said.takenFix);
  if (isTaken(id)) return taken();
  const data = freshFields(nodes, frame.shop.rules.currency);
  const body = wanted.kind === 'guide' ? (form.get(BODY) ?? '').replaceAll('\r\n', '\n').trim() : undefined;
  const saved = store.create({ ...wanted, id }, data, body);
  if (saved.ok) return { created: id };
  if (saved.code === 'name-taken') return taken();
  if (saved.code !== 'problems')
    return again(NOTHING, saved.code === 'not-writable' ? saved.why : saved.code);
  const place = placeOf(saved.problems, wanted, id);
  return again(placeProblems(saved.problems, place, nodes, isOffered(wanted.kind, nodes), frame.lang));
}
