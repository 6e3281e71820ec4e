/** The bench card of an order. */
import { benchCardWords, orderWords } from '#words/words.ts';
import { formatDate } from '#words/format.ts';
import type { BenchCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import type { OrderDetail } from '../../models/orderDetail.ts';
import { CardHead } from './CardHead.tsx';
import { CardSheet } from './CardSheet.tsx';

type Props = { readonly bench: BenchCard; readonly detail: OrderDetail; readonly frame: Frame };

export function OrderCard({ bench, detail, frame }: Props) {
  const { lang } = frame;
  const words = benchCardWords(lang);
  const { document, dueOn } = detail.entry;
  const { buyer, quantity, measure, number } = document;
  const size = orderWords(lang).size(measure);
  const warned = detail.now.checked.differences.length > 0;
  const head = (
    <CardHead
      bench={bench}
      frame={frame}
      mark={number}
      size={size}
      more={dueOn === null ? [] : [{ label: words.facts.due, value: formatDate(dueOn, lang) }]}
    >
      {buyer.name !== '' && (
        <p>
          <bdi>{words.for(buyer.name)}</bdi>
        </p>
      )}
      {warned && <p class="warning">{`${words.check} ${words.by[bench.basis]}`}</p>}
      {quantity > 1 && <p class="warning">{words.quantity(quantity)}</p>}
    </CardHead>
  );
  const ticks = `${number}-${bench.basis}`;
  return <CardSheet {...{ bench, head, warned, ticks, frame }} partNames={detail.partNames} />;
}
