import { describe, expect, it } from 'vitest';
import { parseQuantity } from '#catalogue/fields/quantity.ts';
import { gaugeMm } from '#core/units/gauge.ts';
import { parseLength } from '#core/units/length.ts';

const mm = (text: string) => {
  const found = parseLength(text, 'mm');
  return found.ok ? found.mm : found.problem.code;
};

describe('lengths', () => {
  // NIST SP 811 (2008), App. B.8: 1 in = 25.4 mm exactly; 1 mil = 0.001 in.
  it.each([
    ['1 in', 25.4],
    ['12 in', 304.8],
    ['0.001 in', 0.0254],
    ['3/64 in', 1.190625],
    ['1/32 in', 0.79375],
    // US Letter is 8.5 × 11 in; ISO 216 A4 is 210 × 297 mm.
    ['8 1/2"', 215.9],
    ['11 in', 279.4],
    ['21 cm', 210],
    ['29.7 cm', 297],
    // ISO/IEC 7810 ID-1: 85.60 × 53.98 mm.
    ['8,56 cm', 85.6],
    ['53.98 mm', 53.98],
    // 16 CFR 1501.4, the small parts cylinder: 1.25 in across, 2.25 in at its deepest.
    ['1.25 in', 31.75],
    ['2 1/4 in', 57.15],
  ])('%s', (text, value) => {
    expect(mm(text)).toBe(value);
  });
});

describe('wire gauges', () => {
  // AWG, mm to three decimals: printed table of cms.ua, after ASTM B258.
  it.each([
    [10, 2.588],
    [12, 2.053],
    [14, 1.628],
    [16, 1.291],
    [18, 1.024],
    [20, 0.812],
    [21, 0.723],
    [22, 0.644],
    [24, 0.511],
    [26, 0.405],
    [28, 0.321],
    [30, 0.255],
  ])('AWG %i', (gauge, value) => {
    expect(Math.abs((gaugeMm('awg', gauge) ?? 0) - value)).toBeLessThanOrEqual(0.0006);
  });

  it('AWG 36 is five thousandths of an inch (ASTM B258, by definition)', () => {
    expect(gaugeMm('awg', 36)).toBe(0.127);
  });

  // SWG: BS 3737:1964, exact thousandths of an inch.
  it.each([
    [10, 3.2512],
    [15, 1.8288],
    [18, 1.2192],
    [19, 1.016],
    [20, 0.9144],
    [22, 0.7112],
    [24, 0.5588],
    [26, 0.4572],
    [27, 0.41656],
    [30, 0.31496],
  ])('SWG %i', (gauge, value) => {
    expect(gaugeMm('swg', gauge)).toBe(value);
  });

  it('may be written where the maker writes a length', () => {
    expect(parseQuantity('20 AWG', 'length')).toEqual({ ok: true, value: gaugeMm('awg', 20) });
    expect(parseQuantity('18swg', 'length')).toEqual({ ok: true, value: 1.2192 });
    expect(parseQuantity('50 awg', 'length').ok).toBe(false);
  });

  it('knows no gauge outside its table', () => {
    expect([gaugeMm('awg', 9), gaugeMm('awg', 37), gaugeMm('swg', 31), gaugeMm('swg', 20.5)]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
