/** From a chosen piece to the maker's order book: the form, and every order on this device with where it stands. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { postageMinor } from '#core/post/postage.ts';
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { OrderWords } from '#words/words.ts';
import { formId, measureId } from '../model/elements.ts';
import type { ShopForSizer } from '../model/input.ts';
import { browserClock, randomByte } from '../adapters/device.ts';
import { enoughFor } from './model/enough.ts';
import { checkForm, quantityOf, type FormProblems, type OrderForm } from './model/form.ts';
import { addressProblems, countryOf, postageOf } from './model/delivery.ts';
import type { Ordered } from './model/draftText.ts';
import { dropDraft, keepDraft, readDraft } from './model/draft.ts';
import { newEntry } from './model/outbox.ts';
import type { OrderItem } from './model/item.ts';
import { draftOrder, writeOrder } from './model/write.ts';
import { OrderFormView } from './OrderFormView.tsx';
import { OutboxEntry } from './OutboxEntry.tsx';
import { useOutbox } from './useOutbox.ts';

export type OrderingProps = {
  readonly shop: ShopForSizer;
  readonly format: Format;
  /** What would be ordered; null: no form, only the orders that stand. */
  readonly item: OrderItem | null;
  /** The page's piece. */
  readonly pieceId: string;
  readonly onOrdered: () => void;
  /** The form that stood open when she came: it doesn't take the focus from where she is. */
  readonly begun: Ordered | null;
  readonly lang: Lang;
  readonly words: OrderWords;
};

export function Ordering(props: OrderingProps) {
  const { shop, format, item, pieceId, onOrdered, begun, lang, words } = props;
  const outbox = useOutbox(shop.postTo, words);
  const [ordered, setOrdered] = useState(0);
  const list = useRef<HTMLHeadingElement>(null);
  // The form has gone: the reader's place is where the order now stands.
  useEffect(() => {
    if (ordered > 0) list.current?.focus();
  }, [ordered]);
  // There is one of what lies finished, whatever was written before.
  const formFor = (form: OrderForm): OrderForm =>
    item?.made === 'ready' ? { ...form, quantity: '1' } : form;
  const kind = item?.made === 'ready' ? 'ready' : 'sized';
  // Once an opening: a form that goes while she corrects her size comes back without taking the focus.
  const focused = useRef(begun);
  /** Where a piece is sized: on this page, or on its own. */
  const sizeField = (id: string): string =>
    `${id === pieceId ? '' : `${shop.pieces}${encodeURIComponent(id)}/`}#${measureId(formId(id))}`;
  const order = (form: OrderForm) => {
    if (item === null) return;
    const document = writeOrder(item, formFor(form), browserClock.nowMs(), randomByte);
    const state = shop.postTo === null || form.trap !== '' ? 'mail' : 'waiting';
    outbox.put(newEntry(document, item.piece.name, state));
    dropDraft(outbox.store);
    focused.current = null;
    setOrdered(ordered + 1);
    onOrdered();
  };
  return (
    <div class="sizer-ordering">
      {item !== null && (
        <OrderFormView
          words={words}
          format={format}
          postTo={shop.postTo}
          ready={item.made === 'ready'}
          summary={(form) => words.rows(format, draftOrder(item, formFor(form)), item.piece.name)}
          post={item.post}
          postage={(form) => postageText(item, formFor(form), format, words)}
          check={(form) => checkAll(item, formFor(form))}
          begun={readDraft(outbox.store, item.piece.id)}
          focus={focused.current !== kind}
          onFocused={() => (focused.current = kind)}
          onChange={(form) =>
            form === null ? dropDraft(outbox.store) : keepDraft(outbox.store, item.piece.id, kind, form)
          }
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
                sizeField={sizeField(entry.order.piece.id)}
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

/** What posting comes to, with the total, or why it can't be; '' where nothing is posted. */
function postageText(item: OrderItem, form: OrderForm, format: Format, words: OrderWords): string {
  const { post, candidate } = item;
  const postage = postageOf(item, form);
  if (post === null || postage === null) return '';
  if (postage.kind === 'too-heavy') {
    return sentenceOf(words.formProblems, { code: 'parcel-heavy', mostG: postage.mostG }, format);
  }
  const minor = postageMinor(postage) ?? 0;
  const total = orderTotalMinor(
    { priceMinor: candidate.priceMinor, postageMinor: minor },
    quantityOf(form) ?? 1,
  );
  return words.delivery.postage(format, countryOf(post, form), minor, total);
}

/** The form by itself, and the number of pieces against the beads there are. */
function checkAll(item: OrderItem, form: OrderForm): FormProblems {
  const problems = { ...checkForm(form), ...addressProblems(item.post, form) };
  const quantity = quantityOf(form);
  if (quantity === null) return problems;
  if (!enoughFor(item, quantity)) return { ...problems, quantity: { code: 'stock' } };
  const postage = postageOf(item, form);
  return postage?.kind === 'too-heavy'
    ? { ...problems, quantity: { code: 'parcel-heavy', mostG: postage.mostG } }
    : problems;
}
