/** The body with the strand on it; its lowest point can be dragged, and any place on it touched. */
import { useMemo, useRef } from 'preact/hooks';
import { bodyBox, drawBody, type BodyOptions, type WornStrand } from '#draw/drawings/body.ts';
import { placeAt } from '#draw/drawings/pointer.ts';
import type { Design } from '#core/design/design.ts';

export type ChartPictureProps = {
  readonly design: Design;
  readonly strands: readonly WornStrand[];
  readonly options: BodyOptions;
  /** Below the pit of the neck, mm; null: nothing can be dragged. */
  readonly lowestMm: number | null;
  readonly handleLabel: string;
  readonly handleText: string;
  /** What the handle can reach, as finished lengths mm, and where it is. */
  readonly reach: { readonly least: number; readonly most: number; readonly now: number };
  readonly onPlace: (dropMm: number) => void;
  readonly onStep: (way: 1 | -1, steps: 'one' | 'many') => void;
  readonly onEnd: (end: 'least' | 'most') => void;
};

const KEYS: Readonly<Record<string, readonly [1 | -1, 'one' | 'many']>> = {
  ArrowDown: [1, 'one'],
  ArrowRight: [1, 'one'],
  ArrowUp: [-1, 'one'],
  ArrowLeft: [-1, 'one'],
  PageDown: [1, 'many'],
  PageUp: [-1, 'many'],
};

export function ChartPicture(props: ChartPictureProps) {
  const { design, strands, options, lowestMm, reach } = props;
  const frame = useRef<HTMLDivElement>(null);
  const svg = useMemo(() => drawBody(design, strands, options), [design, strands, options]);
  const lies = [...strands, ...(options.compared ?? [])].map(({ lie }) => lie);
  const box = bodyBox(options.figure, options.sex, lies, options.bottomMm);
  const goTo = (event: PointerEvent) => {
    const rect = frame.current?.getBoundingClientRect();
    if (rect !== undefined) props.onPlace(placeAt(box, rect, event.clientX, event.clientY).yMm);
  };
  const onKey = (event: KeyboardEvent) => {
    const step = KEYS[event.key];
    if (step !== undefined) props.onStep(...step);
    else if (event.key === 'Home') props.onEnd('least');
    else if (event.key === 'End') props.onEnd('most');
    else return;
    event.preventDefault();
  };
  const topPercent = lowestMm === null ? 0 : (100 * (lowestMm - box.y)) / box.height;
  return (
    <div class="chart-frame" ref={frame}>
      <div
        class="chart-drawing"
        dangerouslySetInnerHTML={{ __html: svg }}
        onClick={(event) => lowestMm !== null && goTo(event as unknown as PointerEvent)}
      />
      {lowestMm !== null && (
        <div
          class="chart-handle"
          role="slider"
          tabIndex={0}
          aria-orientation="vertical"
          aria-label={props.handleLabel}
          aria-valuemin={Math.round(reach.least)}
          aria-valuemax={Math.round(reach.most)}
          aria-valuenow={Math.round(reach.now)}
          aria-valuetext={props.handleText}
          style={{ top: `${topPercent}%` }}
          onKeyDown={onKey}
          onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
          onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && goTo(event)}
        />
      )}
    </div>
  );
}
