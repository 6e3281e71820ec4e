/** The piece as sized, drawn to scale: laid straight, closed as it is worn, or on a body. */
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Candidate } from '#core/sizing/sizing.ts';
import type { AskingWords, BodyWords, ScreenWords, SizingWords } from '#words/words.ts';
import type { DrawnPiece } from '../drawing/drawPiece.ts';
import { switchedBefore } from '../adapters/writtenBefore.ts';
import { VIEWS, type DrawnView, type View } from '../drawing/views.ts';
import type { PieceForSizer } from '../model/input.ts';
import { Choices } from '../controls/Choices.tsx';
import { both, useLoaded, type Loader } from '../controls/useLoaded.ts';

export type PictureProps = Omit<DrawnPiece, 'view' | 'words' | 'piece' | 'candidate'> & {
  readonly words: AskingWords;
  /** With those of an answer; null until the computation is there. */
  readonly told: SizingWords | null;
  readonly piece: PieceForSizer;
  /** False for the piece as it is in the shop: then its picture from the page stands. */
  readonly drawn: boolean;
  /** Null until the computation is there. */
  readonly candidate: Candidate | null;
  /** Finished length asked for, mm; null where none was. */
  readonly wantedMm: number | null;
  readonly loadChartWords: Loader<{ readonly body: BodyWords }>;
  readonly loadRulerWords: Loader<{ readonly screen: ScreenWords }>;
  readonly onLength: (mm: number) => void;
  /** The piece as it is in the shop, from the page as it was built: stands until there is another to draw. HTML. */
  readonly built: string;
};

/** Fetched for a picture that is to a scale. */
const loadLifeSize = () => import('../ruler/LifeSize.tsx');

export function Picture(props: PictureProps) {
  const { words, told, id, piece } = props;
  const views = VIEWS[piece.design.kind];
  const [view, setView] = useState<View>(views[0]);
  // As in `useSizer`: after the first render.
  const [before] = useState(() => views.find((one) => one === switchedBefore(`${id}-view`)));
  useLayoutEffect(() => {
    if (before !== undefined) setView(before);
  }, []);
  const [pxPerMm, setPxPerMm] = useState<number | null>(null);
  const frame = useRef<HTMLDivElement>(null);
  const { module: ruler } = useLoaded(loadLifeSize, view !== 'whole');
  const show = (next: View) => {
    setView(next);
    // The whole picture is to no scale.
    if (next === 'whole') setPxPerMm(null);
  };
  return (
    <div class="sizer-picture" data-view={view}>
      <div ref={frame} class="sizer-picture-frame" data-life-size={pxPerMm !== null}>
        {view === 'worn' ? <Worn {...props} /> : <Drawing {...props} view={view} />}
      </div>
      <Choices
        name={`${id}-view`}
        legend={words.viewsLegend}
        quiet
        value={view}
        options={views.map((value) => ({ value, label: words.views[value] }))}
        onChange={show}
      />
      {view !== 'whole' && ruler !== null && told !== null && (
        <ruler.LifeSize
          {...{ words: told, id, frame }}
          loadWords={props.loadRulerWords}
          onChange={setPxPerMm}
        />
      )}
    </div>
  );
}

const loadChart = () => import('../body/BodyChart.tsx');

/** The body chart, fetched when it is first looked at. */
function Worn({ words, told, loadChartWords, onLength, candidate, wantedMm, ...props }: PictureProps) {
  const { module, failed } = useLoaded(both(loadChart, loadChartWords), true);
  if (module === null || candidate === null || told === null)
    return <p role="status">{failed ? words.partFailed : words.loading}</p>;
  return (
    <module.BodyChart
      {...props}
      words={module.body}
      sizingWords={told}
      candidate={candidate}
      wantedMm={wantedMm ?? candidate.fittedMm}
      onLength={onLength}
    />
  );
}

/** After the form has come alive, which is what she waits for then, ms. */
const WARM_UP_MS = 100;

const loadDrawing = () => import('../drawing/drawPiece.ts');

function Drawing({ built, drawn, ...props }: PictureProps & { readonly view: DrawnView }) {
  const { view, words, told, format, id, piece, candidate, unit, claspSide, girthMm } = props;
  // Beside the computation, not after it: by the time a measure is written both are there.
  const { module } = useLoaded(loadDrawing, true);
  const stands = view === 'whole' && !drawn;
  const ready = module !== null && candidate !== null && told !== null;
  const draw = () =>
    ready
      ? module.drawPiece({ view, words: told, format, id, piece, candidate, unit, claspSide, girthMm })
      : null;
  const svg = useMemo(
    () => (stands ? null : draw()),
    [stands, module, told, view, piece, candidate, unit, claspSide, girthMm, format],
  );
  useEffect(() => {
    if (!ready || !stands) return;
    // Code takes a phone three times as long when it runs first: it does so while she types, and not when she waits.
    const timer = setTimeout(draw, WARM_UP_MS);
    return () => clearTimeout(timer);
  }, [ready, stands]);
  const common = {
    class: 'sizer-drawing',
    tabIndex: 0,
    role: 'group',
    'aria-label': words.viewsLegend,
  } as const;
  return <div {...common} dangerouslySetInnerHTML={{ __html: svg ?? built }} />;
}
