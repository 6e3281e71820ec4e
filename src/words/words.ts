/**
 * Every area of words, by language: `pageWords('de')` gives the German texts of
 * the public pages. For the build, the bench and the terminal; the island
 * imports one language's file only, because every byte is sent to a phone.
 */
import { atBoard as atBoardDe } from './de/atBoard.ts';
import { bench as benchDe } from './de/bench.ts';
import { benchCard as benchCardDe } from './de/benchCard.ts';
import { board as boardDe } from './de/board.ts';
import { body as bodyDe } from './de/body.ts';
import { catalogue as catalogueDe } from './de/catalogue.ts';
import { contentForm as contentFormDe } from './de/contentForm.ts';
import { contentHistory as contentHistoryDe } from './de/contentHistory.ts';
import { desk as deskDe } from './de/desk.ts';
import { goods as goodsDe } from './de/goods.ts';
import { hand as handDe } from './de/hand.ts';
import { hosting as hostingDe } from './de/hosting.ts';
import { invoice as invoiceDe } from './de/invoice.ts';
import { letter as letterDe } from './de/letter.ts';
import { measuring as measuringDe } from './de/measuring.ts';
import { money as moneyDe } from './de/money.ts';
import { notSaved as notSavedDe } from './de/notSaved.ts';
import { order as orderDe } from './de/order.ts';
import { pages as pagesDe } from './de/pages.ts';
import { photos as photosDe } from './de/photos.ts';
import { plainMail as plainMailDe } from './de/plainMail.ts';
import { publish as publishDe } from './de/publish.ts';
import { preview as previewDe } from './de/preview.ts';
import { pricing as pricingDe } from './de/pricing.ts';
import { search as searchDe } from './de/search.ts';
import { shopping as shoppingDe } from './de/shopping.ts';
import { sized as sizedDe } from './de/sized.ts';
import { sizing as sizingDe } from './de/sizing.ts';
import { slip as slipDe } from './de/slip.ts';
import { stock as stockDe } from './de/stock.ts';
import { stockTable as stockTableDe } from './de/stockTable.ts';
import { stringing as stringingDe } from './de/stringing.ts';
import { strip as stripDe } from './de/strip.ts';
import { tablets as tabletsDe } from './de/tablets.ts';
import { teaching as teachingDe } from './de/teaching.ts';
import { terminal as terminalDe } from './de/terminal.ts';
import { week as weekDe } from './de/week.ts';
import { atBoard as atBoardEn } from './en/atBoard.ts';
import { bench as benchEn } from './en/bench.ts';
import { benchCard as benchCardEn } from './en/benchCard.ts';
import { board as boardEn } from './en/board.ts';
import { body as bodyEn } from './en/body.ts';
import { catalogue as catalogueEn } from './en/catalogue.ts';
import { contentForm as contentFormEn } from './en/contentForm.ts';
import { contentHistory as contentHistoryEn } from './en/contentHistory.ts';
import { desk as deskEn } from './en/desk.ts';
import { goods as goodsEn } from './en/goods.ts';
import { hand as handEn } from './en/hand.ts';
import { hosting as hostingEn } from './en/hosting.ts';
import { invoice as invoiceEn } from './en/invoice.ts';
import { letter as letterEn } from './en/letter.ts';
import { measuring as measuringEn } from './en/measuring.ts';
import { money as moneyEn } from './en/money.ts';
import { notSaved as notSavedEn } from './en/notSaved.ts';
import { order as orderEn } from './en/order.ts';
import { pages as pagesEn } from './en/pages.ts';
import { photos as photosEn } from './en/photos.ts';
import { plainMail as plainMailEn } from './en/plainMail.ts';
import { publish as publishEn } from './en/publish.ts';
import type { screen as screenEn } from './en/screen.ts';
import { preview as previewEn } from './en/preview.ts';
import { pricing as pricingEn } from './en/pricing.ts';
import { search as searchEn } from './en/search.ts';
import { shopping as shoppingEn } from './en/shopping.ts';
import { sized as sizedEn } from './en/sized.ts';
import { sizing as sizingEn } from './en/sizing.ts';
import { slip as slipEn } from './en/slip.ts';
import { stock as stockEn } from './en/stock.ts';
import { stockTable as stockTableEn } from './en/stockTable.ts';
import { stringing as stringingEn } from './en/stringing.ts';
import { strip as stripEn } from './en/strip.ts';
import { tablets as tabletsEn } from './en/tablets.ts';
import { teaching as teachingEn } from './en/teaching.ts';
import { terminal as terminalEn } from './en/terminal.ts';
import { week as weekEn } from './en/week.ts';
import type { Lang } from './lang.ts';
import type { NotSaved } from './notSavedCodes.ts';

/** Gives the function that picks one language of an area. */
function inLanguages<Words>(all: Readonly<Record<Lang, Words>>): (lang: Lang) => Words {
  return (lang) => all[lang];
}

/** Stringing at the board, step by step. */
export type AtBoardWords = typeof atBoardEn;
export const atBoardWords = inLanguages<AtBoardWords>({ de: atBoardDe, en: atBoardEn });

/** The maker's side. */
export type BenchWords = typeof benchEn;
export const benchWords = inLanguages<BenchWords>({ de: benchDe, en: benchEn });

/** Why nothing of the content was saved, by its code. */
export const notSavedWords = inLanguages<Readonly<Record<NotSaved, string>>>({
  de: notSavedDe,
  en: notSavedEn,
});

/** Headings of the bench card and of the sheets for a parcel. */
export type BenchCardWords = typeof benchCardEn;
export const benchCardWords = inLanguages<BenchCardWords>({ de: benchCardDe, en: benchCardEn });

/** The bead board. */
export type BoardWords = typeof boardEn;
export const boardWords = inLanguages<BoardWords>({ de: boardDe, en: boardEn });

/** The body chart. */
export type BodyWords = typeof bodyEn;
export const bodyWords = inLanguages<BodyWords>({ de: bodyDe, en: bodyEn });

/** What is wrong with an authored entry, and how to mend it. */
export const catalogueWords = inLanguages({ de: catalogueDe, en: catalogueEn });

/** The bench's forms for the content. */
export type ContentFormWords = typeof contentFormEn;
export const contentFormWords = inLanguages<ContentFormWords>({ de: contentFormDe, en: contentFormEn });

/** The desk's answers. */
export type DeskWords = typeof deskEn;
export const deskWords = inLanguages<DeskWords>({ de: deskDe, en: deskEn });

/** What was changed of the content at the bench, and two versions of one file. */
export type ContentHistoryWords = typeof contentHistoryEn;
export const contentHistoryWords = inLanguages<ContentHistoryWords>({
  de: contentHistoryDe,
  en: contentHistoryEn,
});

/** Materials, colours, closings, cautions and care. */
export type GoodsWords = typeof goodsEn;
export const goodsWords = inLanguages<GoodsWords>({ de: goodsDe, en: goodsEn });

/** Orders entered by hand, and buyers. */
export type HandWords = typeof handEn;
export const handWords = inLanguages<HandWords>({ de: handDe, en: handEn });

/** The shop on a host elsewhere, at the bench and in the terminal. */
export type HostingWords = typeof hostingEn;
export const hostingWords = inLanguages<HostingWords>({ de: hostingDe, en: hostingEn });

/** Invoices and credit notes, for the buyer. */
export type InvoiceWords = typeof invoiceEn;
export const invoiceWords = inLanguages<InvoiceWords>({ de: invoiceDe, en: invoiceEn });

/** Letters to the buyer. */
export type LetterWords = typeof letterEn;
export const letterWords = inLanguages<LetterWords>({ de: letterDe, en: letterEn });

/** How to measure. */
export type MeasuringWords = typeof measuringEn;
export const measuringWords = inLanguages<MeasuringWords>({ de: measuringDe, en: measuringEn });

/** Money and states of an order, at the bench. */
export type MoneyWords = typeof moneyEn;
export const moneyWords = inLanguages<MoneyWords>({ de: moneyDe, en: moneyEn });

/** The order form, the outbox and the e-mail. */
export type OrderWords = typeof orderEn;
export const orderWords = inLanguages<OrderWords>({ de: orderDe, en: orderEn });

/** The public pages. */
export type PageWords = typeof pagesEn;
export const pageWords = inLanguages<PageWords>({ de: pagesDe, en: pagesEn });

/** The e-mails that a piece's page offers without JavaScript. */
export const plainMailWords = inLanguages({ de: plainMailDe, en: plainMailEn });

/** Publishing, at the bench. */
export type PublishWords = typeof publishEn;
export const publishWords = inLanguages<PublishWords>({ de: publishDe, en: publishEn });

/** Measuring the screen. */
export type ScreenWords = typeof screenEn;

/** A piece's photographs, at the bench. */
export type PhotoWords = typeof photosEn;
export const photoWords = inLanguages<PhotoWords>({ de: photosDe, en: photosEn });

/** Round a page that is shown before it is published. */
export type PreviewWords = typeof previewEn;
export const previewWords = inLanguages<PreviewWords>({ de: previewDe, en: previewEn });

/** A piece as a tutorial. */
export type TeachingWords = typeof teachingEn;
export const teachingWords = inLanguages<TeachingWords>({ de: teachingDe, en: teachingEn });

/** What a price is made of, at the bench. */
export type PricingWords = typeof pricingEn;
export const pricingWords = inLanguages<PricingWords>({ de: pricingDe, en: pricingEn });

/** What people call things when they look for a piece, and what the search answers. */
export type SearchWords = typeof searchEn;
export const searchWords = inLanguages<SearchWords>({ de: searchDe, en: searchEn });

/** Sizing: what is asked, and what comes of it. The island fetches the second when it has an answer. */
export type AskingWords = typeof sizingEn;
export type SizedWords = typeof sizedEn;
export type SizingWords = AskingWords & SizedWords;
export const sizingWords = inLanguages<SizingWords>({
  de: { ...sizingDe, ...sizedDe },
  en: { ...sizingEn, ...sizedEn },
});

/** The buyer's slip. */
export type SlipWords = typeof slipEn;
export const slipWords = inLanguages<SlipWords>({ de: slipDe, en: slipEn });

/** What she has, and what she has to buy. */
export type StockWords = typeof stockEn;
export const stockWords = inLanguages<StockWords>({ de: stockDe, en: stockEn });

/** The shopping list. */
export type ShoppingWords = typeof shoppingEn;
export const shoppingWords = inLanguages<ShoppingWords>({ de: shoppingDe, en: shoppingEn });

/** A table of stock that is brought in. */
export type StockTableWords = typeof stockTableEn;
export const stockTableWords = inLanguages<StockTableWords>({ de: stockTableDe, en: stockTableEn });

/** What is strung: bench card and terminal. */
export type StringingWords = typeof stringingEn;
export const stringingWords = inLanguages<StringingWords>({ de: stringingDe, en: stringingEn });

/** The measuring strip. */
export type StripWords = typeof stripEn;
export const stripWords = inLanguages<StripWords>({ de: stripDe, en: stripEn });

/** Letting tablets in. */
export type TabletWords = typeof tabletsEn;
export const tabletWords = inLanguages<TabletWords>({ de: tabletsDe, en: tabletsEn });

/** The terminal. */
export type TerminalWords = typeof terminalEn;
export const terminalWords = inLanguages<TerminalWords>({ de: terminalDe, en: terminalEn });

/** The maker's week. */
export type WeekWords = typeof weekEn;
export const weekWords = inLanguages<WeekWords>({ de: weekDe, en: weekEn });
