/** Going through the steps with a bench that is lost and found, and windows that don't know of each other. */
import fc from 'fast-check';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { openBook } from '#bench/book/open.ts';
import { findPlace, keepPlace, secondsAtBoard } from '#bench/book/place.ts';
import { receive } from '#bench/book/receive.ts';
import {
  answered,
  beginWalking,
  decide,
  goTo,
  isUnsaved,
  keptOf,
  nextSave,
  passTime,
  readKept,
  tick,
  unanswered,
  type Answer,
  type Walking,
} from '#bench/models/steps/walking.ts';
import { catalogue, NOW_MS, orderFor } from '../../shop.ts';

const DIGEST = 'a'.repeat(64);
const fresh = (place = 0, version = 0): Walking => beginWalking(20, { place, version }, null, () => '');
let saves = 0;
const newSave = (): string => `save-${(saves += 1)}`;

it('a tick takes those before it along, and unticking those after it', () => {
  expect(tick(fresh(), 6).place).toBe(7);
  expect(tick(fresh(12), 6).place).toBe(6);
  expect(goTo(fresh(), 99).place).toBe(20);
  expect(goTo(fresh(), -1).place).toBe(0);
});

it('a save is sent again as it was until it is answered, and what came meanwhile goes with the next', () => {
  const first = nextSave(passTime(goTo(fresh(), 3), 12.5), newSave)!;
  expect(first.pending).toMatchObject({ place: 3, seconds: 12 });
  const later = nextSave(unanswered(goTo(passTime(first, 8), 5)), newSave)!;
  expect(later.pending).toEqual(first.pending);
  const done = answered(later, { outcome: 'done', version: 1 });
  expect(done).toMatchObject({ line: 'well', book: { place: 3, version: 1 }, pending: null });
  expect(nextSave(done, newSave)!.pending).toMatchObject({ place: 5, seconds: 8 });
});

it('waits for her word where another was first', () => {
  const mine = nextSave(passTime(goTo(fresh(), 4), 30), newSave)!;
  const told = answered(mine, { outcome: 'elsewhere', place: 9, version: 3, text: 'somebody' });
  expect(told.place).toBe(4);
  expect(nextSave(told, newSave)).toBeNull();
  expect(decide(told, 'theirs')).toMatchObject({ place: 9, book: { place: 9, version: 3 } });
  // The bench took its time all the same, so that it doesn't come twice.
  expect(nextSave(decide(told, 'mine'), newSave)!.pending).toMatchObject({ place: 4, seconds: 0 });
});

it('a refusal keeps her place on the device and sends nothing more', () => {
  const mine = nextSave(goTo(fresh(), 4), newSave)!;
  const refused = answered(mine, { outcome: 'refused', text: '' });
  expect(refused).toMatchObject({ place: 4, line: 'refused' });
  expect(nextSave(refused, newSave)).toBeNull();
  expect(isUnsaved(refused)).toBe(true);
});

it('a clock that slept counts five minutes at the most, and none backwards', () => {
  expect(passTime(fresh(), 9 * 3600).seconds).toBe(300);
  expect(passTime(fresh(), -5).seconds).toBe(0);
});

it('begins where the device was, unless the book went on from elsewhere', () => {
  const kept = keptOf(goTo(fresh(2, 1), 8), DIGEST);
  const read = readKept(JSON.stringify(kept), DIGEST);
  expect(beginWalking(20, { place: 2, version: 1 }, read, () => '').place).toBe(8);
  const other = beginWalking(20, { place: 15, version: 4 }, read, () => 'at 15');
  expect(other).toMatchObject({ place: 8, elsewhere: { place: 15, version: 4, text: 'at 15' } });
  expect(readKept(JSON.stringify(kept), 'b'.repeat(64))).toBeNull();
  for (const broken of [
    null,
    '',
    '{',
    '3',
    'null',
    '{"digest":"x"}',
    JSON.stringify({ ...kept, place: 'x' }),
  ])
    expect(readKept(broken, DIGEST)).toBeNull();
});

/** What happens to a device: it goes on, time passes, its save arrives or is lost on either way, it is loaded anew. */
const happening = fc.oneof(
  fc.record({ kind: fc.constant('go' as const), place: fc.integer({ min: 0, max: 20 }) }),
  fc.record({ kind: fc.constant('time' as const), seconds: fc.integer({ min: 0, max: 60 }) }),
  fc.record({ kind: fc.constant('send' as const), fate: fc.constantFrom('well', 'lost', 'answer-lost') }),
  fc.record({ kind: fc.constant('reload' as const) }),
  fc.record({
    kind: fc.constant('decide' as const),
    whose: fc.constantFrom('mine' as const, 'theirs' as const),
  }),
);

it('whatever is lost on the way, every second is counted once and the last place stands in the book', () => {
  const folder = mkdtempSync(join(tmpdir(), 'walking-'));
  const book = openBook(join(folder, 'orders.sqlite'));
  const at = new Date(NOW_MS).toISOString();
  try {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(1), happening), { maxLength: 60 }), (all) => {
        const document = orderFor(catalogue, 'weir-light', 165.1);
        receive(book, [{ document, way: 'desk', at, now: null }]);
        const subject = document.number;
        const inBook = () => {
          const kept = findPlace(book, subject);
          return { place: kept?.place ?? 0, version: kept?.version ?? 0 };
        };
        const devices: [Walking, Walking] = [fresh(), fresh()];
        let passed = 0;
        const send = (which: 0 | 1, fate: string): void => {
          const next = nextSave(devices[which], newSave);
          if (next === null) return;
          devices[which] = next;
          if (fate === 'lost') {
            devices[which] = unanswered(next);
            return;
          }
          const { outcome, kept } = keepPlace(book, subject, {
            ...next.pending,
            ...{ digest: DIGEST, version: next.book.version, who: '', at, numbers: [subject] },
          });
          const { place, version } = kept;
          const answer: Answer =
            outcome === 'done' ? { outcome, version } : { outcome, place, version, text: '' };
          devices[which] = fate === 'well' ? answered(next, answer) : unanswered(next);
        };
        for (const [which, one] of all) {
          const at = which === 0 ? 0 : 1;
          if (one.kind === 'go') devices[at] = goTo(devices[at], one.place);
          else if (one.kind === 'time') {
            passed += one.seconds;
            devices[at] = passTime(devices[at], one.seconds);
          } else if (one.kind === 'send') send(at, one.fate);
          else if (one.kind === 'decide') devices[at] = decide(devices[at], one.whose);
          else {
            const device = devices[at];
            const text = isUnsaved(device) ? JSON.stringify(keptOf(device, DIGEST)) : null;
            devices[at] = beginWalking(20, inBook(), readKept(text, DIGEST), () => '');
          }
        }
        // The bench is there again for both, one after the other; each goes on, and keeps to her own place.
        for (const which of [0, 1] as const) {
          devices[which] = goTo(devices[which], (devices[which].book.place + 1) % 21);
          for (let turn = 0; turn < 4; turn += 1) {
            devices[which] = decide(devices[which], 'mine');
            send(which, 'well');
          }
          expect(devices[which].elsewhere).toBeNull();
          expect(isUnsaved(devices[which])).toBe(false);
          expect(inBook()).toEqual(devices[which].book);
        }
        expect(secondsAtBoard(book, subject)).toBe(passed);
      }),
      { numRuns: 60, seed: 20261129 },
    );
  } finally {
    book.db.close();
    rmSync(folder, { recursive: true });
  }
});
