/** The sizing island: a measure, a sit and a hand in; the piece at that size out, and the way to order it. */
import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { formatFor, type Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { BodyWords, OrderWords, ScreenWords, SizingWords } from '#words/words.ts';
import { browserStore } from '../adapters/browserStore.ts';
import { formId } from '../model/elements.ts';
import { canOrder, choiceOf, shownOf, sizedOf, type Outcome, type Sized } from '../model/outcome.ts';
import type { SizerState } from '../model/sizerState.ts';
import type { BuiltPiece, PieceForSizer, ShopForSizer } from '../model/input.ts';
import type { OrderItem } from '../ordering/model/item.ts';
import { Announcement } from './Announcement.tsx';
import { Price } from './Price.tsx';
import { Picture } from './Picture.tsx';
import { Figures } from './Figures.tsx';
import type { Ordered } from '../ordering/model/draftText.ts';
import { OrderSlot } from './OrderSlot.tsx';
import { ReadyOffer } from './ReadyOffer.tsx';
import type { Loader } from '../controls/useLoaded.ts';
import { useSizer } from './useSizer.ts';
import { SizeForm } from './SizeForm.tsx';

/** What a page passes in. */
export type SizerProps = {
  readonly piece: PieceForSizer;
  readonly shop: ShopForSizer;
  readonly built: BuiltPiece;
  /** The piece's picture, from the page as it was built. */
  readonly picture?: ComponentChildren;
  /** How to measure, likewise; the piece's name; and by when it would be sent. */
  readonly how?: ComponentChildren;
  readonly head?: ComponentChildren;
  readonly when?: ComponentChildren;
};

/** What each language's entry binds. */
export type SizerLanguage = {
  readonly lang: Lang;
  readonly words: SizingWords;
  /** Words of the parts that are fetched when they are wanted. */
  readonly load: {
    readonly order: Loader<{ readonly order: OrderWords }>;
    readonly body: Loader<{ readonly body: BodyWords }>;
    readonly screen: Loader<{ readonly screen: ScreenWords }>;
  };
};

export function Sizer({
  piece,
  shop,
  built,
  picture,
  how,
  head,
  when,
  lang,
  words,
  load,
}: SizerProps & SizerLanguage) {
  const id = formId(piece.id);
  const [open, setOpen] = useState<Ordered | null>(null);
  const handle = useSizer(piece, shop, lang, browserStore, id);
  const { state, outcome, engine, chosen } = handle;
  const { currency } = piece.rules;
  const format = useMemo(() => formatFor(lang, state.unit, currency), [lang, state.unit, currency]);
  // A measure that can't be taken leaves the piece as it is in the shop to look at.
  const candidate = useMemo(
    () => shownOf(outcome) ?? engine?.listedOf(chosen) ?? null,
    [outcome, engine, chosen],
  );
  const figures =
    engine === null || candidate === null ? built.figures : engine.figuresOf(chosen.design, candidate);
  const sizing = sizedOf(outcome);
  // Whether it matters may hang on the counts; before there are any, on those of the listed piece.
  const sized = sizing === null || sizing.status === 'outside' ? null : sizing.hand;
  const advice = sized ?? built.hand;
  const view = { words, format, id, design: chosen.design };
  const items = {
    sized: itemOf(chosen, shop, lang, state, outcome),
    ready: engine === null ? null : engine.readyItem(piece, engine.listedOf(piece), shop, lang, state.unit),
  };
  const price = <Price {...view} priceMinor={figures.priceMinor} when={when} />;
  return (
    <section class="sizer" data-of={state.of} aria-labelledby={`${id}-title`}>
      <div class="sizer-first">
        <Picture
          {...view}
          piece={chosen}
          candidate={candidate}
          drawn={sizing !== null || chosen !== piece}
          girthMm={girthOf(sizing)}
          unit={state.unit}
          claspSide={sized?.boardSide ?? 'left'}
          wantedMm={wantedOf(sizing)}
          loadChartWords={load.body}
          loadRulerWords={load.screen}
          onLength={handle.takeLength}
          built={picture}
        />
        <div class="sizer-side">
          {head}
          <h2 id={`${id}-title`} class="unseen">
            {words.title}
          </h2>
          <SizeForm
            {...view}
            piece={piece}
            built={built}
            handle={handle}
            lang={lang}
            advice={advice}
            how={how}
          />
          {outcome.kind === 'waiting' && state.text !== '' && (
            <p role="status">{handle.failed ? words.partFailed : words.loading}</p>
          )}
          {sizing !== null && engine !== null && (
            <engine.Verdict
              {...view}
              sizing={sizing}
              asked={{ email: shop.email, piece: piece.name }}
              onPick={(pick) => handle.dispatch({ type: 'pick', pick })}
              onTake={handle.take}
            />
          )}
          {piece.orderable ? (
            <OrderSlot
              {...view}
              shop={shop}
              store={browserStore}
              pieceId={piece.id}
              items={items}
              open={open}
              onOpen={setOpen}
              lang={lang}
              price={price}
              loadWords={load.order}
            />
          ) : (
            price
          )}
          {piece.ready && (
            <ReadyOffer {...view} piece={piece} built={built} onWant={() => setOpen('ready')} />
          )}
          <Figures {...view} figures={figures} listed={sizing === null} />
          {candidate !== null && engine !== null && (
            <engine.Changes {...view} candidate={candidate} sizing={sizing} />
          )}
          <Announcement text={sizing === null ? '' : announcementOf(words, format, sizing)} />
        </div>
      </div>
    </section>
  );
}

/** Girth of the body that the piece is sized for, mm; null where a length was given, or nothing. */
function girthOf(sizing: Sized | null): number | null {
  if (sizing === null || sizing.choice.measure.of === 'length') return null;
  return sizing.choice.measure.mm;
}

/** Finished length asked for, mm; null where a girth was, or nothing. */
function wantedOf(sizing: Sized | null): number | null {
  return sizing?.choice.measure.of === 'length' ? sizing.choice.measure.mm : null;
}

function announcementOf(words: SizingWords, format: Format, sizing: Sized): string {
  if (sizing.status === 'outside')
    return words.outside(format, sizing.side, sizing.choice.measure.of, sizing.limits);
  return words.announce(
    format,
    sizing.chosen.finishedLengthMm,
    sizing.chosen.insideGirthMm,
    sizing.chosen.priceMinor,
  );
}

/** What would be ordered now; null where there is nothing to order. */
function itemOf(
  piece: PieceForSizer,
  { post }: ShopForSizer,
  lang: Lang,
  state: SizerState,
  outcome: Outcome,
): OrderItem | null {
  const choice = choiceOf(state);
  const candidate = shownOf(outcome);
  const sized = sizedOf(outcome);
  if (!canOrder(outcome) || candidate === null || 'code' in choice) return null;
  return {
    made: 'to-measure',
    parts: state.parts,
    piece,
    lang,
    choice,
    eitherHand: sized !== null && sized.status !== 'outside' && sized.hand.boardSide === null,
    text: state.text,
    unit: state.unit,
    candidate,
    post,
  };
}
