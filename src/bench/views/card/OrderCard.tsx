/** The bench card of an order. */
import { INSTEAD_PARTS } from '#core/design/choice.ts';
import { benchCardWords, orderWords } from '#words/words.ts';
import { formatDate } from '#words/format.ts';
import type { BenchCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import type { OrderDetail } from '../../models/orderDetail.ts';
import type { Fact } from '../FactList.tsx';
import { CardHead, type Note } from './CardHead.tsx';
import { CardSheet } from './CardSheet.tsx';

type Props = { readonly bench: BenchCard; readonly detail: OrderDetail; readonly frame: Frame };

export function OrderCard({ bench, detail, frame }: Props) {
  const { lang } = frame;
  const words = benchCardWords(lang);
  const { document, dueOn } = detail.entry;
  const { buyer, quantity, number } = document;
  const differs = detail.now.checked.differences.length > 0;
  const head = (
    <CardHead
      bench={bench}
      frame={frame}
      mark={number}
      size={orderWords(lang).size(frame.format, document)}
      buyer={buyer.name}
      warnings={[
        ...(differs ? [`${words.check} ${words.by[bench.basis]}`] : []),
        ...(quantity > 1 ? [words.quantity(quantity)] : []),
      ]}
      notes={notesOf(detail)}
      more={[
        ...insteadFacts(detail, frame),
        ...(dueOn === null ? [] : [{ label: words.facts.due, value: formatDate(dueOn, lang) }]),
      ]}
    />
  );
  const ticks = `${number}-${bench.basis}`;
  return <CardSheet {...{ bench, head, ticks, frame }} mark={number} partNames={detail.partNames} />;
}

/** What she chose instead of the listed parts, by the names of the maker's own tray. */
function insteadFacts({ entry, partNames, now, then }: OrderDetail, { lang }: Frame): Fact[] {
  const { instead } = benchCardWords(lang);
  const components = (now.copy ?? then?.copy)?.design.components ?? {};
  return INSTEAD_PARTS.flatMap((part) => {
    const { id, name } = entry.document.instead[part];
    const own = partNames[id] ?? components[id]?.name ?? name;
    return id === '' ? [] : [{ label: instead[part], value: own }];
  });
}

/** The buyer's words first, then the maker's own in the order she wrote them. */
function notesOf({ entry, events }: OrderDetail): Note[] {
  const own = events.filter(({ kind }) => kind === 'note').map(({ text }): Note => ({ by: 'maker', text }));
  const notes: Note[] = [{ by: 'buyer', text: entry.document.buyer.note }, ...own];
  return notes.filter(({ text }) => text.trim() !== '');
}
