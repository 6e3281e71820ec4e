/** Borders of fields and buttons against what they stand on: WCAG 2.2, success criterion 1.4.11, 3 : 1. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const tokens = readFileSync('src/ui/styles/tokens.css', 'utf8');
const SCHEMES = ['light', 'dark'] as const;

/** A token's colour in a scheme. */
function colour(token: string, scheme: (typeof SCHEMES)[number]): string {
  const pair = new RegExp(`--${token}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(tokens);
  const found = pair?.[scheme === 'light' ? 1 : 2];
  if (found === undefined) throw new RangeError(`got no pair of colours for --${token} in tokens.css`);
  return found;
}

/** Relative luminance, WCAG 2.2. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

test('black on white is 21 : 1, as published', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
});

describe.each(SCHEMES)('in %s', (scheme) => {
  test.each(['ground', 'plate'])('a field’s border stands out from %s', (ground) => {
    expect(contrast(colour('field', scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(3);
  });
});

test.each(['src/sizer/styles/sizer.css', 'src/ui/styles/find.css'])(
  'in %s no field has a paler border',
  (file) => {
    const css = readFileSync(file, 'utf8');
    const rules = css.match(/[^{}]*(?:input|select|choice-face)[^{}]*\{[^}]*\}/g) ?? [];
    const borders = rules.flatMap((rule) => rule.match(/border: \d+px solid [^;]+/g) ?? []);
    expect(borders.length).toBeGreaterThan(0);
    expect(borders.filter((border) => !border.endsWith('var(--field)'))).toEqual([]);
  },
);
