/** What is done to the runs in hand: by key, button or tap alike. */
import { isLoose, spanOf } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';
import type { Board } from './useBoard.ts';

export type Doing = {
  readonly count: (count: number) => void;
  readonly remove: () => void;
  readonly move: (by: 1 | -1) => void;
  /** @param times how often; null: as often as it lies there. A section that repeats stands so often from then on. */
  readonly repeat: (times: number | null) => void;
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
    repeat: (times) => {
      if (isLoose(section)) act([{ type: 'repeat', span, name: named.pattern, times }], hand.repeated);
      else if (times === null) act([{ type: 'loosen', strand, section: at }], hand.loose);
      else act([{ type: 'section', strand, section: at, change: { usual: times } }], hand.repeated);
    },
    middle: () =>
      act(
        isLoose(section)
          ? [
              { type: 'repeat', span, name: named.middle, times: null },
              // What was marked may have become a section of its own behind what lay before it.
              { type: 'section', strand, section: span.from > 0 ? at + 1 : at, change: { role: 'focal' } },
            ]
          : [{ type: 'section', strand, section: at, change: { role: 'focal' } }],
        words.runs.focal,
      ),
    whole: () => select(spanOf(design, strand, at)),
  };
}
