/** What a form of the photographs' page does to a piece's list of them. */
import { readCrop, writeCrop, type Crop } from '#catalogue/model/crop.ts';
import type { Plain } from '#catalogue/write/plain.ts';
import type { WrittenPhoto } from './photoList.ts';

const PHOTO_ACTIONS = ['words', 'crop', 'earlier', 'later', 'remove'] as const;

export type PhotoListProblem = { readonly code: 'alt-missing' | 'crop-unreadable' | 'no-such-photo' };

export type Listed =
  | { readonly ok: true; readonly pictures: readonly WrittenPhoto[] }
  | { readonly ok: false; readonly problem: PhotoListProblem };

/** Parts that are often wanted, in fractions; `whole` takes a part away again. */
const FRAMES = ['whole', 'square', 'middle'] as const;
export type CropFrame = (typeof FRAMES)[number];
export const CROP_FRAMES: readonly CropFrame[] = FRAMES;

/** A tenth off every side. */
const MIDDLE: Crop = { left: 0.1, top: 0.1, width: 0.8, height: 0.8 };

/** The largest square in the middle of a picture of this shape. */
function squareIn({ width, height }: { readonly width: number; readonly height: number }): Crop {
  const side = Math.min(width, height);
  const [across, down] = [side / width, side / height];
  return { left: (1 - across) / 2, top: (1 - down) / 2, width: across, height: down };
}

const text = (form: URLSearchParams, name: string): string => (form.get(name) ?? '').trim();

/** Her description in both languages, an empty one left out. */
export function describedBy(form: URLSearchParams): { readonly alt: string; readonly 'alt-de'?: string } {
  const german = text(form, 'alt-de');
  return { alt: text(form, 'alt'), ...(german !== '' && { 'alt-de': german }) };
}

/** The part that a form asks for, as it is written; null for the whole picture, undefined where it can't be read. */
function cropIn(
  form: URLSearchParams,
  shape: { readonly width: number; readonly height: number } | null,
): string | null | undefined {
  const frame = form.get('frame');
  if (frame === 'whole') return null;
  if (frame === 'middle') return writeCrop(MIDDLE);
  if (frame === 'square') return shape === null ? undefined : writeCrop(squareIn(shape));
  const parts = ['left', 'top', 'width', 'height'].map((name) => `${text(form, name).replace(',', '.')}%`);
  const crop = readCrop(parts.join(' '));
  if (crop === null) return undefined;
  return crop.width === 1 && crop.height === 1 ? null : writeCrop(crop);
}

function moved(list: readonly WrittenPhoto[], from: number, to: number): readonly WrittenPhoto[] {
  const one = list[from];
  if (one === undefined || to < 0 || to >= list.length) return list;
  return list.toSpliced(from, 1).toSpliced(to, 0, one);
}

const withField = (photo: WrittenPhoto, name: string, value: Plain | null): WrittenPhoto => {
  const { [name]: _old, ...rest } = photo;
  return value === null ? rest : { ...rest, [name]: value };
};

/** Which photograph a form is about, from 0; -1 where it says none. */
export const placeIn = (form: URLSearchParams): number =>
  /^\d{1,3}$/.test(form.get('at') ?? '') ? Number(form.get('at')) : -1;

/**
 * The list after a form.
 * @param shape of the photograph it is about, upright, px; null where the file can't be read
 */
export function listAfter(
  list: readonly WrittenPhoto[],
  form: URLSearchParams,
  shape: { readonly width: number; readonly height: number } | null,
): Listed {
  const action = PHOTO_ACTIONS.find((one) => one === form.get('do'));
  const at = placeIn(form);
  const photo = list[at];
  if (action === undefined || photo === undefined) return { ok: false, problem: { code: 'no-such-photo' } };
  const replaced = (next: WrittenPhoto): Listed => ({ ok: true, pictures: list.toSpliced(at, 1, next) });
  if (action === 'remove') return { ok: true, pictures: list.toSpliced(at, 1) };
  if (action === 'earlier') return { ok: true, pictures: moved(list, at, at - 1) };
  if (action === 'later') return { ok: true, pictures: moved(list, at, at + 1) };
  if (action === 'words') {
    const words = describedBy(form);
    if (words.alt === '') return { ok: false, problem: { code: 'alt-missing' } };
    return replaced(withField(withField(photo, 'alt', words.alt), 'alt-de', words['alt-de'] ?? null));
  }
  const crop = cropIn(form, shape);
  return crop === undefined
    ? { ok: false, problem: { code: 'crop-unreadable' } }
    : replaced(withField(photo, 'crop', crop));
}
