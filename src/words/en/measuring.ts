/** How to measure, in words; read off the page as it was built, never by the island. */
import type { Measure } from '#core/design/choice.ts';

export const measuring = {
  title: 'How to measure',
  how: {
    wrist:
      'Lay the tape round your wrist just behind the wrist bone, on the elbow’s side of it: touching all round, pressing nowhere. Write what it says and add nothing; the sit below adds the ease.',
    ankle:
      'Lay the tape round your leg just above the ankle bone: touching all round, pressing nowhere. Write what it says and add nothing.',
    neck: 'Lay the tape round your neck just below the larynx, square to the neck: touching all round, pressing nowhere. Not round the foot of the neck, where a necklace lies: that is worked out from yours.',
    length:
      'Lay a necklace that you like out straight and measure it end to end, clasp and ring included. Or hang a string where the piece should lie, and measure that.',
  } satisfies Record<Measure['of'], string>,
  noTape:
    'No tape? Wrap a strip of paper, mark where it meets itself, and lay it on a ruler. Wool and elastic stretch, and mislead.',
  strip: 'Print a paper tape',
  picture: {
    wrist: 'A hand and forearm; the tape runs round the wrist, just behind the wrist bone.',
    ankle: 'A foot and lower leg; the tape runs round the leg, just above the ankle bone.',
    neck: 'Head, neck and shoulders; the tape runs round the neck, just below the larynx and square to the neck.',
    length:
      'A necklace laid out straight beside a ruler, measured from the end of the clasp to the end of the ring.',
  } satisfies Record<Measure['of'], string>,
};
