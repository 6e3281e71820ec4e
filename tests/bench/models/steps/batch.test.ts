/** What the steps of several pieces side by side say beyond those of one. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { receive } from '#bench/book/receive.ts';
import { pieceNow } from '#bench/check/pieceNow.ts';
import { walkSheet, type WalkSheet } from '#bench/models/steps/sheet.ts';
import { batchSubject, type Subject } from '#bench/models/steps/subject.ts';
import { stopText } from '#bench/views/steps/stopText.ts';
import { catalogue, frame, openShop, orderFor, type Shop } from '../../shop.ts';

let shop: Shop;
beforeAll(() => {
  shop = openShop(catalogue);
});
afterAll(() => shop.close());

function take(mm: number): string {
  const document = orderFor(catalogue, 'weir-light', mm);
  receive(shop.book, [{ document, way: 'desk', at: frame.now, now: pieceNow(catalogue, 'weir-light') }]);
  return document.number;
}

function sheetOf(subject: Subject | null): WalkSheet {
  const found =
    subject === null ? { problem: 'no subject' } : walkSheet(shop.book, catalogue, subject, frame);
  if ('problem' in found) throw new Error(found.problem);
  return found.sheet;
}

describe('of a batch', () => {
  const said = () => {
    const numbers = [take(160), take(180)] as const;
    const sheet = sheetOf(batchSubject([...numbers]));
    return { numbers, stops: sheet.walk.stops.map((stop) => ({ stop, text: stopText(sheet, stop, frame) })) };
  };

  it('eye protection is put on once, and the clasp of each piece is tried', () => {
    const { stops } = said();
    const ticksOf = (code: string) =>
      stops.filter(({ stop }) => stop.ticks[0]?.step.code === code).map(({ stop }) => stop.ticks.length);
    expect(ticksOf('wear-eye-protection')).toEqual([1]);
    expect(ticksOf('try-clasp')).toEqual([2]);
    expect(stops[0]?.text.where).toEqual(['Make ready']);
  });

  it('each step says whose it is and in what size', () => {
    const { stops, numbers } = said();
    for (const [number, size] of [
      [numbers[0], '160 mm'],
      [numbers[1], '180 mm'],
    ]) {
      const own = stops.filter(({ text }) => text.where.includes(number!));
      expect(own.length).toBeGreaterThan(10);
      for (const { text } of own) expect(text.where.at(-1)).toContain(size);
    }
  });

  it('every strand’s free end is clipped when its last bead is on, since the other end waits', () => {
    const { stops } = said();
    const beads = stops.filter(({ stop }) => stop.ticks[0]?.step.code === 'string-beads');
    const clipped = beads.filter(({ text }) => text.say.includes('Clip the free end'));
    expect(clipped).toHaveLength(2);
    for (const { stop } of clipped) {
      const next = stops[stops.findIndex((one) => one.stop === stop) + 1]?.stop;
      expect(next?.ticks[0]?.piece !== stop.ticks[0]?.piece || next?.stage === 'second').toBe(true);
    }
    const alone = sheetOf({ kind: 'order', number: take(165), by: null });
    const texts = alone.walk.stops.map((stop) => stopText(alone, stop, frame).say);
    expect(texts.filter((text) => text.includes('Clip'))).toEqual([]);
  });
});
