import { describe, expect, it } from 'vitest';
import { hang } from '#core/body/hanging.ts';

/** Hang it or fail the test. */
function hung(length: number, span: number, pendant = 0) {
  const found = hang(length, span, pendant);
  if (found === null) throw new Error('it should hang');
  return found;
}

// The core counts in millimetres, but nothing in a catenary knows a unit: these are metres and feet.
describe('worked examples from statics texts', () => {
  it('140 m over 120 m, 3 kg/m: "6.7 Cables: Catenaries", Example 1', () => {
    const { hMm, sagMm, pullMm } = hung(140, 120);
    expect(Math.abs(hMm - 61.45)).toBeLessThan(0.005);
    expect(Math.abs(sagMm - 31.7)).toBeLessThan(0.005);
    expect(Math.abs(pullMm * 3 * 9.81 - 2740)).toBeLessThan(2);
    expect(hMm).toBeCloseTo(61.4457304493, 7);
    expect(sagMm).toBeCloseTo(31.6970512917, 7);
  });

  it('625 ft that sag 25 ft, 2 lb/ft: "Catenary Problems" 1', () => {
    const { hMm, sagMm, pullMm } = hung(625, 622.329910604);
    expect(hMm).toBeCloseTo(15525 / 8, 3);
    expect(sagMm).toBeCloseTo(25, 6);
    expect(Math.abs(pullMm * 2 - 3931.25)).toBeLessThan(0.005);
  });

  it('span 500 ft, sag 100 ft, 3 lb/ft: Beer and Johnston, Statics, ch. 7 (from memory: 328, 984, 1284, 550)', () => {
    const { hMm, sagMm, pullMm } = hung(549.859104409, 500);
    expect(Math.abs(hMm - 328)).toBeLessThan(0.5);
    expect(Math.abs(3 * hMm - 984)).toBeLessThan(1);
    expect(Math.abs(3 * pullMm - 1284)).toBeLessThan(1);
    expect(sagMm).toBeCloseTo(100, 6);
  });

  it('25 ft of 30 lb that sag 10 ft: Beer and Johnston 7.127, digits computed', () => {
    const { sagMm, pullMm } = hung(25, 12.3593882475);
    expect(sagMm).toBeCloseTo(10, 7);
    expect((pullMm * 30) / 25).toBeCloseTo(15.375, 7);
  });

  it('500 ft, 2.8 lb/ft, sag 125 ft: Beer and Johnston 7.128, digits computed', () => {
    const { sagMm, pullMm } = hung(500, 411.979608251);
    expect(sagMm).toBeCloseTo(125, 6);
    expect(pullMm * 2.8).toBeCloseTo(875, 6);
  });

  it('a 50 m tape of 1.6 kg drawn with 60 N: Beer and Johnston 7.130, digits computed', () => {
    expect((hung(50, 49.8560708852).pullMm * 1.6 * 9.81) / 50).toBeCloseTo(60, 5);
  });

  it('450 mm of 25 g over 120 mm: closed form by bisection', () => {
    const { hMm, sagMm, pullMm } = hung(450, 120);
    const newtonsPerMm = (0.025 * 9.80665) / 450;
    expect(hMm).toBeCloseTo(18.9239704936, 8);
    expect(sagMm).toBeCloseTo(206.87044188, 7);
    expect(hMm * newtonsPerMm).toBeCloseTo(0.0103100419578, 10);
    expect(pullMm * newtonsPerMm).toBeCloseTo(0.123015931895, 10);
  });
});

describe('a weight at the middle', () => {
  // 0.5 m over 0.12 m, 0.392266 N/m, 0.14709975 N: computed, checked with odex 2.0.4 and a chain of 4,000 links.
  it('gives the tabled level pull, end pull and sag', () => {
    const { hMm, sagMm, pullMm } = hung(500, 120, (0.14709975 / 0.392266) * 1000);
    const newtonsPerMm = 0.392266 / 1000;
    expect(hMm * newtonsPerMm).toBeCloseTo(0.0287718524809, 10);
    expect(pullMm * newtonsPerMm).toBeCloseTo(0.174011492906, 10);
    expect(sagMm).toBeCloseTo(242.269934592, 7);
  });

  // The limits of the same strand: two straight lines, and the plain catenary.
  it('tends to a V as the strand gets light, and to the plain catenary as the weight goes', () => {
    expect(hung(500, 120, Infinity).sagMm).toBeCloseTo(242.69322199, 7);
    expect(hung(500, 120, 1e9).sagMm).toBeCloseTo(242.69322199, 4);
    expect(hung(500, 120, 0).sagMm).toBeCloseTo(232.591128896, 7);
    expect(hung(500, 120, 1e-9).sagMm).toBeCloseTo(232.591128896, 6);
  });
});
