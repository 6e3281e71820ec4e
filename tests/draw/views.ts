/** Every view of a design, drawn as its page would. */
import type { Design } from '#core/design/design.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import { drawCard } from '#draw/drawings/card.ts';
import { drawEnds } from '#draw/drawings/ends.ts';
import { drawLoop } from '#draw/drawings/loop.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
import { drawShare } from '#draw/drawings/share.ts';
import { drawStraight } from '#draw/drawings/straight.ts';
import { drawWrist } from '#draw/drawings/wrist.ts';
import { drawOnBody } from './worn.ts';
import { usualSequences } from './designs.ts';

/** The longest drawing that a phone should be sent for a strand of 150 beads, bytes. */
export const MOST_BYTES = 40 * 1024;

type Draw = (of: Design, title: string, idPrefix: string) => string;

export const views: Readonly<Record<string, Draw>> = {
  straight: (of, title, idPrefix) =>
    drawStraight(of, usualSequences(of), { title, description: title, idPrefix, unit: 'in' }),
  board: (of, title, idPrefix) =>
    drawBoard(of, usualSequences(of), {
      title,
      description: title,
      idPrefix,
      unit: 'cm',
      claspSide: 'right',
    }),
  loop: (of, title, idPrefix) => drawLoop(of, usualSequences(of), { title, description: title, idPrefix }),
  wrist: (of, title, idPrefix) =>
    drawWrist(of, usualSequences(of), {
      title,
      description: title,
      idPrefix,
      girthMm: 150,
      labels: { girth: title, ease: title, air: title },
    }),
  numbered: (of, title, idPrefix) =>
    drawNumbered(of, usualSequences(of)[0] ?? [], {
      title,
      description: title,
      idPrefix,
      spans: [{ first: 1, last: 5 }],
      mostRowMm: 180,
    }),
  ends: (of, title, idPrefix) =>
    drawEnds(of, usualSequences(of)[0] ?? [], {
      title,
      description: title,
      idPrefix,
      tailMm: 25,
      labels: { clasp: title, loop: title, crimp: title, cover: title, tail: title },
    }),
  body: drawOnBody,
  card: (of, title, idPrefix) => drawCard(of, usualSequences(of), { title, description: title, idPrefix }),
  share: (of, title, idPrefix) =>
    drawShare(of, usualSequences(of), { title, description: title, idPrefix, name: title, shop: title }),
};
