/** A picture code of the slip's address. */
import { useMemo } from 'preact/hooks';
import { renderSVG } from 'uqr';
import type { SlipWords } from '#words/words.ts';

/** Longer texts make a code too fine for a phone to read off paper. */
const MOST_TEXT = 1200;

export function QrCode({ words, text }: { readonly words: SlipWords; readonly text: string }) {
  const svg = useMemo(
    () => (text.length > MOST_TEXT ? null : renderSVG(text, { ecc: 'L', border: 4 })),
    [text],
  );
  if (svg === null) return <p class="quiet">{words.codeTooLong}</p>;
  return (
    <figure class="slip-code">
      <div role="img" aria-label={words.code} dangerouslySetInnerHTML={{ __html: svg }} />
      <figcaption class="small quiet">{words.code}</figcaption>
    </figure>
  );
}
