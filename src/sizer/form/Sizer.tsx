/** The sizing island: a measure, a sit and a hand in; the piece at that size out, and the way to order it. */
import { useMemo, useState } from 'preact/hooks';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { strandLengths } from '#words/strandLengths.ts';
import type { AskingWords, BodyWords, OrderWords, ScreenWords } from '#words/words.ts';
import { browserStore } from '../adapters/browserStore.ts';
import { formId } from '../model/elements.ts';
import { shownOf, sizedOf, type Sized } from '../model/outcome.ts';
import type { BuiltPiece, PieceForSizer, ShopForSizer } from '../model/input.ts';
import { Price } from './Price.tsx';
import { Picture } from './Picture.tsx';
import { Figures } from './Figures.tsx';
import type { Ordered } from '../ordering/model/draftText.ts';
import { OrderSlot } from './OrderSlot.tsx';
import { ReadyOffer } from './ReadyOffer.tsx';
import type { Loader } from '../controls/useLoaded.ts';
import { useSizer, type Engine } from './useSizer.ts';
import { SizeForm } from './SizeForm.tsx';

/** What a page hands over as data. */
export type SizerData = {
  readonly piece: PieceForSizer;
  readonly shop: ShopForSizer;
  readonly built: BuiltPiece;
  /** By when it would be sent; null where it isn't made any more. */
  readonly when: string | null;
};

/** Parts of the page as it was built that stand as they are, as HTML: the piece's picture, how to measure. */
export type Stays = { readonly picture: string; readonly how: string };

export type SizerProps = SizerData & { readonly stays: Stays };

/** What each language's entry binds. */
export type SizerLanguage = {
  readonly lang: Lang;
  readonly words: AskingWords;
  /** Words of the parts that are fetched when they are wanted. */
  readonly load: {
    readonly answer: Loader<Engine>;
    readonly order: Loader<{ readonly order: OrderWords }>;
    readonly body: Loader<{ readonly body: BodyWords }>;
    readonly screen: Loader<{ readonly screen: ScreenWords }>;
  };
};

export function Sizer({ piece, shop, built, when, stays, lang, words, load }: SizerProps & SizerLanguage) {
  const id = formId(piece.id);
  const [open, setOpen] = useState<Ordered | null>(null);
  const handle = useSizer(piece, shop, lang, browserStore, id, load.answer);
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
  const told = useMemo(() => engine && { ...words, ...engine.words }, [engine]);
  const items = {
    sized: engine && engine.sizedItem(chosen, shop, lang, state, outcome),
    ready: engine && engine.readyItem(piece, engine.listedOf(piece), shop, lang, state.unit),
  };
  // Until she asks for another, what is offered first is the one that lies finished.
  const asItLies = piece.ready && state.text === '' && chosen === piece;
  const beside = asItLies ? words.readyLies(format, strandLengths(format, built.figures.lengthsMm)) : when;
  const price = <Price {...view} priceMinor={figures.priceMinor} when={beside} />;
  return (
    <section class="sizer" data-of={state.of} aria-labelledby={`${id}-title`}>
      <div class="sizer-first">
        <Picture
          {...view}
          told={told}
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
          built={stays.picture}
        />
        <div class="sizer-side">
          <h1>{piece.name}</h1>
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
            how={stays.how}
          />
          {outcome.kind === 'waiting' && state.text !== '' && (
            <p role="status">{handle.failed ? words.partFailed : words.loading}</p>
          )}
          {sizing !== null && engine !== null && (
            <engine.Verdict
              {...view}
              words={engine.words}
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
              asItLies={asItLies}
              lang={lang}
              price={price}
              loadWords={load.order}
            />
          ) : (
            price
          )}
          {piece.ready && (
            <ReadyOffer
              {...view}
              piece={piece}
              built={built}
              onWant={asItLies ? null : () => setOpen('ready')}
            />
          )}
          <Figures {...view} figures={figures} listed={sizing === null} />
          {candidate !== null && engine !== null && (
            <engine.Changes {...view} words={engine.words} candidate={candidate} sizing={sizing} />
          )}
          {engine !== null && <engine.Announcement words={engine.words} format={format} sizing={sizing} />}
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
