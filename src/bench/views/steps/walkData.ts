/** What the script at the board needs of a walk: plain data, its words said already. */
import { formatDateTime } from '#words/format.ts';
import { atBoardWords } from '#words/words.ts';
import type { Lit } from '#draw/drawings/lit.ts';
import type { Place } from '../../book/place.ts';
import type { Frame } from '../../models/frame.ts';
import type { WalkSheet } from '../../models/steps/sheet.ts';
import { subjectText } from '../../models/steps/subject.ts';
import { stopAt, type Walk } from '../../models/steps/walk.ts';
import { figuresOf } from './figures.ts';

export type WalkData = {
  readonly subject: string;
  readonly digest: string;
  readonly total: number;
  /** As the book has it; version 0 where it has nothing, place 0 where it went by other steps. */
  readonly book: { readonly place: number; readonly version: number };
  /** What another window's answer would say of the book's place. */
  readonly elsewhere: string;
  /** By her clock, before this page. */
  readonly seconds: number;
  /** For each stop the place before its first tick. */
  readonly stops: readonly number[];
  readonly ticks: readonly { readonly figures: readonly string[]; readonly lit: Lit }[];
  readonly words: Readonly<
    Record<
      | 'saved'
      | 'saving'
      | 'lost'
      | 'refused'
      | 'leftOff'
      | 'awake'
      | 'notAwake'
      | 'start'
      | 'pause'
      | 'count'
      | 'minutes',
      string
    >
  >;
};

export function walkData(sheet: WalkSheet, frame: Frame): WalkData {
  const { walk, kept, subject } = sheet;
  const said = atBoardWords(frame.lang);
  const { saved, saving, lost, refused, awake, notAwake, start, pause } = said;
  return {
    subject: subjectText(subject),
    digest: walk.digest,
    total: walk.total,
    book: {
      place: kept?.digest === walk.digest ? kept.place : 0,
      version: kept?.version ?? 0,
    },
    elsewhere: kept === null ? '' : elsewhereText(walk, kept, frame),
    seconds: sheet.seconds,
    stops: walk.stops.map(({ from }) => from),
    ticks: walk.stops.flatMap(({ ticks }) =>
      ticks.map((tick) => ({ figures: figuresOf(sheet, tick), lit: tick.lit })),
    ),
    words: {
      ...{ saved, saving, lost, refused, awake, notAwake, start, pause },
      leftOff:
        kept === null || kept.place === 0 ? '' : said.leftOff(formatDateTime(kept.at, frame.lang), kept.who),
      count: said.count('{done}', '{of}'),
      minutes: said.minutes('{minutes}'),
    },
  };
}

/** That somebody was first, and where that left it. */
export function elsewhereText(walk: Walk, { place, at, who }: Place, { lang }: Frame): string {
  const said = atBoardWords(lang);
  const when = formatDateTime(at, lang);
  if (place >= walk.total) return said.elsewhereDone(when, who);
  return said.elsewhere(stopAt(walk, place) + 1, walk.stops.length, when, who);
}
