/** The road of the photographs' page: a form comes in, the piece's list is saved, the page is shown or left. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { readShop } from '#catalogue/collections.ts';
import { removeNew, saveBytes } from '#catalogue/write/saveFile.ts';
import { isFields, type Plain } from '#catalogue/write/plain.ts';
import { sizeOf, type Size } from '#ui/pictures/encode.ts';
import { contentFolder } from '#ui/site/contentFolder.ts';
import { troubleResponse } from './access/refusal.ts';
import { content } from './content/content.ts';
import type { Opened, Saved } from './content/entry.ts';
import { bench } from './context/bench.ts';
import { readFileForm, readForm, seeOther } from './http/readForm.ts';
import { frameFor, type Frame } from './models/frame.ts';
import type { PhotoAttempt, PhotoSheet } from './models/photoSheet.ts';
import { MOST_PHOTO_MB, takePhotograph } from './photos/intake.ts';
import { describedBy, listAfter, placeIn } from './photos/photoChange.ts';
import { photosOf, writtenPhotos, type Photo, type WrittenPhoto } from './photos/photoList.ts';
import type { PhotoTrouble } from '#words/photoCodes.ts';

/** Shape of a photograph, upright; null where its file can't be read. */
async function shapeOf({ path }: Photo): Promise<Size | null> {
  try {
    return path === null ? null : await sizeOf(readFileSync(join(contentFolder(), path)), null);
  } catch {
    return null;
  }
}

function nameOf({ data, key }: Opened): string {
  const entry = data as Plain | undefined;
  return isFields(entry) && typeof entry.name === 'string' ? entry.name : key.id;
}

async function sheetOf(opened: Opened, frame: Frame, attempt: PhotoAttempt | null): Promise<PhotoSheet> {
  const photos = await Promise.all(
    photosOf(opened).map(async (photo) => ({ ...photo, size: await shapeOf(photo) })),
  );
  return { id: opened.key.id, name: nameOf(opened), photos, digest: opened.digest, attempt, frame };
}

/** Why the content could not be saved, to somebody with photographs in mind. */
function troubleOf(saved: Exclude<Saved, { ok: true }>): PhotoTrouble {
  if (saved.code === 'problems') return { code: 'photo-problems', problems: saved.problems };
  if (saved.code === 'not-writable') return { code: 'photo-not-writable' };
  return { code: 'photo-changed-meanwhile' };
}

function save(opened: Opened, digest: string, pictures: readonly WrittenPhoto[]): Saved {
  const value = pictures.length === 0 ? undefined : [...pictures];
  return content().save({ key: opened.key, digest }, [{ path: ['pictures'], value }]);
}

/** Takes an uploaded photograph in: file and entry, or neither. */
async function upload(opened: Opened, form: FormData): Promise<PhotoAttempt | null> {
  const fields = new URLSearchParams(
    [...form].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value]] : [])),
  );
  const failed = (trouble: PhotoTrouble): PhotoAttempt => ({ of: 'new', trouble, form: fields });
  const words = describedBy(fields);
  const file = form.get('photo');
  if (!(file instanceof File) || file.size === 0) return failed({ code: 'photo-missing' });
  if (words.alt === '') return failed({ code: 'alt-missing' });
  const taken = await takePhotograph(new Uint8Array(await file.arrayBuffer()));
  if (!taken.ok) return failed(taken.problem);
  // Named by what is in it: the same photograph again is the same file.
  const mark = createHash('sha256').update(taken.jpeg).digest('hex').slice(0, 10);
  const name = `${opened.key.id}-${mark}.jpeg`;
  const path = posix.join(posix.dirname(opened.file), name);
  const kept = saveBytes(contentFolder(), path, taken.jpeg);
  if (!kept.ok) return failed({ code: 'photo-not-writable' });
  const saved = save(opened, fields.get('digest') ?? '', [
    ...writtenPhotos(opened),
    { file: name, ...words },
  ]);
  if (saved.ok) return null;
  if (kept.isNew) removeNew(contentFolder(), path);
  return failed(troubleOf(saved));
}

/** Does what a form of a photograph asks for. */
async function change(opened: Opened, form: URLSearchParams): Promise<PhotoAttempt | null> {
  const at = placeIn(form);
  const photo = photosOf(opened)[at];
  const shape = photo === undefined ? null : await shapeOf(photo);
  const failed = (trouble: PhotoTrouble): PhotoAttempt => ({ of: at, trouble, form });
  const listed = listAfter(writtenPhotos(opened), form, shape);
  if (!listed.ok) return failed(listed.problem);
  const saved = save(opened, form.get('digest') ?? '', listed.pictures);
  return saved.ok ? null : failed(troubleOf(saved));
}

const isUpload = (request: Request): boolean =>
  (request.headers.get('content-type') ?? '').startsWith('multipart/form-data');

/** What a form of the page came to; a Response where it can't be read at all. */
async function done(request: Request, opened: Opened): Promise<PhotoAttempt | null | Response> {
  if (isUpload(request)) {
    const form = await readFileForm(request, MOST_PHOTO_MB * 1024 * 1024);
    if (form instanceof FormData) return upload(opened, form);
    if (form.code === 'upload-broken') return troubleResponse({ code: form.code }, form.status, request);
    const trouble = { code: 'photo-too-large', mostMb: MOST_PHOTO_MB } as const;
    return { of: 'new', trouble, form: new URLSearchParams() };
  }
  const form = await readForm(request);
  return form === null ? troubleResponse({ code: 'bad-form' }, 400, request) : change(opened, form);
}

/** The page of a piece's photographs, or the answer in its place. */
export async function photoPage(request: Request, id: string): Promise<PhotoSheet | Response> {
  const store = content();
  const opened = store.open({ kind: 'piece', id });
  if (opened === null) return troubleResponse({ code: 'no-such-piece' }, 404, request);
  const shop = store.reading().catalogue?.shop ?? (await readShop());
  const frame = frameFor(request, shop, bench().nowMs());
  if (request.method !== 'POST') return sheetOf(opened, frame, null);
  const attempt = await done(request, opened);
  if (attempt instanceof Response) return attempt;
  if (attempt === null) return seeOther(`/bench/pieces/${id}/photos/`);
  return sheetOf(store.open(opened.key) ?? opened, frame, attempt);
}
