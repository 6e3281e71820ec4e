/** What the buyer asked for and was shown: the same lines as on her slip and in her e-mail. */
import { orderWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import type { OrderDetail } from '../models/orderDetail.ts';
import { FactList, type Fact } from './FactList.tsx';

export function Asked({ detail, frame }: { detail: OrderDetail; frame: Frame }) {
  const { words, lang, format } = frame;
  const { document } = detail.entry;
  const [piece, size, ...rest] = orderWords(lang).rows(format, document, detail.pieceName);
  const lines: Fact[] = [
    ...[piece, size].filter((row) => row !== undefined),
    { label: words.order.exactly, value: `${format.number(document.measure.mm, 2)} mm` },
    { label: words.order.pick, value: words.order.picks[document.pick] },
    ...Object.entries(document.choices).map(([label, value]) => ({ label, value })),
    ...rest,
  ];
  return (
    <section aria-labelledby="asked">
      <h2 id="asked">{words.order.asked}</h2>
      <FactList facts={lines} />
    </section>
  );
}
