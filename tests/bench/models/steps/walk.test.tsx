/** The walk through a card's steps: every bead once, ticked run by run, lit in the drawing, kept where she left off. */
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { backUp, restore } from '#bench/book/backup.ts';
import { change } from '#bench/book/change.ts';
import { findPlace, secondsAtBoard } from '#bench/book/place.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { keepStep, type StepKept } from '#bench/keepStep.ts';
import { atBoard } from '#bench/models/steps/atBoard.ts';
import { walkSheet, type WalkSheet } from '#bench/models/steps/sheet.ts';
import {
  batchSubject,
  readSubject,
  stepsAddress,
  subjectText,
  type Subject,
} from '#bench/models/steps/subject.ts';
import { stopAt } from '#bench/models/steps/walk.ts';
import { orderDetail } from '#bench/models/orderDetail.ts';
import { monthsOf } from '#bench/models/months.ts';
import { History } from '#bench/views/History.tsx';
import { MonthsView } from '#bench/views/MonthsView.tsx';
import { AtBoardView } from '#bench/views/steps/AtBoardView.tsx';
import { drawFigures } from '#bench/views/steps/figures.ts';
import { placeShown } from '#bench/views/steps/placeShown.ts';
import { stopText } from '#bench/views/steps/stopText.ts';
import { WalkView } from '#bench/views/steps/WalkView.tsx';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import type { OrderDocument } from '#order/document.ts';
import { makeNumber } from '#order/number.ts';
import { weekWords } from '#words/words.ts';
import { catalogue, frame, openShop, orderFor, type Shop } from '../../shop.ts';

let shop: Shop;
beforeAll(() => {
  shop = openShop(catalogue);
});
afterAll(() => shop.close());

const MM = { bracelet: 165.1, necklace: 450, anklet: 225, collar: 340 } as const;

function take(id: string, more: Partial<OrderDocument> = {}, mm = 0): string {
  const kind = catalogue.pieces.find((piece) => piece.id === id)!.design.kind;
  const document = { ...orderFor(catalogue, id, mm === 0 ? MM[kind] : mm), ...more };
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, id) }]);
  return document.number;
}

function sheetOf(subject: Subject, seen: Catalogue = catalogue): WalkSheet {
  const found = walkSheet(shop.book, seen, subject, frame);
  if ('problem' in found) throw new Error(found.problem);
  return found.sheet;
}
const order = (number: string): Subject => ({ kind: 'order', number, by: null });
const batch = (...numbers: string[]): Subject => batchSubject(numbers)!;

const mirrored = catalogue.pieces.find(
  ({ design }) =>
    design.strands[0]?.mirrored === true && design.hanging === null && design.strands.length === 1,
)!;
const KINDS = {
  mirrored,
  pendant: catalogue.pieces.find(({ design }) => design.hanging !== null)!,
  'several strands': catalogue.pieces.find(({ design }) => design.strands.length > 1)!,
  chain: catalogue.pieces.find(({ design }) => design.ends.extenderMm > 0)!,
};

describe.each(Object.entries(KINDS))('a piece that is %s', (_, { id }) => {
  it('has every bead of every strand in just one run, in turn, with its part in the list', () => {
    const { walk, cards } = sheetOf(order(take(id)));
    for (const [strand, { rows, count }] of cards[0]!.card.strands.entries()) {
      const listed = rows
        .filter(({ kind }) => kind === 'strung')
        .flatMap(({ component, count: many }) => Array.from({ length: many }, () => component));
      const runs = walk.stops
        .flatMap(({ ticks }) => ticks)
        .filter(({ step }) => step.strand === strand)
        .flatMap(({ run }) => run ?? []);
      expect(runs.flatMap(({ first, last }) => [first, last])).toEqual(
        runs.flatMap(({ first, last }, at) => [at === 0 ? 1 : runs[at - 1]!.last + 1, Math.max(first, last)]),
      );
      expect(runs.at(-1)?.last).toBe(count);
      const strung = runs.flatMap(({ parts }) =>
        parts.flatMap(({ component, count: many }) => Array.from({ length: many }, () => component)),
      );
      expect(strung).toEqual(listed);
    }
  });

  it('finds what is at hand in its drawing, and shows nothing else lit', () => {
    const sheet = sheetOf(order(take(id)));
    for (const { ticks } of sheet.walk.stops) {
      for (const tick of ticks) {
        const lit = drawFigures(sheet, tick, frame)
          .map(({ svg }) => svg.match(/<g data-(?:bead|part)="[^"]+" class="lit"/g)?.length ?? 0)
          .reduce((sum, many) => sum + many, 0);
        const { end, beads, hung } = tick.lit;
        const meant =
          (beads === null ? 0 : beads.last - beads.first + 1) + Number(end !== null) + Number(hung);
        expect(lit, JSON.stringify(tick.step)).toBe(meant);
      }
    }
  });

  it('says each step as the card does, and where it is', () => {
    const sheet = sheetOf(order(take(id)));
    const texts = sheet.walk.stops.map((stop) => stopText(sheet, stop, frame));
    expect(texts).toHaveLength(sheet.cards[0]!.card.steps.length);
    expect(texts[0]?.say).toContain('Eye protection');
    const beads = texts.filter(({ say }) => say.startsWith('String bead'));
    expect(beads.length).toBeGreaterThan(0);
    for (const { ticks } of beads) for (const one of ticks) expect(one).toMatch(/\(beads? \d+/);
  });
});

describe('places', () => {
  it('lie in their stops, the last of all beyond the last tick', () => {
    const { walk } = sheetOf(order(take(mirrored.id)));
    for (const [at, { from, ticks }] of walk.stops.entries()) {
      for (let place = from; place < from + ticks.length; place += 1) expect(stopAt(walk, place)).toBe(at);
    }
    expect(stopAt(walk, walk.total)).toBe(walk.stops.length - 1);
  });

  it('are opened where she left off, or at the step that the address names', () => {
    const number = take(mirrored.id);
    const sheet = sheetOf(order(number));
    expect(placeShown(sheet, null)).toBe(0);
    expect(post(sheet, { place: '9' }).outcome).toBe('done');
    const again = sheetOf(order(number));
    expect(placeShown(again, null)).toBe(9);
    expect(placeShown(again, '3')).toBe(2);
    expect(placeShown(again, '9999')).toBe(9);
  });
});

function post(sheet: WalkSheet, fields: Record<string, string>, seen = catalogue, who = ''): StepKept {
  const form = new URLSearchParams({
    subject: subjectText(sheet.subject),
    digest: sheet.walk.digest,
    version: String(sheet.kept?.version ?? 0),
    ...fields,
  });
  return keepStep(shop.book, seen, form, who, frame);
}

describe('a save', () => {
  it('of a second window that saw less is told so, with nothing overwritten', () => {
    const sheet = sheetOf(order(take(mirrored.id)));
    expect(post(sheet, { place: '4' }, catalogue, 'Kitchen tablet').outcome).toBe('done');
    const later = post(sheet, { place: '2' });
    expect(later).toMatchObject({
      outcome: 'elsewhere',
      kept: { place: 4, version: 1, who: 'Kitchen tablet' },
    });
    expect(findPlace(shop.book, subjectText(sheet.subject))?.place).toBe(4);
  });

  it('by steps that are others now is not kept, and the page says that they changed', () => {
    const number = take(mirrored.id);
    const sheet = sheetOf(order(number));
    post(sheet, { place: '5' });
    const changed: Catalogue = {
      ...catalogue,
      shop: {
        ...catalogue.shop,
        rules: { ...catalogue.shop.rules, wire: { ...catalogue.shop.rules.wire, tailMm: 40 } },
      },
    };
    expect(post({ ...sheet, kept: null }, { place: '7', version: '1', seconds: '60' }, changed).outcome).toBe(
      'changed',
    );
    expect(secondsAtBoard(shop.book, number)).toBe(60);
    const now = sheetOf(order(number), changed);
    expect(placeShown(now, null)).toBe(0);
    const page = renderToString(<WalkView sheet={now} place={0} atBench={true} frame={frame} />);
    expect(page).toContain('The steps are others than when you left off');
  });

  it.each<[string, Record<string, string>]>([
    ['no place', { place: 'x' }],
    ['a place below the first', { place: '-1' }],
    ['another kind of digest', { place: '1', digest: 'short' }],
    ['a subject that is none', { place: '1', subject: '../../etc' }],
    ['a piece with a strange name', { place: '1', subject: 'piece:../x?' }],
    ['a clock of days', { place: '1', seconds: '999999' }],
    ['a save named by markup', { place: '1', save: '<b>bold</b>' }],
  ])('with %s is refused', (_, fields) => {
    const sheet = sheetOf(order(take(mirrored.id)));
    expect(post(sheet, fields)).toMatchObject({ outcome: 'problem', problem: 'bad-form' });
  });

  it('beyond the last step stands at the last', () => {
    const sheet = sheetOf(order(take(mirrored.id)));
    expect(post(sheet, { place: '100000' })).toMatchObject({ kept: { place: sheet.walk.total } });
  });

  it('made under a clock set back is kept, and the page warns', () => {
    const sheet = sheetOf(order(take(mirrored.id)));
    post(sheet, { place: '5' });
    const back = { ...frame, now: '2026-11-20T10:00:00.000Z' };
    const found = walkSheet(shop.book, catalogue, sheet.subject, back);
    if ('problem' in found) throw new Error(found.problem);
    const page = renderToString(<WalkView sheet={found.sheet} place={5} atBench={true} frame={back} />);
    expect(page).toContain('clock stands before the time of your last step');
    const form = new URLSearchParams({
      ...{ subject: subjectText(sheet.subject), digest: sheet.walk.digest },
      ...{ version: '1', place: '6', seconds: '30' },
    });
    expect(keepStep(shop.book, catalogue, form, '', back).outcome).toBe('done');
  });
});

describe('her clock', () => {
  it('is shared among the pieces of a batch, stands with the order and beside the rule’s minutes, and outlives a backup', () => {
    const one = take(mirrored.id, { quantity: 2 });
    const two = take(mirrored.id, {}, 170);
    const sheet = sheetOf(batch(two, one));
    expect(sheet.pieces).toHaveLength(3);
    const save = { save: 'first-save-of-all', place: '3', seconds: '1801' };
    post(sheet, save);
    // Sent again, since its answer was lost.
    post(sheet, save);
    expect(secondsAtBoard(shop.book, one) + secondsAtBoard(shop.book, two)).toBe(1801);
    expect(Math.abs(secondsAtBoard(shop.book, one) - 2 * secondsAtBoard(shop.book, two))).toBeLessThanOrEqual(
      2,
    );
    const detail = orderDetail(shop.book, catalogue, one, frame)!;
    const history = renderToString(<History detail={detail} frame={frame} />);
    expect(history).toContain('25 November 2026: 20 minutes at the board by your clock');
    change(shop.book, one, 1, frame.now, { kind: 'state', state: 'sent' });
    const months = monthsOf(shop.book, catalogue, '2026');
    expect(months.all.sent.timed).toMatchObject({ orders: 1, seconds: secondsAtBoard(shop.book, one) });
    const page = renderToString(<MonthsView months={months} frame={frame} words={weekWords('en')} />);
    expect(page).toContain('by your clock 20 min for 1 order');
    const copy = `${shop.book.file}.copy`;
    backUp(shop.book, copy);
    post(sheetOf(order(two)), { place: '1', seconds: '600' });
    restore(shop.book, copy);
    expect(secondsAtBoard(shop.book, two)).toBe(1801 - secondsAtBoard(shop.book, one));
    expect(findPlace(shop.book, subjectText(sheet.subject))?.place).toBe(3);
  });
});

describe('what can’t be walked through is named', () => {
  it.each<[string, () => Subject, string]>([
    ['an order that isn’t there', () => order(makeNumber(() => 8)), 'no-such-order'],
    ['orders of two pieces', () => batch(take('weir-light'), take('banked-fire')), 'other-piece'],
    ['a piece that isn’t there', () => ({ kind: 'piece', id: 'nothing', query: '' }), 'no-such-piece'],
    [
      'a size that can’t be made',
      () => ({ kind: 'piece', id: 'weir-light', query: 'size=900+mm' }),
      'nothing-to-string',
    ],
    [
      'more than lie side by side',
      () => batch(take('weir-light', { quantity: 9 }), take('weir-light', { quantity: 9 })),
      'too-many-pieces',
    ],
    [
      'one that is strung already',
      () => {
        const done = take('weir-light');
        change(shop.book, done, 1, frame.now, { kind: 'state', state: 'strung' });
        return batch(done, take('weir-light'));
      },
      'strung-already',
    ],
  ])('%s', (_, subject, problem) => {
    expect(walkSheet(shop.book, catalogue, subject(), frame)).toEqual({ problem });
  });
});

it('a subject reads back as it was written, whatever it is', () => {
  const all: Subject[] = [
    order('3N6-H37-7JR'),
    { kind: 'order', number: '3N6-H37-7JR', by: 'then' },
    batch(take('weir-light'), take('weir-light')),
    { kind: 'piece', id: 'weir-light', query: 'of=length&size=16+cm&hand=left' },
    { kind: 'piece', id: 'weir-light', query: '' },
  ];
  for (const subject of all) {
    expect(readSubject(subjectText(subject))).toEqual(subject);
    expect(stepsAddress(subject, 2)).toMatch(/step=3$/);
  }
  for (const text of ['', '+', 'x+y', 'piece:weir-light?size=16&x=1', '3N6-H37-7JR?by=never'])
    expect(readSubject(text), text).toBeNull();
});

it('what waits is listed by piece, with what was begun, and can be taken up together', () => {
  const waiting = atBoard(shop.book, catalogue, frame);
  const group = waiting.groups.find(({ piece }) => piece === 'weir-light')!;
  expect(group.orders.length).toBeGreaterThan(1);
  const page = renderToString(<AtBoardView waiting={waiting} atBench={true} frame={frame} />);
  expect(page).toContain('String those ticked side by side');
  expect(page).toContain(`name="order" value="${group.orders[0]!.entry.document.number}"`);
  const away = renderToString(<AtBoardView waiting={waiting} atBench={false} frame={frame} />);
  const others = [...away.matchAll(/href="([^"]+)"/g)].filter(
    ([, href]) => !/\/(steps|card)\/|batch/.test(href!),
  );
  expect(others).toEqual([]);
});

it('the page of a hostile note holds it as text', () => {
  const document = orderFor(catalogue, 'weir-light', 165.1, {
    note: '</script><b>x</b>',
    name: '<i>Eve</i>',
  });
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: null }]);
  const page = renderToString(
    <WalkView sheet={sheetOf(order(document.number))} place={0} atBench={true} frame={frame} />,
  );
  expect(page).not.toMatch(/<b>x|<i>Eve/);
  expect(page.match(/<\/script>/g)).toHaveLength(1);
});
