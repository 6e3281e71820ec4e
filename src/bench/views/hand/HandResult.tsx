/** What the piece comes to in the size asked for: figures, price, what is changed in it. */
import { designIn } from '#catalogue/model/catalogue.ts';
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { orderWords } from '#words/words.ts';
import { changesText } from '#ui/models/changesText.ts';
import { measuredOf } from '../../check/lengths.ts';
import type { Fact } from '../FactList.tsx';
import { FactList } from '../FactList.tsx';
import { sizedSentence } from '../sizedSentence.ts';
import type { HandProps } from './HandInput.tsx';

export function HandResult({ sheet, frame, words }: HandProps) {
  const { sized } = sheet.order;
  if (sized === null) return null;
  const said =
    sized.sizing === null
      ? words.liesThere
      : sizedSentence(
          { unread: null, sizing: sized.sizing, design: sized.copy.design },
          sized.choice.measure.of,
          frame,
        );
  return (
    <section class="result" aria-labelledby="comes-to">
      <h2 id="comes-to">{words.shown}</h2>
      <p class={sized.candidate === null ? 'warning' : undefined} role="status">
        {said}
      </p>
      {sized.candidate !== null && <FactList facts={factsOf({ sheet, frame, words })} />}
      <Restring sheet={sheet} frame={frame} words={words} />
    </section>
  );
}

function factsOf({ sheet, frame, words }: HandProps): Fact[] {
  const { sized, document } = sheet.order;
  const candidate = sized?.candidate ?? null;
  if (sized === null || candidate === null) return [];
  const { format, lang, words: bench } = frame;
  const { design } = sized.copy;
  const { quantity } = sized.choice;
  const postageMinor = document?.shown.postageMinor ?? 0;
  const { priceMinor } = candidate;
  const row = { askedMm: sized.choice.measure.mm, candidate, within: candidate.withinTolerance };
  const total = orderTotalMinor({ priceMinor, postageMinor }, quantity);
  return [
    ...orderWords(lang).measured({ length: (mm) => bench.both(mm, format) }, measuredOf(design, candidate)),
    // What is restrung has its beads already.
    ...(sheet.restring === null && sized.made !== 'ready'
      ? [{ label: words.changes, value: changesText(row, designIn(sized.piece, lang), lang) }]
      : []),
    { label: words.price, value: format.money(priceMinor) },
    ...(postageMinor > 0 ? [{ label: words.postage, value: format.money(postageMinor) }] : []),
    ...(total === priceMinor ? [] : [{ label: words.together, value: format.money(total) }]),
  ];
}

function Restring({ sheet: { restring }, frame: { words: bench, format }, words }: HandProps) {
  if (restring === null) return null;
  const parts = restring.parts.map(({ name, count }) => `${format.number(count)} × ${name}`);
  return (
    <>
      <p>{words.restringTakes(bench.gather.metres(restring.wireMm / 1000, format), format.list(parts))}</p>
      <p class="quiet">{words.restringPrice}</p>
    </>
  );
}
