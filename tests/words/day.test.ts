import { expect, it } from 'vitest';
import { dayOf, isDay } from '#words/day.ts';
import { inZone } from '#tests/support/zone.ts';

// Offsets from UTC by the IANA time zone database, from memory: New York −5 h in winter, Auckland +13 h in its summer.
it.each([
  ['America/New_York', '2026-12-20T03:30:00Z', '2026-12-19'],
  ['Pacific/Auckland', '2026-12-20T11:30:00Z', '2026-12-21'],
  ['Europe/Berlin', '2026-07-01T22:15:00Z', '2026-07-02'],
  ['UTC', '2026-07-01T23:59:59Z', '2026-07-01'],
])('in %s, %s is on %s', async (zone, instant, day) => {
  expect(await inZone(zone, () => dayOf(instant))).toBe(day);
  expect(await inZone(zone, () => dayOf(Date.parse(instant)))).toBe(day);
  expect(isDay(day)).toBe(true);
});
