/** The slip of one order, read from the part of the address that no server sees. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { decode } from '#order/text.ts';
import { sentenceOf } from '#words/sentence.ts';
import { formatFor } from '#words/format.ts';
import { askPieceName, readableId } from './pieceName.ts';
import { keepOffline } from './keepOffline.ts';
import { SlipSheet, type SlipLanguage } from './SlipSheet.tsx';

export type SlipProps = {
  /** Address of a piece's page with `{id}` in it. */
  readonly pieceAddress: string;
  /** Address of a piece's data with `{id}` in it. */
  readonly dataAddress: string;
  /** Address of the worker that answers where there is no network. */
  readonly workerAddress: string;
};

export function Slip(props: SlipProps & SlipLanguage) {
  const { pieceAddress, dataAddress, workerAddress, lang, words, orderWords } = props;
  const address = useAddress();
  const decoded = useMemo(() => decode(decodeURIComponentSafely(address.hash)), [address.hash]);
  const id = decoded.ok ? decoded.document.piece.id : null;
  const [name, setName] = useState<string | null>(null);
  useEffect(() => void keepOffline(address.pathname, workerAddress), []);
  useEffect(() => {
    setName(null);
    if (id !== null) void askPieceName(withId(dataAddress, id), lang).then(setName);
  }, [id, lang]);
  if (!decoded.ok) {
    return <p role="alert">{sentenceOf(words.problems, decoded.problem, formatFor(lang, 'cm', 'EUR'))}</p>;
  }
  const order = decoded.document;
  return (
    <SlipSheet
      lang={lang}
      words={words}
      orderWords={orderWords}
      order={order}
      address={address.href}
      pieceName={name ?? readableId(order.piece.id)}
      pieceAddress={withId(pieceAddress, order.piece.id)}
    />
  );
}

const withId = (address: string, id: string): string => address.replace('{id}', encodeURIComponent(id));

type Address = { readonly hash: string; readonly href: string; readonly pathname: string };

function addressNow(): Address {
  const { hash, href, pathname } = location;
  return { hash, href, pathname };
}

/** The page's address, followed as it changes. */
function useAddress(): Address {
  const [address, setAddress] = useState(addressNow);
  useEffect(() => {
    const follow = () => setAddress(addressNow());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return address;
}

/** Some programs escape a link's fragment; a broken escape is left as it is. */
function decodeURIComponentSafely(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
