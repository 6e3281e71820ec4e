/** The core's answers, off the way of keys: the figures once the board is painted, the sizes out of a worker. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Design } from '#core/design/design.ts';
import { openSizesDesk, type SizesDesk } from '../adapters/sizesWorker.ts';
import { answersOf, type Answers } from '../model/answers.ts';
import type { BoardInput } from '../model/input.ts';
import type { Sizes } from '../model/sizes.ts';

export type AllAnswers = Answers & {
  /** `thinking` while they are worked out; null where there are none. */
  readonly sizes: Sizes | null | 'thinking';
};

/** As long as hands rest before sizes are worked out anew, ms: quicker ones would only be thrown away. */
const REST_MS = 250;

/** @param script address of the worker's script */
export function useAnswers(design: Design, { rules, listedMinor }: BoardInput, script: string): AllAnswers {
  const [answers, setAnswers] = useState<Answers>(() => answersOf(design, rules, listedMinor));
  const [sizes, setSizes] = useState<Sizes | null | 'thinking'>('thinking');
  const desk = useRef<SizesDesk | null>(null);
  useEffect(() => {
    desk.current = openSizesDesk(script, setSizes);
    return () => desk.current?.close();
  }, [script]);
  useEffect(() => {
    let resting: ReturnType<typeof setTimeout> | undefined;
    // The frame first: what is heard at once is the bead, not the sums.
    const painted = setTimeout(() => {
      const fresh = answersOf(design, rules, listedMinor);
      setAnswers(fresh);
      if (fresh.figures === null) {
        desk.current?.close();
        setSizes(null);
        return;
      }
      setSizes('thinking');
      resting = setTimeout(() => desk.current?.ask({ design, rules }), REST_MS);
    });
    return () => {
      clearTimeout(painted);
      clearTimeout(resting);
    };
  }, [design, rules, listedMinor]);
  return { ...answers, sizes };
}
