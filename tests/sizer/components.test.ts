/** What the island's components say, rendered as the page's build renders them. */
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Design } from '#core/design/design.ts';
import { size } from '#core/sizing/size.ts';
import { formatFor } from '#words/format.ts';
import { LANGS } from '#words/lang.ts';
import { orderWords, sizingWords } from '#words/words.ts';
import SizerDe from '#sizer/SizerDe.tsx';
import SizerEn from '#sizer/SizerEn.tsx';
import { Changes } from '#sizer/form/Changes.tsx';
import { Helps } from '#sizer/form/Helps.tsx';
import type { SizerProps } from '#sizer/form/Sizer.tsx';
import { Verdict } from '#sizer/form/Verdict.tsx';
import { sizedOf } from '#sizer/model/outcome.ts';
import { newEntry, type Entry } from '#sizer/ordering/model/outbox.ts';
import { OutboxEntry } from '#sizer/ordering/OutboxEntry.tsx';
import { adviseHand } from '#core/sizing/hand/hand.ts';
import type { BuiltPiece, PieceForSizer, ShopForSizer } from '#sizer/model/input.ts';
import { listedOf } from '#sizer/model/answer.ts';
import { figuresOf } from '#sizer/model/figures.ts';
import { limitsOf } from '#sizer/model/limits.ts';
import { MEASURES_OF_KIND } from '#core/design/choice.ts';
import { sample } from '#tests/order/orders.ts';
import {
  design,
  focalBracelet,
  pendantNecklace,
  section,
  strand,
  twoStrands,
  withComponent,
} from '#tests/support/workshop.ts';
import { bracelet, pieceOf } from './support.ts';

const SHOP: ShopForSizer = {
  name: 'Ninepin Beadwork',
  email: 'orders@ninepin.example',
  postTo: { kind: 'desk', address: '/desk/orders' },
  unit: 'in',
  slip: '/slip/',
  pieces: '/pieces/',
  post: null,
};
const necklace = pieceOf(pendantNecklace);
const past = pieceOf(focalBracelet, { orderable: false });

/** As the page's build works it out. */
function builtOf(piece: PieceForSizer): BuiltPiece {
  const [first] = MEASURES_OF_KIND[piece.design.kind];
  return {
    figures: figuresOf(piece.design, listedOf(piece)),
    limits: limitsOf(piece, first, 'easy'),
    hand: adviseHand(piece.design, 'right'),
  };
}

/** What a page hands over. */
const pageOf = (piece: PieceForSizer): SizerProps => ({
  piece,
  shop: SHOP,
  built: builtOf(piece),
  when: 'Sent within 3 weeks.',
  stays: { picture: '<img alt="">', how: '<summary>How to measure</summary>' },
});

const ASKED = { sit: 'easy', hand: 'right', pick: 'best', quantity: 1 } as const;
const words = sizingWords('en');
const format = formatFor('en', 'in', 'GBP');
/** Text as it reads, tags and blanks apart. */
const textOf = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&amp;/g, '&')
    .replace(/[\s\u00a0]+/g, ' ');
const nothing = (): void => undefined;

function verdict(piece: typeof bracelet, mm: number): string {
  const choice = {
    measure: { of: 'wrist', mm },
    sit: 'easy',
    hand: 'right',
    pick: 'best',
    quantity: 1,
  } as const;
  const sizing = sizedOf({
    kind: 'sized',
    sizing: size(piece.design, piece.rules, piece.listedMinor, choice),
    otherUnit: null,
  });
  if (sizing === null) throw new Error('expected a sizing');
  const asked = { email: SHOP.email, piece: piece.name };
  const props = {
    words,
    format,
    id: 'x',
    design: piece.design,
    sizing,
    asked,
    onPick: nothing,
    onTake: nothing,
  };
  return textOf(renderToString(h(Verdict, props)));
}

describe('island as built', () => {
  test.each([
    ['en', SizerEn, 'Round your wrist', 'As it is in the shop'],
    ['de', SizerDe, 'Umfang Ihres Handgelenks', 'So liegt es im Laden'],
  ] as const)('in %s shows the listed piece and asks for the measure', (_lang, Island, label, title) => {
    const html = renderToString(h(Island, pageOf(bracelet)));
    expect(textOf(html)).toContain(label);
    expect(textOf(html)).toContain(title);
    // A strict content security policy lets no inline style or script run.
    expect(html).not.toMatch(/\sstyle=|<script|\son[a-z]+=/);
  });

  test('every field has a label of its own, every description is there', () => {
    const html = renderToString(h(SizerEn, pageOf(necklace)));
    const ids = new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id));
    const wanted = [...html.matchAll(/\s(?:for|aria-labelledby|aria-describedby)="([^"]+)"/g)].flatMap(
      ([, list]) => (list ?? '').split(' '),
    );
    expect(wanted.length).toBeGreaterThan(2);
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
  });

  test('asks for the hand only where it matters, and says why not elsewhere', () => {
    const shown = (piece: PieceForSizer) => textOf(renderToString(h(SizerEn, pageOf(piece))));
    const faced = { ...focalBracelet, oneSided: true };
    for (const asked of [necklace, pieceOf(faced)]) expect(shown(asked)).toContain(words.handLegend);
    const turned = shown(pieceOf({ ...faced, upright: false }));
    expect(turned).not.toContain(words.handLegend);
    expect(turned).toContain('Either hand: turned end for end');
    expect(shown(bracelet)).not.toContain(words.handLegend);
    expect(shown(bracelet)).toContain('Either hand: this piece looks the same');
  });

  test('a past piece can be sized but not ordered', () => {
    const html = renderToString(h(SizerEn, pageOf(past)));
    expect(textOf(html)).not.toContain('Order this piece');
  });
});

describe('verdict', () => {
  test('says nothing where the piece fits', () => {
    expect(verdict(bracelet, 165.1)).toBe('');
  });

  test('near: names the gap and offers the piece below and above with its price', () => {
    // One bead of 20 mm more or less a side: few sizes can be met.
    const coarse = pieceOf(
      design({ strands: [strand([section('run', [['boulder', 1]], { usual: 4, fewest: 2, most: 9 })])] }),
    );
    const said = [150, 160, 170, 180, 190].map((mm) => verdict(coarse, mm)).find((text) => text !== '');
    expect(said).toMatch(/Whole beads can’t come within ⅛ in of the [\d⅛¼⅜½⅝¾⅞]+ in that you need/);
    expect(said).toMatch(/smaller than the .* £\d/);
    expect(said).toMatch(/larger than the .* £\d/);
  });

  test('outside: names the limit, the section that binds, and the way back', () => {
    const short = pieceOf(
      design({ strands: [strand([section('run', [['ball-8', 1]], { name: 'Agate run', most: 9 })])] }),
    );
    const said = verdict(short, 230);
    expect(said).toContain('This piece can’t be made that large.');
    expect(said).toContain('With more beads it would stop being this piece.');
    expect(said).not.toContain('Agate run');
    expect(said).toMatch(/Show it at [\d⅛¼⅜½⅝¾⅞]+ in/);
  });
});

test('what would help is said by name, for the maker to decide', () => {
  const help = [
    { code: 'add-component', strand: 0, component: 'ball-3', count: 2, sides: 2, offMm: 0.25 },
    { code: 'widen-section', strand: 0, section: 'run', repeats: -1, offMm: 1 },
    { code: 'more-stock', component: 'boulder', count: 1 },
  ] as const;
  const named = withComponent(focalBracelet, 'ball-3', { name: 'Silver round, 3 mm' });
  const choice = { ...ASKED, measure: { of: 'wrist', mm: 165.1 } } as const;
  const asked = { email: SHOP.email, piece: 'Banked Fire' };
  const html = renderToString(h(Helps, { words, format, design: named, help, choice, asked }));
  const said = textOf(html);
  expect(said).toContain('With 2 more of “Silver round, 3 mm” on each side it would come within 0.3 mm');
  expect(said).toMatch(/With a little less of .+ than the maker usually strings, it would come within 1 mm/);
  expect(said).toContain('If the maker can get 1 more of “boulder”, it is possible.');
  expect(said).not.toMatch(/“run”|repeated|allowed/);
  // One click writes it to her, with the size.
  const link = /href="(mailto:[^"]+)"/.exec(html)?.[1] ?? '';
  const mail = decodeURIComponent(link.replaceAll('&amp;', '&')).replaceAll('\u00a0', ' ');
  expect(mail).toContain('mailto:orders@ninepin.example?subject=Banked Fire in my size');
  expect(mail).toContain('I should like Banked Fire for a wrist of 6½ in, easy.');
  expect(mail).toContain('- With 2 more of “Silver round, 3 mm” on each side');
  expect(said).toContain('She decides');
});

describe('what comes with a size is said once and alike', () => {
  const answered = (of: Design, mm: number): string => {
    const piece = pieceOf(of);
    const measure = { of: of.kind === 'necklace' ? 'length' : 'wrist', mm } as const;
    const sizing = sizedOf({
      kind: 'sized',
      sizing: size(of, piece.rules, piece.listedMinor, { ...ASKED, measure }),
      otherUnit: null,
    });
    if (sizing === null || sizing.status === 'outside') throw new Error('expected a piece');
    return textOf(
      renderToString(h(Changes, { words, format, design: of, candidate: sizing.chosen, sizing })),
    );
  };

  test('ease: what the piece leaves over is told beside what the sit asks for, where they differ', () => {
    const told = [165, 166, 167, 168, 169, 170].map((mm) => answered(bracelet.design, mm));
    const differing = told.filter((text) => /is left over, of the ½ in that the sit asks/.test(text));
    expect(differing.length).toBeGreaterThan(0);
    expect(differing.length).toBeLessThan(told.length);
  });

  test('a chain: how far down it closes, and how long it is', () => {
    const plain = design({ kind: 'necklace', strands: pendantNecklace.strands });
    const chained = { ...plain, ends: { ...plain.ends, extenderMm: 50 } };
    const lengths = [440, 445, 450, 455, 460];
    const told = lengths.map((mm) => answered(chained, mm));
    for (const text of told) expect(text).toMatch(/extender chain( of 2 in, by the link|, which lets)/);
    expect(answered(plain, 450)).not.toContain('chain');
  });

  test('nested strands: the size is the shortest one’s', () => {
    const nested = { ...twoStrands, lie: 'nested', nestGapMm: 14 } as const;
    expect(words.fits(format, 406.4, 6, true)).toContain('The shortest strand comes within');
    const html = renderToString(
      h(SizerEn, { ...pageOf(necklace), piece: pieceOf({ ...nested, kind: 'necklace' }) }),
    );
    expect(textOf(html)).toMatch(/Round your neck|Finished length of the shortest strand/);
  });
});

test('changes name each bead with its count and the kept centre', () => {
  const sizing = sizedOf({
    kind: 'sized',
    otherUnit: null,
    sizing: size(bracelet.design, bracelet.rules, bracelet.listedMinor, {
      measure: { of: 'wrist', mm: 190 },
      sit: 'easy',
      hand: 'right',
      pick: 'best',
      quantity: 1,
    }),
  });
  if (sizing?.status !== 'fits') throw new Error('expected a fit');
  const html = renderToString(
    h(Changes, { words, format, design: bracelet.design, candidate: sizing.chosen, sizing }),
  );
  expect(textOf(html)).toMatch(/Added (\d+ × [\w-]+ )+/);
  expect(textOf(html)).toContain('The centre stays as it is.');
});

describe.each(LANGS)('where an order stands, in %s', (lang) => {
  const entry = newEntry(sample, 'Weir Light', 'waiting');
  const show = (more: Partial<Entry>, sending = false, sizeField = '#size-field'): string =>
    renderToString(
      h(OutboxEntry, {
        words: orderWords(lang),
        lang,
        shop: SHOP,
        entry: { ...entry, ...more },
        sending,
        sizeField,
        onTryNow: nothing,
        onMailed: nothing,
        onRemove: nothing,
      }),
    );

  test('until there is a receipt, there is always the way by e-mail and by file', () => {
    const waiting = { state: 'waiting', problem: { code: 'no-answer' } } as const;
    const refused = {
      state: 'refused',
      problem: { code: 'turned-down', reason: 'Not made any more.' },
    } as const;
    for (const html of [show({}, true), show(waiting), show(refused), show({ state: 'mail' })]) {
      expect(html).toContain('href="mailto:orders@ninepin.example?');
      expect(textOf(html)).toContain(orderWords(lang).download);
      expect(textOf(html)).toContain(sample.number);
    }
    expect(textOf(show(refused))).toContain('Not made any more.');
  });

  test('a long order leads with copying its text, and says why', () => {
    const copyFirst = (html: string): boolean => html.indexOf(words.copyMail) < html.indexOf(words.openMail);
    const words = orderWords(lang);
    const order = { ...sample, buyer: { ...sample.buyer, note: 'ß'.repeat(1000) } };
    const [long, short] = [show({ state: 'mail', order }), show({ state: 'mail' })];
    expect(textOf(long)).toContain(words.longMail(SHOP.email));
    expect(long).toContain(`<button type="button" class="button">${words.copyMail}`);
    expect(textOf(short)).not.toContain(words.longMail(SHOP.email));
    expect([long, short].map(copyFirst)).toEqual([true, false]);
  });

  test('who asked for one that has gone is led to the size field, on this page or on the piece’s own', () => {
    const gone = { state: 'refused', problem: { code: 'ready-gone' } } as const;
    expect(show(gone)).toContain(`href="#size-field">${orderWords(lang).inMySize}`);
    expect(show(gone, false, '/pieces/ford/#field')).toContain(`href="/pieces/ford/#field">`);
    expect(show({ state: 'refused', problem: { code: 'turned-down', reason: '' } })).not.toContain(
      '#size-field',
    );
  });

  test('with a receipt there is the slip, and no second way to send', () => {
    const html = show({ state: 'received', receivedAt: '2026-11-25T18:41:00Z', differs: true });
    expect(html).not.toContain('mailto:');
    expect(html).toContain('href="/slip/#claspwise4.');
    expect(textOf(html)).toContain(orderWords(lang).differs);
    expect(textOf(html)).toMatch(/25\.? November 2026/);
  });
});
