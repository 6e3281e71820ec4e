/** A price taken apart at the bench: the shop's own figures, and what they would be if something cost otherwise. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { frameIn } from '#bench/models/frame.ts';
import { readPriceQuery } from '#bench/models/pricing/query.ts';
import { priceSheet } from '#bench/models/pricing/sheet.ts';
import { PriceView } from '#bench/views/price/PriceView.tsx';
import { STACK_LINES } from '#core/sizing/price/stack.ts';
import { tally } from '#core/design/tally.ts';
import { usual } from '#core/sizing/usual.ts';
import { pricingWords } from '#words/words.ts';
import { catalogue, frame } from '../shop.ts';

const sheetOf = (id: string, query = '', by = frame) => {
  const sheet = priceSheet(catalogue, id, new URLSearchParams(query), by);
  if (sheet === null) throw new Error(`no piece ${id}`);
  return sheet;
};
const page = (id: string, query = '', by = frame): string =>
  renderToString(<PriceView sheet={sheetOf(id, query, by)} frame={by} words={pricingWords(by.lang)} />);

describe('the shop’s own prices', () => {
  it('are what the lines of each piece and each size come to', () => {
    let sizes = 0;
    for (const { id, listedMinor } of catalogue.pieces) {
      const sheet = sheetOf(id);
      expect(sheet.listed.now.priceMinor).toBe(listedMinor);
      for (const { candidate, now } of sheet.sizes?.rows ?? []) {
        sizes += 1;
        expect(now.priceMinor).toBe(candidate.priceMinor);
        expect(STACK_LINES.reduce((sum, line) => sum + now.lines[line], 0)).toBe(candidate.priceMinor);
      }
    }
    expect(sizes).toBeGreaterThan(5 * catalogue.pieces.length);
  });

  it('no such piece has none', () => {
    expect(priceSheet(catalogue, 'no-such-piece', new URLSearchParams(), frame)).toBeNull();
  });
});

describe('what is tried out', () => {
  const { design, listedMinor } = catalogue.pieces.find(({ id }) => id === 'banked-fire')!;

  it('a material a fifth dearer costs a fifth more of what the piece has of it', () => {
    const [first] = sheetOf('banked-fire').materials;
    if (first === undefined) throw new Error('no material');
    let costMinor = 0;
    for (const [id, count] of tally(design, usual(design))) {
      const component = design.components[id]!;
      if (component.material === first.material) costMinor += count * component.costMinor;
    }
    expect(first.costMinor).toBe(costMinor);
    const { listed } = sheetOf('banked-fire', `of=material:${first.material}&by=20`);
    const more = listed.tried!.earned.materialMinor - listed.now.earned.materialMinor;
    expect(Math.abs(more - costMinor / 5)).toBeLessThanOrEqual(1);
    // The price is hers to set: it stays, and less is left of it.
    expect(listed.tried!.priceMinor).toBe(listedMinor);
    expect(listed.now.earned.leftMinor - listed.tried!.earned.leftMinor).toBe(more);
  });

  it('all parts of the material together are all of it', () => {
    const moreBy = (of: string): number => {
      const { now, tried } = sheetOf('banked-fire', `of=${of}&by=100`).listed;
      return tried!.earned.materialMinor - now.earned.materialMinor;
    };
    const parts = moreBy('beads') + moreBy('findings') + moreBy('wire');
    expect(Math.abs(moreBy('all') - parts)).toBeLessThanOrEqual(3);
    const { materialMinor } = sheetOf('banked-fire').listed.now.earned;
    expect(Math.abs(moreBy('all') - materialMinor)).toBeLessThanOrEqual(1);
  });

  it('a better wage and fees raise the price by the rule', () => {
    const { now, tried } = sheetOf('banked-fire', 'wage=25.50&share=6,5&each=0.30').listed;
    expect(tried!.ruleMinor).toBeGreaterThan(now.ruleMinor);
    expect(tried!.earned.feesMinor).toBe(Math.ceil(listedMinor * 0.065) + 30);
    expect(sheetOf('banked-fire', 'wage=0').listed.tried!.lines.labour).toBe(0);
  });

  it('wholesale stands beside it, without the shop’s fees', () => {
    const { wholesale, rules } = sheetOf('banked-fire', 'share=5');
    expect(wholesale!.now.priceMinor).toBe(Math.ceil((listedMinor * catalogue.shop.wholesalePercent!) / 100));
    expect(wholesale!.tried!.feesMinor).toBe(0);
    expect(rules).toBe(catalogue.shop.rules);
    const alone = { ...frame, shop: { ...frame.shop, wholesalePercent: null } };
    expect(page('banked-fire', '', alone)).toContain('what shops that sell on pay');
  });

  it.each([
    ['of=silver&by=20', { of: 'missing' }],
    ['of=all', { by: 'missing' }],
    ['of=all&by=twenty', { by: 'unreadable' }],
    ['of=all&by=-95', { by: 'unreadable' }],
    ['wage=eighteen', { wage: 'unreadable' }],
    ['share=61&each=$1', { share: 'unreadable', each: 'unreadable' }],
  ])('%s is told, and nothing is reckoned', (query, problems) => {
    const asked = readPriceQuery(new URLSearchParams(query), 'GBP');
    expect(asked).toMatchObject({ problems, tried: null });
    expect(page('banked-fire', query)).toContain('This can’t be reckoned yet:');
  });

  it.each([
    ['by=20', 20],
    ['by=%2B20+%25', 20],
    ['by=%E2%88%927%2C5', -7.5],
  ])('%s is read', (query, percent) => {
    const asked = readPriceQuery(new URLSearchParams(`of=all&${query}`), 'GBP');
    expect(asked.tried?.cost?.percent).toBe(percent);
  });

  it('a cost of nothing, an odd address and a long text do no harm', () => {
    for (const query of [
      'of=material:%3Cb%3E&by=5',
      'of=component:no-such-bead&by=5',
      `wage=${'9'.repeat(500)}`,
    ])
      expect(page('weir-light', query)).toContain('What if');
  });
});

it('says it in both languages, with a bar that a screen reader is told', () => {
  const english = page('banked-fire', 'of=all&by=20');
  for (const said of ['In your shop', 'The price as a bar: Beads', 'By your rule it would come to', 'if so'])
    expect(english).toContain(said);
  const german = page('banked-fire', 'of=all&by=20', frameIn('de', frame));
  for (const said of ['In Ihrem Laden', 'Großhandel', 'Nach Ihrer Regel käme es'])
    expect(german).toContain(said);
});
