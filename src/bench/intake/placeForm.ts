/** What a step at the board posts: where she is now. */

export type PlaceForm = {
  readonly subject: string;
  readonly digest: string;
  readonly version: number;
  readonly place: number;
  /** Made up by the script for this one save; null from a form without it. */
  readonly save: string | null;
  readonly seconds: number;
};

/** A day and a night: nobody's clock runs longer between two saves. */
const MOST_SECONDS = 86_400;
const MOST_SUBJECT = 400;

/** Reads it; null for anything that no page of the bench sends. */
export function readPlaceForm(form: URLSearchParams): PlaceForm | null {
  const whole = (name: string, most: number): number | null => {
    const text = form.get(name) ?? '0';
    return /^\d{1,9}$/.test(text) && Number(text) <= most ? Number(text) : null;
  };
  const subject = form.get('subject') ?? '';
  const digest = form.get('digest') ?? '';
  const save = form.get('save');
  const version = whole('version', 999_999_999);
  const place = form.has('place') ? whole('place', 1_000_000) : null;
  const seconds = whole('seconds', MOST_SECONDS);
  if (version === null || place === null || seconds === null) return null;
  if (subject === '' || subject.length > MOST_SUBJECT || !/^[\da-f]{64}$/.test(digest)) return null;
  if (save !== null && !/^[\w-]{8,64}$/.test(save)) return null;
  return { subject, digest, version, place, save, seconds };
}
