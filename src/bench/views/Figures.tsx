/** The figures side by side: what the buyer saw, as the piece stood then, as it stands now. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { formatMoney } from '#words/format.ts';
import type { MeasuredFacts } from '#words/orderFacts.ts';
import { orderWords } from '#words/words.ts';
import { measuredOf } from '../check/lengths.ts';
import type { Recheck } from '../check/recheck.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

type Made = { readonly design: Design | null; readonly candidate: Candidate };
type Line = { readonly label: string; readonly shown: string; readonly of: (made: Made) => string };

export function Figures({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { words, format, lang } = frame;
  const { shown } = detail.entry.document;
  const { columns, figureRows } = words.order;
  const length = (mm: number): string => words.both(mm, format);
  const measured = (facts: MeasuredFacts) => orderWords(lang).measured({ length }, facts);
  const seen = measured(shown);
  const design = (detail.then ?? detail.now).copy?.design ?? null;
  const counts = (all: Candidate['counts']): string => countsText(all, design);
  const lines: Line[] = [
    ...seen.map(({ label, value }, at) => ({
      label,
      shown: value,
      of: (one: Made) => measured(factsOf(one, shown))[at]?.value ?? '',
    })),
    {
      label: figureRows.price,
      shown: formatMoney(shown.priceMinor, shown.currency, lang),
      of: ({ candidate }) => format.money(candidate.priceMinor),
    },
    {
      label: figureRows.counts,
      shown: counts(shown.counts),
      of: ({ candidate }) => counts(candidate.counts),
    },
    {
      label: figureRows.error,
      shown: '',
      of: ({ candidate }) => `${format.number(Math.abs(candidate.errorMm), 1)} mm`,
    },
  ];
  const then = detail.then === null ? null : madeBy(detail.then.checked);
  const now = madeBy(detail.now.checked);
  return (
    <details open={detail.now.checked.differences.length > 0}>
      <summary id="figures">{words.order.figures}</summary>
      <div class="scroll" tabIndex={0} role="group" aria-labelledby="figures">
        <table>
          <thead>
            <tr>
              <td></td>
              <th scope="col">{columns.shown}</th>
              {then !== null && <th scope="col">{columns.then}</th>}
              {now !== null && <th scope="col">{columns.now}</th>}
            </tr>
          </thead>
          <tbody>
            {lines.map(({ label, shown: saw, of }) => (
              <tr>
                <th scope="row">{label}</th>
                <td>{saw}</td>
                {then !== null && <td class={differs(saw, of(then))}>{of(then)}</td>}
                {now !== null && <td class={differs(saw, of(now))}>{of(now)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {detail.then === null && <p class="quiet">{words.order.noThen}</p>}
    </details>
  );
}

function madeBy({ copy, candidate }: Recheck): Made | null {
  return candidate === null ? null : { design: copy?.design ?? null, candidate };
}

/** As far as the order tells its strands: older ones told the longest alone. */
function factsOf({ design, candidate }: Made, shown: MeasuredFacts): MeasuredFacts {
  const { counts, finishedLengthMm: lengthMm, insideGirthMm } = candidate;
  return design === null || shown.strandsMm.length === 0
    ? { counts, lengthMm, insideGirthMm, strandsMm: [] }
    : measuredOf(design, candidate);
}

/** Counts with their sections' names, where the design has as many sections as counts. */
function countsText(all: Candidate['counts'], design: Design | null): string {
  return all
    .map((counts, strand) => {
      const sections = design?.strands[strand]?.sections ?? [];
      const named = sections.length === counts.length;
      return counts.map((count, at) => (named ? `${sections[at]?.name ?? ''} ${count}` : count)).join(' · ');
    })
    .join(' / ');
}

function differs(seen: string, computed: string): string | undefined {
  return seen !== '' && seen !== computed ? 'differs' : undefined;
}
