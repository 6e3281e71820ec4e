/** The switch to life size; the first time, the screen is measured. */
import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ScreenWords, SizingWords } from '#words/words.ts';
import { browserStore } from '../adapters/browserStore.ts';
import { both, useLoaded, type Loader } from '../controls/useLoaded.ts';
import { recallPixels, rememberPixels } from './model/pixels.ts';
import { useLifeSize } from './useLifeSize.ts';

export type LifeSizeProps = {
  readonly words: SizingWords;
  readonly id: string;
  /** Round the drawings. */
  readonly frame: RefObject<HTMLElement>;
  readonly loadWords: Loader<{ readonly screen: ScreenWords }>;
  /** Pixels a millimetre while life size is on, else null. */
  readonly onChange: (pxPerMm: number | null) => void;
};

const loadRuler = () => import('./ScreenRuler.tsx');

export function LifeSize({ words, id, frame, loadWords, onChange }: LifeSizeProps) {
  const [on, setOn] = useState(false);
  const [measured, setMeasured] = useState<number | null>(null);
  const [measuring, setMeasuring] = useState(false);
  const { module, failed } = useLoaded(both(loadRuler, loadWords), measuring);
  useEffect(() => setMeasured(recallPixels(browserStore)), []);
  const pxPerMm = on ? measured : null;
  useLifeSize(frame, pxPerMm);
  useEffect(() => onChange(pxPerMm), [pxPerMm]);
  const turn = (next: boolean) => {
    setOn(next);
    setMeasuring(next && measured === null);
  };
  const keep = (pxPerMm: number) => {
    rememberPixels(browserStore, pxPerMm);
    setMeasured(pxPerMm);
    setMeasuring(false);
  };
  return (
    <div class="sizer-life">
      <label class="sizer-check">
        <input type="checkbox" checked={on} onChange={(event) => turn(event.currentTarget.checked)} />
        {words.lifeSize}
      </label>
      {on && measured !== null && !measuring && (
        <button type="button" class="button plain" onClick={() => setMeasuring(true)}>
          {words.measureScreen}
        </button>
      )}
      {measuring && failed && <p role="status">{words.partFailed}</p>}
      {measuring && module !== null && (
        <module.ScreenRuler words={module.screen} id={id} pxPerMm={measured} onMeasured={keep} />
      )}
    </div>
  );
}
