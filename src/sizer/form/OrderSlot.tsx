/** Where ordering starts; the form is fetched when it is wanted. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { OrderWords, AskingWords } from '#words/words.ts';
import type { Store } from '../model/ports.ts';
import type { ShopForSizer } from '../model/input.ts';
import { isEmpty } from '../ordering/model/outboxText.ts';
import { begunFor, type Ordered } from '../ordering/model/draftText.ts';
import type { OrderItem } from '../ordering/model/item.ts';
import { both, useLoaded, type Loader } from '../controls/useLoaded.ts';

export type OrderSlotProps = {
  readonly words: AskingWords;
  readonly format: Format;
  /** Begins those of its elements. */
  readonly id: string;
  readonly shop: ShopForSizer;
  readonly store: Store;
  readonly pieceId: string;
  /** What would be ordered; null until there is a size, and until the computation is there. */
  readonly items: Readonly<Record<Ordered, OrderItem | null>>;
  /** Which of them the form stands open for; null where it is closed. */
  readonly open: Ordered | null;
  readonly onOpen: (open: Ordered | null) => void;
  /** Whether the one that lies finished is offered, in place of one to a size. */
  readonly asItLies: boolean;
  readonly lang: Lang;
  /** Price and time, beside the button that orders. */
  readonly price: ComponentChildren;
  readonly loadWords: Loader<{ readonly order: OrderWords }>;
};

const loadOrdering = () => import('../ordering/Ordering.tsx');

export function OrderSlot(props: OrderSlotProps) {
  const { words, format, shop, store, pieceId, items, open, onOpen, asItLies, lang, price, loadWords } =
    props;
  const item = items.sized;
  const [pending, setPending] = useState(false);
  /** The form that stood open when she left: it opens again, and doesn't take the focus. */
  const [begun, setBegun] = useState<Ordered | null>(null);
  useEffect(() => {
    // An order that waits from an earlier visit goes on its way without being asked.
    setPending(!isEmpty(store));
    // A form that was begun for this piece stands open again.
    const left = begunFor(store, pieceId);
    if (left === null) return;
    setBegun(left);
    onOpen(left);
  }, []);
  // Fetched as soon as there is something to order, so that a lost network later does no harm.
  const { module, failed } = useLoaded(
    both(loadOrdering, loadWords),
    open !== null || pending || item !== null,
  );
  const hintId = `${props.id}-first`;
  const mail = `mailto:${shop.email}`;
  return (
    <>
      <div class="sizer-buy" data-open={open !== null}>
        {price}
        {open === null && asItLies && (
          // With a key of its own: pressed before the form came alive, it is pressed again for what it was.
          <button key="ready" type="button" class="button" onClick={() => onOpen('ready')}>
            {words.readyOrder}
          </button>
        )}
        {open === null && !asItLies && (
          <button
            key="sized"
            type="button"
            class="button"
            disabled={item === null}
            aria-describedby={item === null ? hintId : undefined}
            onClick={() => onOpen('sized')}
          >
            {words.order}
          </button>
        )}
        {open === null && item === null && (
          <p id={hintId} class="sizer-hint">
            {asItLies ? words.readyOrSize : words.orderFirst}
          </p>
        )}
      </div>
      <div class="sizer-order">
        {module !== null && (
          <module.Ordering
            words={module.order}
            lang={lang}
            shop={shop}
            format={format}
            pieceId={pieceId}
            item={open === null ? null : items[open]}
            begun={begun}
            onOrdered={() => onOpen(null)}
          />
        )}
        {open !== null && module === null && (
          <p role="status">{failed ? words.orderFailed : words.loading}</p>
        )}
        {failed && <a href={mail}>{shop.email}</a>}
      </div>
    </>
  );
}
