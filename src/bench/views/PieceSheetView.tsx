/** A piece's own bench card, as listed or in the size she gives. */
import { underBase } from '#ui/site/base.ts';
import { SITS } from '#core/design/choice.ts';
import { formatDate } from '#words/format.ts';
import type { MeasuredFacts } from '#words/orderFacts.ts';
import { orderWords, sizingWords } from '#words/words.ts';
import type { Frame } from '../models/frame.ts';
import { measuredOf } from '../check/lengths.ts';
import type { PieceSheet, SheetQuery } from '../models/pieceSheet.ts';
import { CardHead } from './card/CardHead.tsx';
import { CardSheet } from './card/CardSheet.tsx';
import { Choice } from './Choice.tsx';
import { sizedSentence } from './sizedSentence.ts';

type Props = { readonly sheet: PieceSheet; readonly frame: Frame };

export function PieceSheetView({ sheet, frame }: Props) {
  const { card, piece, asked, partNames } = sheet;
  return (
    <>
      {card === null && <h1>{piece.name}</h1>}
      <Versions sheet={sheet} frame={frame} />
      <SizeForm
        sheet={sheet}
        frame={frame}
        action={underBase(`/bench/pieces/${piece.id}/`)}
        show={frame.words.pieces.show}
      />
      {card !== null && (
        <CardSheet
          bench={card}
          head={
            <CardHead
              bench={card}
              frame={frame}
              size={askedOf(asked, measuredOf(card.copy.design, card.candidate), frame)}
            />
          }
          partNames={partNames}
          ticks={`${piece.id}-${piece.revision}-${JSON.stringify(card.candidate.counts)}-${asked.hand}`}
          frame={frame}
        />
      )}
    </>
  );
}

/** Which state of the piece the card is of, and the others that somebody ordered. */
function Versions({ sheet: { piece, isThere, version, versions }, frame }: Props) {
  const { lang, words } = frame;
  const said = words.pieces.versions;
  const pageOf = (query: string): string => underBase(`/bench/pieces/${piece.id}/${query}`);
  return (
    <>
      {version !== null && (
        <div class="noted off-paper">
          <p>{said.shown(formatDate(version.lastAt, lang))}</p>
          <p class="row">
            {isThere && <a href={pageOf('')}>{said.now}</a>}
            <a href={pageOf(`board/?version=${version.snapshot}`)}>{said.lay}</a>
          </p>
        </div>
      )}
      {versions.length > 0 && (
        <details class="off-paper">
          <summary>{said.others(versions.length)}</summary>
          <ul>
            {versions.map(({ snapshot, lastAt, orders }) => (
              <li>
                <a href={pageOf(`?version=${snapshot}`)}>{said.one(formatDate(lastAt, lang), orders)}</a>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

/** The size as she wrote it, what it is of, and how it sits. */
function askedOf(asked: SheetQuery, shown: MeasuredFacts, { lang, format, words }: Frame): string {
  if (asked.text === '') return words.pieces.listed;
  const size = orderWords(lang).size(format, { measure: asked, made: 'to-measure', shown });
  return asked.of === 'length'
    ? size
    : `${size}, ${sizingWords(lang).sits[asked.sit].toLocaleLowerCase(lang)}`;
}

type FormProps = Props & {
  /** Its own page, with the folder of the shop. */
  readonly action: string;
  /** On its button. */
  readonly show: string;
};

/** What size she looks at the piece in, and what became of that. */
export function SizeForm({ sheet, frame, action, show }: FormProps) {
  const { card, piece, asked } = sheet;
  const said = sizedSentence({ ...sheet, design: piece.design }, asked.of, frame);
  return (
    <>
      <Choices sheet={sheet} frame={frame} action={action} show={show} />
      {said !== '' && (
        <p class={card === null ? 'warning' : 'off-paper'} role="status">
          {said}
        </p>
      )}
    </>
  );
}

function Choices({ sheet: { asked, measures, version }, frame, action, show }: FormProps) {
  const { lang, words: book, shop } = frame;
  const words = sizingWords(lang);
  return (
    <form class="filter off-paper" method="get" action={action}>
      {version !== null && <input type="hidden" name="version" value={String(version.snapshot)} />}
      {measures.length > 1 && (
        <Choice name="of" label={words.byLegend} all={measures} chosen={asked.of} say={words.by} />
      )}
      <label>
        {measures.length > 1 ? book.pieces.size : words.fieldLabels[measures[0] ?? 'length']}
        <input
          name="size"
          value={asked.text}
          maxLength={40}
          placeholder={words.fieldHint(shop.unit, asked.of)}
          autocomplete="off"
        />
      </label>
      {measures.some((of) => of !== 'length') && (
        <Choice name="sit" label={words.sitLegend} all={SITS} chosen={asked.sit} say={words.sits} />
      )}
      <Choice
        name="hand"
        label={words.handLegend}
        all={['right', 'left']}
        chosen={asked.hand}
        say={words.hands}
      />
      <button type="submit">{show}</button>
    </form>
  );
}
