/** The figures side by side: what the buyer saw, as the piece stood then, as it stands now. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { formatMoney } from '#words/format.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';

type Line = { readonly label: string; readonly shown: string; readonly of: (candidate: Candidate) => string };

export function Figures({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { words, format, lang } = frame;
  const { shown } = detail.entry.document;
  const { columns, figureRows } = words.order;
  const length = (mm: number): string => words.both(mm, format);
  const design = (detail.then ?? detail.now).copy?.design ?? null;
  const counts = (all: Candidate['counts']): string => countsText(all, design);
  const lines: Line[] = [
    { label: figureRows.length, shown: length(shown.lengthMm), of: (one) => length(one.finishedLengthMm) },
    { label: figureRows.girth, shown: length(shown.insideGirthMm), of: (one) => length(one.insideGirthMm) },
    {
      label: figureRows.price,
      shown: formatMoney(shown.priceMinor, shown.currency, lang),
      of: (one) => format.money(one.priceMinor),
    },
    { label: figureRows.counts, shown: counts(shown.counts), of: (one) => counts(one.counts) },
    { label: figureRows.error, shown: '', of: (one) => `${format.number(Math.abs(one.errorMm), 1)} mm` },
  ];
  const then = detail.then?.checked.candidate ?? null;
  const now = detail.now.checked.candidate;
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
            {lines.map(({ label, shown: seen, of }) => (
              <tr>
                <th scope="row">{label}</th>
                <td>{seen}</td>
                {then !== null && <td class={differs(seen, of(then))}>{of(then)}</td>}
                {now !== null && <td class={differs(seen, of(now))}>{of(now)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {detail.then === null && <p class="quiet">{words.order.noThen}</p>}
    </details>
  );
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
