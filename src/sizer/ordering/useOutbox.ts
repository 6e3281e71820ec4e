/** The outbox joined to Preact: its entries, what is being sent, and what the buyer can do. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { OrderWords } from '#words/words.ts';
import type { PostTarget } from '../model/input.ts';
import type { Store } from '../model/ports.ts';
import { browserStore } from '../adapters/browserStore.ts';
import { browserClock } from '../adapters/device.ts';
import { browserPost } from '../adapters/browserPost.ts';
import { keepingStore } from './model/keepingStore.ts';
import { dropEntry, putEntry, readOutbox, type Entry } from './model/outbox.ts';
import { createSender } from './model/sender.ts';
import { endpointOf } from './model/endpoint.ts';

export type OutboxHandle = {
  readonly entries: readonly Entry[];
  /** Number of the order being sent, null while none is. */
  readonly sending: string | null;
  /** False where this browser keeps nothing once the page is closed. */
  readonly lasts: boolean;
  /** Keeps while the page is open what the device won't. */
  readonly store: Store;
  readonly put: (entry: Entry) => void;
  readonly drop: (number: string) => void;
  readonly tryNow: () => void;
};

/** `postTo`: where orders are sent; null: nothing is sent by itself. */
export function useOutbox(postTo: PostTarget | null, words: OrderWords): OutboxHandle {
  const store = useMemo(() => keepingStore(browserStore), []);
  const [entries, setEntries] = useState<readonly Entry[]>([]);
  const [sending, setSending] = useState<string | null>(null);
  const refresh = () => setEntries(readOutbox(store));
  const sender = useMemo(() => {
    if (postTo === null) return null;
    const onChange = (number: string | null) => {
      setSending(number);
      refresh();
    };
    return createSender(endpointOf(postTo, words), {
      store,
      post: browserPost,
      clock: browserClock,
      onChange,
    });
  }, [postTo?.kind, postTo?.address, words]);
  useEffect(() => {
    const online = () => void sender?.go(true);
    refresh();
    void sender?.go();
    // Another tab wrote to the outbox; the network came back.
    addEventListener('storage', refresh);
    addEventListener('online', online);
    return () => {
      removeEventListener('storage', refresh);
      removeEventListener('online', online);
      sender?.stop();
    };
  }, [sender]);
  const changed = () => {
    refresh();
    void sender?.go();
  };
  return {
    entries,
    sending,
    lasts: store.lasts(),
    store,
    put(entry) {
      putEntry(store, entry);
      changed();
    },
    drop(number) {
      dropEntry(store, number);
      changed();
    },
    tryNow: () => void sender?.go(true),
  };
}
