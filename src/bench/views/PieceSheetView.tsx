/** A piece's own bench card, as listed or in the size she gives. */
import { SITS } from '#core/design/choice.ts';
import { orderWords, sizingWords } from '#words/words.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { Frame } from '../models/frame.ts';
import type { PieceSheet } from '../models/pieceSheet.ts';
import { CardHead } from './card/CardHead.tsx';
import { CardSheet } from './card/CardSheet.tsx';

type Props = { readonly sheet: PieceSheet; readonly frame: Frame };

export function PieceSheetView({ sheet, frame }: Props) {
  const { card, piece, asked, partNames } = sheet;
  const said = saidOf(sheet, frame);
  return (
    <>
      {card === null && <h1>{piece.name}</h1>}
      <ChoiceForm sheet={sheet} frame={frame} />
      {said !== '' && (
        <p class={card === null ? 'warning' : 'off-paper'} role="status">
          {said}
        </p>
      )}
      {card !== null && (
        <CardSheet
          bench={card}
          head={<CardHead bench={card} frame={frame} size={askedOf(sheet, frame)} />}
          partNames={partNames}
          ticks={`${piece.id}-${piece.revision}-${JSON.stringify(card.candidate.counts)}-${asked.hand}`}
          frame={frame}
        />
      )}
    </>
  );
}

/** The size as she wrote it, what it is of, and how it sits. */
function askedOf({ asked }: PieceSheet, { lang, words }: Frame): string {
  if (asked.text === '') return words.pieces.listed;
  const size = orderWords(lang).size(asked);
  return asked.of === 'length'
    ? size
    : `${size}, ${sizingWords(lang).sits[asked.sit].toLocaleLowerCase(lang)}`;
}

/** One sentence on how the size came out; empty for the piece as listed. */
function saidOf({ unread, sizing, asked }: PieceSheet, { lang, format }: Frame): string {
  const words = sizingWords(lang);
  if (unread !== null) return sentenceOf(words.unread, unread, format);
  if (sizing === null) return '';
  if (sizing.status === 'refused') return sentenceOf(words.problems, sizing.problem, format);
  if (sizing.status === 'outside') return words.outside(format, sizing.side, asked.of, sizing.limits);
  const say = sizing.status === 'fits' ? words.fits : words.near;
  return say(format, sizing.targetMm, sizing.toleranceMm);
}

function ChoiceForm({ sheet: { piece, asked, measures }, frame }: Props) {
  const { lang, words: book, shop } = frame;
  const words = sizingWords(lang);
  return (
    <form class="filter off-paper" method="get" action={`/bench/pieces/${piece.id}/`}>
      {measures.length > 1 && (
        <Choice name="of" label={words.byLegend} all={measures} chosen={asked.of} say={words.by} />
      )}
      <label>
        {measures.length > 1 ? book.pieces.size : words.fieldLabels[measures[0] ?? 'length']}
        <input
          name="size"
          value={asked.text}
          maxLength={40}
          placeholder={words.fieldHint(shop.unit)}
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
      <button type="submit">{book.pieces.show}</button>
    </form>
  );
}

type ChoiceProps<Value extends string> = {
  readonly name: string;
  readonly label: string;
  readonly all: readonly Value[];
  readonly chosen: Value;
  readonly say: Readonly<Record<Value, string>>;
};

function Choice<Value extends string>({ name, label, all, chosen, say }: ChoiceProps<Value>) {
  return (
    <label>
      {label}
      <select name={name}>
        {all.map((value) => (
          <option value={value} selected={value === chosen}>
            {say[value]}
          </option>
        ))}
      </select>
    </label>
  );
}
