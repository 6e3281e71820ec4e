/** Where e-mailed orders are pasted or dropped, and what came of them. */
import { underBase } from '#ui/site/base.ts';
import type { Arrived } from '#words/benchCodes.ts';
import { handWords, type HandWords } from '#words/words.ts';
import { MAIL_CAP } from '../intake/handForm.ts';
import type { Frame } from '../models/frame.ts';

type Props = { readonly arrived: readonly Arrived[]; readonly frame: Frame };

export function TakeInView({ arrived, frame: { words, format, lang } }: Props) {
  const { takeIn } = words;
  return (
    <>
      {arrived.length > 0 && (
        <section aria-labelledby="result" role="status">
          <h2 id="result">{takeIn.result}</h2>
          <ul>
            {arrived.map((one) => (
              <li class={one.code === 'received' || one.code === 'same' ? 'good' : 'bad'}>
                <bdi>{words.arrived(one, format)}</bdi>{' '}
                {'number' in one && <a href={underBase(`/bench/orders/${one.number}/`)}>{one.number}</a>}
                <Plain one={one} words={handWords(lang)} />
              </li>
            ))}
          </ul>
        </section>
      )}
      <form method="post" action={underBase('/bench/in/')} encType="multipart/form-data" data-drop>
        <p>{takeIn.hint}</p>
        <label>
          {takeIn.text}
          <textarea name="text" rows={10} data-from-fragment></textarea>
        </label>
        <label>
          {takeIn.files}
          <input
            type="file"
            name="files"
            multiple
            accept=".eml,.mbox,.json,.txt,message/rfc822,application/json"
          />
        </label>
        <p class="quiet">{takeIn.drop}</p>
        <button type="submit" class="main">
          {takeIn.button}
        </button>
      </form>
    </>
  );
}

/** A plain e-mail goes on into the form of an order by hand. */
function Plain({ one, words }: { readonly one: Arrived; readonly words: HandWords }) {
  if (one.code !== 'refused' || one.why.code !== 'plain') return null;
  return (
    <form class="inline" method="post" action={underBase('/bench/orders/new/')}>
      <input type="hidden" name="mail" value={one.why.text.slice(0, MAIL_CAP)} />
      <button type="submit" name="do" value="read">
        {words.toForm}
      </button>
    </form>
  );
}
