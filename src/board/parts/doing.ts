/** What is done to the runs in hand: by key, button or tap alike. */
import { isLoose, spanOf } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';
import type { Board } from './useBoard.ts';

export type Doing = {
  readonly count: (count: number) => void;
  readonly remove: () => void;
  readonly move: (by: 1 | -1) => void;
  readonly repeat: () => void;
  readonly middle: () => void;
  readonly whole: () => void;
};

export function doingFor(board: Board, { words }: Talk): Doing {
  const { design, span, act, select } = board;
  const section = span === null ? undefined : design.strands[span.strand]?.sections[span.section];
  const { hand, named } = words;
  const nothing: Doing = {
    ...{
      count: () => {},
      remove: () => {},
      move: () => {},
      repeat: () => {},
      middle: () => {},
      whole: () => {},
    },
  };
  if (span === null || section === undefined) return nothing;
  const { strand, section: at } = span;
  return {
    count: (count) => {
      const place = { strand, section: at, part: span.to };
      if (count > 0) act([{ type: 'count', at: place, count }], hand.counted(count));
    },
    remove: () => act([{ type: 'remove', span }], hand.removed),
    move: (by) => act([{ type: 'move', span, by }], hand.moved),
    repeat: () =>
      isLoose(section)
        ? act([{ type: 'repeat', span, name: named.pattern }], hand.repeated)
        : act([{ type: 'loosen', strand, section: at }], hand.loose),
    middle: () =>
      act(
        isLoose(section)
          ? [
              { type: 'repeat', span, name: named.middle },
              // What was marked may have become a section of its own behind what lay before it.
              { type: 'section', strand, section: span.from > 0 ? at + 1 : at, change: { role: 'focal' } },
            ]
          : [{ type: 'section', strand, section: at, change: { role: 'focal' } }],
        words.runs.focal,
      ),
    whole: () => select(spanOf(design, strand, at)),
  };
}
