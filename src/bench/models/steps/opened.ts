/** The steps that an address asks for, or why there are none. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { Bench } from '../../context/bench.ts';
import { frameFor, type Frame } from '../frame.ts';
import { walkSheet, type WalkProblem, type WalkSheet } from './sheet.ts';
import type { Subject } from './subject.ts';

export type AddressProblem = { readonly problem: WalkProblem | 'no-batch' };

export type OpenedSteps = {
  readonly frame: Frame;
  readonly found: { readonly sheet: WalkSheet } | AddressProblem;
  readonly status: 200 | 404 | 422;
};

/** Throws BookError. */
export function openSteps(
  { book, nowMs }: Bench,
  catalogue: Catalogue,
  request: Request,
  subject: Subject | AddressProblem,
): OpenedSteps {
  const frame = frameFor(request, catalogue.shop, nowMs());
  const found = 'problem' in subject ? subject : walkSheet(book(), catalogue, subject, frame);
  if ('sheet' in found) return { frame, found, status: 200 };
  return { frame, found, status: found.problem.startsWith('no-such') ? 404 : 422 };
}
