/** A small bead is measured ten at a time, on the printed strip: a tenth of that is its length. */
import { parseQuantity } from '#catalogue/fields/quantity.ts';

/** Name of the control. */
export const TEN = 'along~ten';

const BEADS = 10;
/** Hundredths of a millimetre: a strip is read to half a millimetre at best, ten beads to a twentieth of that. */
const PLACES = 100;

/**
 * The form with the length of one filled in where none is given: `size` where
 * the width isn't given either, as of a ball. What can't be read goes into the
 * field as typed, so that the check tells of it there.
 */
export function withTenMeasured(form: URLSearchParams): URLSearchParams {
  const typed = (form.get(TEN) ?? '').trim();
  const isEmpty = (field: string): boolean => (form.get(field) ?? '').trim() === '';
  if (typed === '' || !isEmpty('along') || !isEmpty('size')) return form;
  const written = /[a-z"]\s*$/i.test(typed) ? typed : `${typed} mm`;
  const parsed = parseQuantity(written.replace(',', '.'), 'length');
  const one = parsed.ok ? `${Math.round((parsed.value / BEADS) * PLACES) / PLACES} mm` : typed;
  const filled = new URLSearchParams(form);
  filled.set(isEmpty('across') ? 'size' : 'along', one);
  filled.delete(TEN);
  return filled;
}
