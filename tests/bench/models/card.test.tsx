import { renderToString } from 'preact-render-to-string';
import { afterAll, describe, expect, it } from 'vitest';
import { change } from '#bench/book/change.ts';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { benchCard } from '#bench/models/benchCard.ts';
import { groupsOf } from '#core/instructions/groups.ts';
import { keptSince } from '#bench/models/keeping.ts';
import { orderDetail, type OrderDetail } from '#bench/models/orderDetail.ts';
import { phasesOf } from '#core/instructions/phases.ts';
import { OrderCard } from '#bench/views/card/OrderCard.tsx';
import { OrderView } from '#bench/views/OrderView.tsx';
import { paymentLink } from '#bench/letters/letters.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { drawNumbered } from '#draw/drawings/numbered.ts';
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

const cardOf = ({ design, listedMinor }: Catalogue['pieces'][number]) => {
  const { rules } = catalogue.shop;
  const candidate = describePiece(design, rules, listedMinor, usual(design));
  return { candidate, card: stringing(design, rules, candidate, 'left') };
};

describe('the steps', () => {
  it('stand under their headings, strand by strand, and none is lost', () => {
    expect(catalogue.pieces.filter(({ design }) => design.strands.length > 1).length).toBeGreaterThan(2);
    for (const piece of catalogue.pieces) {
      const { card } = cardOf(piece);
      const sheets = phasesOf(card.steps, card.strands.length);
      const listed = sheets.flatMap((phases) => phases.flatMap(({ steps }) => steps));
      expect(listed.map(({ step }) => step)).toEqual(card.steps);
      expect(listed.map(({ at }) => at)).toEqual(card.steps.map((_, at) => at));
      sheets.forEach((phases, strand) => {
        const names = phases.map(({ name }) => name);
        const first = strand === 0 ? ['ready'] : [];
        const last = strand === sheets.length - 1 ? ['done'] : [];
        expect(names).toEqual([...first, 'first', 'beads', 'second', ...last]);
      });
    }
  });
});

describe('the numbers of beads', () => {
  it('are the same in list, picture and steps: from 1 at the clasp, crimps and covers not among them', () => {
    for (const piece of catalogue.pieces) {
      const { card, candidate } = cardOf(piece);
      card.strands.forEach(({ rows, count }, strand) => {
        const spans = groupsOf(rows).flatMap(({ numbers }) => numbers ?? []);
        const listed = spans.flatMap(({ first, last }) =>
          Array.from({ length: last - first + 1 }, (_, at) => first + at),
        );
        expect(listed).toEqual(Array.from({ length: count }, (_, at) => at + 1));
        const strung = card.steps.flatMap((step) =>
          step.strand === strand && step.code === 'string-beads' ? [step.args] : [],
        );
        expect(strung.map(({ first }) => first)).toEqual([
          1,
          ...strung.slice(0, -1).map(({ last }) => last + 1),
        ]);
        expect(strung.at(-1)?.last).toBe(count);
        const caption = { title: piece.name, description: '', idPrefix: 'p' };
        const sequence = candidate.sequences[strand] ?? [];
        const svg = drawNumbered(piece.design, sequence, { ...caption, spans, mostRowMm: 260 });
        const drawn = new Set([...svg.matchAll(/<text[^>]*>([\d–]+)</g)].map(([, label]) => label));
        const wanted = new Set(
          spans.map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`)),
        );
        expect([...drawn].filter((label) => !wanted.has(label ?? ''))).toEqual([]);
        // A number is left out only where three others stand over one another.
        expect(drawn.size / wanted.size).toBeGreaterThan(0.8);
      });
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
    expect(html).toContain(frame.format.ruler(card.card.strands[0]?.cut.totalMm ?? 0, 'up'));
    expect(html.match(/<input type="checkbox"/g)?.length).toBe(
      (card.strands[0]?.length ?? 0) + card.card.steps.length,
    );
    expect(html).toContain('Eye protection');
    expect(html).not.toContain('Not as the buyer saw it');
  });

  it('has at its head what must not be overlooked: notes, number, hand, day', () => {
    const plain = orderFor(catalogue, 'quarry-dust', 450, { note: 'For my sister' });
    const document: OrderDocument = { ...plain, hand: 'left', quantity: 3 };
    take(document);
    change(shop.book, document.number, 1, frame.now, { kind: 'note', text: 'Second tray' });
    change(shop.book, document.number, 2, frame.now, { kind: 'due', on: '2026-12-20' });
    const detail = orderDetail(shop.book, catalogue, document.number, frame);
    const card = detail === null ? null : benchCard(detail, null);
    if (detail === null || card === null) throw new Error('no card');
    const html = renderToString(<OrderCard bench={card} detail={detail} frame={frame} />);
    const head = html.slice(0, html.indexOf('</header>'));
    for (const text of [
      ...['For my sister', 'Second tray', 'Make 3 of these', '20 December 2026', 'Iris Møller'],
      'The left hand works the clasp: it lies on the board’s right',
    ]) {
      expect(head).toContain(text);
    }
  });

  it('names a clasp of two halves at both ends, and what hangs between its neighbours', () => {
    const html = (id: string, mm: number): string => {
      const detail = take(orderFor(catalogue, id, mm));
      const card = benchCard(detail, null);
      if (card === null) throw new Error('no card');
      return renderToString(<OrderCard bench={card} detail={detail} frame={frame} />);
    };
    const halved = catalogue.pieces.find(
      ({ design }) => design.kind === 'bracelet' && design.ends.ring === null,
    );
    const bracelet = html(halved?.id ?? '', 165.1);
    for (const text of [
      'One half of the',
      'The other half of the',
      'Then part it',
      'one half of the clasp',
    ]) {
      expect(bracelet).toContain(text);
    }
    const list = html('quarry-dust', 450);
    const at = (text: string): number => list.indexOf(text);
    expect(at('50–51')).toBeGreaterThan(0);
    expect(list).toMatch(/>50–51<.*Scour slate drop on Silver split ring, 6 mm.*>52–53</s);
    expect(list).toMatch(
      /String beads 9 to 51\..*Hang the pendant here: thread its ring\..*String beads 52 to/s,
    );
  });

  it('prints nothing to a tenth of a millimetre but what is folded away', () => {
    for (const [id, mm] of [
      ['weir-light', 165.1],
      ['quarry-dust', 450],
    ] as const) {
      const detail = take(orderFor(catalogue, id, mm));
      const card = benchCard(detail, null);
      if (card === null) throw new Error('no card');
      const html = renderToString(<OrderCard bench={card} detail={detail} frame={frame} />);
      const shown = html
        .replace(/<details.*?<\/details>/gs, '')
        .replace(/<svg.*?<\/svg>/gs, '')
        .replaceAll(`${mm} mm`, '');
      expect([...shown.matchAll(/[\d]+\.[1-46-9]\s?mm/g)].map(String)).toEqual([]);
    }
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
    const lists = html.split('<ol class="sequence"').slice(1);
    const marks = html.split('Marks on the board').slice(1);
    expect(lists.length).toBe(2);
    card.copy.design.strands.forEach(({ id }, at) => {
      expect(lists[at]?.split('</ol>')[0]).toContain(`Part 0 of ${id} ${at}`);
      expect(marks[at]?.split('<svg')[0]).toContain(`Part 0 of ${id} ${at}`);
    });
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
