/** Works out sizes beside the board, so that no key waits for them. */
import type { Design } from '#core/design/design.ts';
import type { Rules } from '#core/design/rules.ts';
import type { Sizes } from '../model/sizes.ts';

export type SizesAsked = { readonly design: Design; readonly rules: Rules };

export type SizesDesk = {
  /** Asks anew; an answer to an earlier question is no longer waited for. */
  readonly ask: (asked: SizesAsked) => void;
  readonly close: () => void;
};

/** @param script its address */
export function openSizesDesk(script: string, answer: (sizes: Sizes | null) => void): SizesDesk {
  let worker: Worker | null = null;
  const close = (): void => {
    worker?.terminate();
    worker = null;
  };
  return {
    ask: (asked) => {
      // One that is busy with an old design would keep the new one waiting.
      close();
      worker = new Worker(script, { type: 'module' });
      worker.onmessage = ({ data }: MessageEvent<Sizes | null>) => {
        close();
        answer(data);
      };
      worker.postMessage(asked);
    },
    close,
  };
}
