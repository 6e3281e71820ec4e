/** From a chosen piece to the maker's order book: the form, and every order on this device with where it stands. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { OrderWords } from '#words/order.ts';
import type { ShopForSizer } from '../model/input.ts';
import { browserClock } from '../adapters/browserClock.ts';
import { randomByte } from '../adapters/randomByte.ts';
import { enoughFor } from './model/enough.ts';
import { checkForm, quantityOf, type FormProblems, type OrderForm } from './model/form.ts';
import { newEntry } from './model/outbox.ts';
import { draftOrder, writeOrder, type Wish } from './model/write.ts';
import { OrderFormView } from './OrderFormView.tsx';
import { OutboxEntry } from './OutboxEntry.tsx';
import { useOutbox } from './useOutbox.ts';

export type OrderRoadProps = {
  readonly shop: ShopForSizer;
  readonly format: Format;
  /** What would be ordered; null: no form, only the orders that stand. */
  readonly wish: Wish | null;
  readonly onOrdered: () => void;
};

export function OrderRoad({
  shop,
  format,
  wish,
  onOrdered,
  lang,
  words,
}: OrderRoadProps & { readonly lang: Lang; readonly words: OrderWords }) {
  const outbox = useOutbox(shop.road, words);
  const [ordered, setOrdered] = useState(0);
  const list = useRef<HTMLHeadingElement>(null);
  // The form has gone: the reader's place is where the order now stands.
  useEffect(() => {
    if (ordered > 0) list.current?.focus();
  }, [ordered]);
  const order = (form: OrderForm) => {
    if (wish === null) return;
    const document = writeOrder(wish, form, browserClock.nowMs(), randomByte);
    const state = shop.road === null || form.trap !== '' ? 'mail' : 'waiting';
    outbox.put(newEntry(document, wish.piece.name, state));
    setOrdered(ordered + 1);
    onOrdered();
  };
  return (
    <div class="sizer-road">
      {wish !== null && (
        <OrderFormView
          words={words}
          format={format}
          road={shop.road}
          summary={(form) => words.rows(format, draftOrder(wish, form), wish.piece.name)}
          check={(form) => checkAll(wish, form)}
          onOrder={order}
        />
      )}
      {outbox.entries.length > 0 && (
        <section class="sizer-outbox">
          <h3 ref={list} tabIndex={-1}>
            {words.orders}
          </h3>
          {!outbox.lasts && <p class="sizer-problem">{words.notKept}</p>}
          <ul role="list">
            {outbox.entries.toReversed().map((entry) => (
              <OutboxEntry
                key={entry.order.number}
                words={words}
                lang={lang}
                shop={shop}
                entry={entry}
                sending={outbox.sending === entry.order.number}
                onTryNow={outbox.tryNow}
                onMailed={() => outbox.put({ ...entry, state: 'mailed' })}
                onRemove={() => outbox.drop(entry.order.number)}
              />
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

/** The form by itself, and the number of pieces against the beads there are. */
function checkAll(wish: Wish, form: OrderForm): FormProblems {
  const problems = checkForm(form);
  const quantity = quantityOf(form);
  return quantity === null || enoughFor(wish, quantity)
    ? problems
    : { ...problems, quantity: { code: 'stock' } };
}
