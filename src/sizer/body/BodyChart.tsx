/** The piece as it is worn on a body like the wearer's; the length can be set by where it should hang. */
import { useMemo, useState } from 'preact/hooks';
import { lengthName } from './model/lengthName.ts';
import { collarNeckMm } from './model/lay.ts';
import { bodyOf, UNKNOWN_WEARER } from './model/wearerForm.ts';
import { Chart, type BodyChartProps } from './Chart.tsx';
import { Compared } from './Compared.tsx';
import { WearerFields } from './WearerFields.tsx';

/** Two kept lengths and the present one: three in one chart. */
const MOST_KEPT = 2;

export function BodyChart(props: BodyChartProps) {
  const { words, sizingWords, format, id, piece, candidate, unit, girthMm, onLength } = props;
  const [form, setForm] = useState(UNKNOWN_WEARER);
  const [kept, setKept] = useState<readonly number[]>([]);
  // The neck that she sizes by is the neck of the chart, unless she writes another one here.
  const unsaid = form.neck === '';
  const presumedNeckMm = unsaid && girthMm === null ? collarNeckMm(piece, candidate) : null;
  const neckMm = girthMm ?? presumedNeckMm;
  const ownNeck = neckMm !== null && unsaid ? `${neckMm} mm` : form.neck;
  const body = useMemo(() => bodyOf({ ...form, neck: ownNeck }, unit), [form, ownNeck, unit]);
  const named = (mm: number) => {
    const name = lengthName(mm);
    return name === null ? [format.length(mm)] : [format.length(mm), words.names[name]];
  };
  const bySize = piece.design.kind === 'necklace';
  return (
    <div class="chart">
      <WearerFields
        words={words}
        sizingWords={sizingWords}
        format={format}
        id={id}
        form={form}
        problem={body.ok ? null : body.problem}
        onChange={setForm}
      />
      {body.ok && (
        <Chart
          {...props}
          body={body}
          kept={kept}
          named={named}
          movable={bySize}
          presumedNeckMm={presumedNeckMm}
        />
      )}
      {bySize && (
        <>
          <button
            type="button"
            class="button plain"
            disabled={kept.length >= MOST_KEPT || kept.includes(candidate.fittedMm)}
            onClick={() => setKept([...kept, candidate.fittedMm])}
          >
            {words.compare}
          </button>
          <Compared
            words={words}
            lengths={kept.map((mm) => ({ mm, text: named(mm).join(', ') }))}
            onTake={onLength}
            onForget={(mm) => setKept(kept.filter((one) => one !== mm))}
          />
        </>
      )}
    </div>
  );
}
