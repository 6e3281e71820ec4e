import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { benchCard } from '#bench/models/benchCard.ts';
import { groupsOf } from '#bench/models/groups.ts';
import { keptSince } from '#bench/models/keeping.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { stepLines } from '#bench/models/stepList.ts';
import { OrderCard } from '#bench/views/card/OrderCard.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { paymentLink } from '#bench/letters/letters.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { stringing } from '#core/instructions/stringing.ts';
import type { OrderDocument } from '#order/document.ts';
import { catalogue, frame, openShop, orderFor } from '../shop.ts';

const shop = openShop(catalogue);
afterAll(() => shop.close());

function take(document: OrderDocument, seen: Catalogue = catalogue): OrderDetail {
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, document.piece.id) }]);
  const detail = orderDetail(shop.book, seen, document.number, frame);
  if (detail === null) throw new Error('not in the book');
  return detail;
}

describe('the sequence', () => {
  it('in groups holds every component of every piece, in its order', () => {
    for (const { design, listedMinor } of catalogue.pieces) {
      const { rules } = catalogue.shop;
      const card = stringing(
        design,
        rules,
        describePiece(design, rules, listedMinor, usual(design)),
        'right',
      );
      for (const { rows } of card.strands) {
        const groups = groupsOf(rows);
        const listed = groups.flatMap(({ repeats, parts }) =>
          Array.from({ length: repeats }, () =>
            parts.flatMap(({ component, count }) => Array.from({ length: count }, () => component)),
          ).flat(),
        );
        const strung = rows.flatMap(({ component, count }) => Array.from({ length: count }, () => component));
        expect(listed).toEqual(strung);
        expect(groups.at(-1)?.toMm).toBe(rows.at(-1)?.toMm);
        expect(groups.map(({ runningCount }) => runningCount)).toEqual(
          groups.map(({ runningCount }) => runningCount).toSorted((a, b) => a - b),
        );
      }
    }
  });

  it('names a motif once with how often it repeats', () => {
    const row = (component: string, at: number) => ({
      kind: 'strung' as const,
      section: 's',
      side: 'left' as const,
      component,
      count: 1,
      runningCount: at,
      eachMm: 1,
      fromMm: at - 1,
      toMm: at,
    });
    const groups = groupsOf(['x', 'a', 'b', 'a', 'b', 'a', 'b', 'y'].map((name, at) => row(name, at + 1)));
    expect(
      groups.map(({ repeats, parts }) => [repeats, parts.map(({ component }) => component).join('')]),
    ).toEqual([
      [1, 'x'],
      [3, 'ab'],
      [1, 'y'],
    ]);
  });
});

describe('the steps', () => {
  it('of several strands stand once where they are alike, and none is lost', () => {
    const several = catalogue.pieces.filter((piece) => piece.design.strands.length > 1);
    expect(several.length).toBeGreaterThan(2);
    for (const { design, listedMinor } of several) {
      const { rules } = catalogue.shop;
      const { steps } = stringing(
        design,
        rules,
        describePiece(design, rules, listedMinor, usual(design)),
        'left',
      );
      const say = (step: (typeof steps)[number]) => `${step.code} ${JSON.stringify(step.args)}`;
      const lines = stepLines(steps, say);
      const told = lines.flatMap(({ parts }) =>
        parts.flatMap(({ text, strands }) =>
          strands.length === 0 ? [`- ${text}`] : strands.map((strand) => `${strand} ${text}`),
        ),
      );
      expect(told.toSorted()).toEqual(steps.map((step) => `${step.strand ?? '-'} ${say(step)}`).toSorted());
      expect(lines.length).toBeLessThan(steps.length);
    }
  });
});

describe('the card', () => {
  it('holds what stringing needs, from the maker’s own figures', () => {
    const detail = take(orderFor(catalogue, 'weir-light', 165.1));
    const card = benchCard(detail, null);
    if (card === null) throw new Error('no card');
    const html = renderToString(<OrderCard bench={card} detail={detail} frame={frame} />);
    const { design } = card.copy;
    for (const name of [
      design.wire.name,
      design.components[design.ends.clasp]?.name,
      design.components[design.ends.crimp]?.name,
    ]) {
      expect(html).toContain(name);
    }
    expect(html).toContain(frame.format.fine(card.card.strands[0]?.cut.totalMm ?? 0));
    expect(html.match(/<input type="checkbox"/g)?.length).toBe(
      (card.strands[0]?.length ?? 0) + card.card.steps.length,
    );
    expect(html).toContain('Eye protection');
    expect(html).not.toContain('Not as the buyer saw it');
  });

  it('calls each section by its own strand’s name, though another strand has one of the same id', () => {
    const renamed: Catalogue = {
      ...catalogue,
      pieces: catalogue.pieces.map((piece) => ({
        ...piece,
        design: {
          ...piece.design,
          strands: piece.design.strands.map((strand, at) => ({
            ...strand,
            sections: strand.sections.map((section, place) => {
              return { ...section, id: `section-${place}`, name: `Part ${place} of ${strand.id} ${at}` };
            }),
          })),
        },
      })),
    };
    const detail = take(orderFor(renamed, 'two-locks', 165), renamed);
    const card = benchCard(detail, 'now');
    if (card === null) throw new Error('no card');
    const html = renderToString(<OrderCard bench={card} detail={detail} frame={frame} />);
    const tables = html.split('<table class="sequence">').slice(1);
    expect(tables.length).toBe(2);
    card.copy.design.strands.forEach(({ id }, at) => {
      expect(tables[at]?.split('</table>')[0]).toContain(`Part 0 of ${id} ${at}`);
    });
    expect(html.split('<table class="marks">')[1]).toContain('Part 0 of');
  });

  it('of an order that differs says so at its head, and can be shown as it stood then', () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const piece = catalogue.pieces.find(({ id }) => id === 'weir-light');
    if (piece === undefined) throw new Error('no piece');
    const changed: Catalogue = {
      ...catalogue,
      pieces: [{ ...piece, revision: 'later', listedMinor: piece.listedMinor + 500 }],
    };
    const detail = take(order, changed);
    expect(detail.now.checked.differences.map(({ code }) => code)).toEqual(['revision', 'price']);
    expect(detail.then?.checked.differences).toEqual([]);
    const card = benchCard(detail, 'then');
    expect(card?.basis).toBe('then');
    const page = renderToString(<OrderView detail={detail} frame={frame} />);
    expect(page).toContain('This differs from what the buyer saw');
    expect(page).toContain('The piece has been changed since the buyer looked at it.');
    if (card !== null) {
      expect(renderToString(<OrderCard bench={card} detail={detail} frame={frame} />)).toContain(
        'Not as the buyer saw it',
      );
    }
  });

  it('of a piece that is gone is made from how it stood when the order came in', () => {
    const detail = take(orderFor(catalogue, 'weir-light', 165.1), { ...catalogue, pieces: [] });
    expect(detail.now.checked.differences.map(({ code }) => code)).toEqual(['no-such-piece']);
    expect(benchCard(detail, null)?.basis).toBe('then');
  });

  it('lays out no counts that the piece does not allow', () => {
    const order = orderFor(catalogue, 'weir-light', 165.1);
    const counts = order.shown.counts.map((strand) => strand.map(() => 9_999));
    const detail = take({ ...order, shown: { ...order.shown, counts } });
    expect(detail.now.checked.asShown).toBe(null);
    expect(benchCard(detail, 'shown')?.basis).toBe('now');
  });
});

describe('a payment link', () => {
  it('bears the order’s own figures, escaped, and is https', () => {
    const link = (template: string | null) => paymentLink(template, 'TX2-FYF-HTV', 6450, 'GBP');
    expect(link('https://pay.example/{number}?a={amount}&c={currency}')).toBe(
      'https://pay.example/TX2-FYF-HTV?a=64.50&c=GBP',
    );
    expect(link('javascript:alert({amount})')).toBe(null);
    expect(link('no address')).toBe(null);
    expect(link(null)).toBe(null);
    expect(paymentLink('https://pay.example/{amount}', 'x', 6450, 'JPY')).toBe('https://pay.example/6450');
  });
});

it('reckons keeping times by the calendar', () => {
  expect(keptSince('2026-11-25T19:00:00.000Z', 24)).toBe('2024-11-25T19:00:00.000Z');
  expect(keptSince('2026-03-31T00:00:00.000Z', 1)).toBe('2026-02-28T00:00:00.000Z');
});
