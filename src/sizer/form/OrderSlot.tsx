/** Where ordering starts; the form is fetched when it is wanted. */
import { useEffect, useState } from 'preact/hooks';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { OrderWords, SizingWords } from '#words/words.ts';
import type { Store } from '../model/ports.ts';
import type { ShopForSizer } from '../model/input.ts';
import { isEmpty } from '../ordering/model/outboxText.ts';
import type { OrderItem } from '../ordering/model/item.ts';
import { both, useLoaded, type Loader } from '../controls/useLoaded.ts';

export type OrderSlotProps = {
  readonly words: SizingWords;
  readonly format: Format;
  readonly shop: ShopForSizer;
  readonly store: Store;
  /** Null until there is a size to order. */
  readonly item: OrderItem | null;
  readonly lang: Lang;
  readonly loadWords: Loader<{ readonly order: OrderWords }>;
};

const loadOrdering = () => import('../ordering/Ordering.tsx');

export function OrderSlot({ words, format, shop, store, item, lang, loadWords }: OrderSlotProps) {
  const [open, setOpen] = useState(false);
  const [pending, setPending] = useState(false);
  // An order that waits from an earlier visit goes on its way without being asked.
  useEffect(() => setPending(!isEmpty(store)), []);
  // Fetched as soon as there is something to order, so that a lost network later does no harm.
  const { module, failed } = useLoaded(both(loadOrdering, loadWords), open || pending || item !== null);
  const mail = `mailto:${shop.email}`;
  return (
    <div class="sizer-order">
      {!open && (
        <>
          <button type="button" class="button" disabled={item === null} onClick={() => setOpen(true)}>
            {words.order}
          </button>
          {item === null && <p class="sizer-hint">{words.orderFirst}</p>}
        </>
      )}
      {module !== null && (
        <module.Ordering
          words={module.order}
          lang={lang}
          shop={shop}
          format={format}
          item={open ? item : null}
          onOrdered={() => setOpen(false)}
        />
      )}
      {open && module === null && <p role="status">{failed ? words.orderFailed : words.loading}</p>}
      {failed && <a href={mail}>{shop.email}</a>}
    </div>
  );
}
