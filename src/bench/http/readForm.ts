/** Forms of the bench's own pages, read within bounds. */
import { underBase } from '#ui/site/base.ts';
import { readBytes, utf8 } from './readBody.ts';

/** The largest plain form: a note in which every character is escaped. */
const MOST_FORM_BYTES = 128 * 1024;

/** A form of fields without files; null for anything else, or more than a form holds. */
export async function readForm(
  request: Request,
  mostBytes = MOST_FORM_BYTES,
): Promise<URLSearchParams | null> {
  const type = request.headers.get('content-type') ?? '';
  if (!type.startsWith('application/x-www-form-urlencoded')) return null;
  const bytes = await readBytes(request, mostBytes);
  const text = bytes === null ? null : utf8(bytes);
  return text === null || !isUtf8Escaped(text) ? null : new URLSearchParams(text);
}

/** Whether its escapes stand for text; URLSearchParams would fill holes in. */
function isUtf8Escaped(text: string): boolean {
  try {
    decodeURIComponent(text.replaceAll(/%(?![\da-f]{2})/gi, '%25'));
    return true;
  } catch {
    return false;
  }
}

/** Why a form with files can't be read: more than it may hold, or no such form, or one cut off. */
export type FileFormProblem = {
  readonly code: 'upload-too-large' | 'upload-broken';
  readonly status: 413 | 400;
};

/** A form with files, `mostBytes` in all. */
export async function readFileForm(request: Request, mostBytes: number): Promise<FormData | FileFormProblem> {
  const broken: FileFormProblem = { code: 'upload-broken', status: 400 };
  const type = request.headers.get('content-type') ?? '';
  if (!type.startsWith('multipart/form-data')) return broken;
  const bytes = await readBytes(request, mostBytes);
  if (bytes === null) return { code: 'upload-too-large', status: 413 };
  try {
    return await new Response(Buffer.from(bytes), { headers: { 'content-type': type } }).formData();
  } catch {
    return broken;
  }
}

/**
 * After a form was done: look at the page anew, so that reloading doesn't send it again.
 * @param path within the shop, as `/bench/`
 */
export function seeOther(path: `/${string}`): Response {
  return new Response(null, { status: 303, headers: { location: underBase(path) } });
}
