/** Keeps where she is at the board, from the form or the script's save to the answer. */
import { randomUUID } from 'node:crypto';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Book } from './book/open.ts';
import { keepPlace, keepTime, type Place } from './book/place.ts';
import { readPlaceForm } from './intake/placeForm.ts';
import type { Frame } from './models/frame.ts';
import { walkSheet, type WalkProblem, type WalkSheet } from './models/steps/sheet.ts';
import { readSubject, subjectText } from './models/steps/subject.ts';

export type StepKept =
  | { readonly outcome: 'done'; readonly sheet: WalkSheet; readonly kept: Place }
  /** The place was not kept: another was first, or the steps are others now. */
  | { readonly outcome: 'elsewhere'; readonly sheet: WalkSheet; readonly kept: Place }
  | { readonly outcome: 'changed'; readonly sheet: WalkSheet }
  | { readonly outcome: 'problem'; readonly problem: WalkProblem | 'bad-form' };

/**
 * Keeps a place by what was posted.
 * @param who name of the paired device; '' at the bench itself
 * @throws BookError
 */
export function keepStep(
  book: Book,
  catalogue: Catalogue,
  form: URLSearchParams,
  who: string,
  frame: Frame,
): StepKept {
  const read = readPlaceForm(form);
  const subject = read === null ? null : readSubject(read.subject);
  if (read === null || subject === null) return { outcome: 'problem', problem: 'bad-form' };
  const found = walkSheet(book, catalogue, subject, frame);
  if ('problem' in found) return { outcome: 'problem', problem: found.problem };
  const { sheet } = found;
  const { digest, version, place } = read;
  const numbers = sheet.pieces.flatMap(({ number }) => number ?? []);
  const time = {
    save: read.save ?? randomUUID(),
    at: frame.now,
    // Without an order there is nothing that time could stand with.
    seconds: numbers.length === 0 ? 0 : read.seconds,
    numbers,
  };
  if (digest !== sheet.walk.digest) {
    keepTime(book, time);
    return { outcome: 'changed', sheet };
  }
  const { outcome, kept } = keepPlace(book, subjectText(subject), {
    ...time,
    ...{ digest, version, who },
    place: Math.min(place, sheet.walk.total),
  });
  return { outcome, sheet, kept };
}
