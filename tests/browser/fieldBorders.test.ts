/** Borders of fields as pages draw them, against what lies beside them: WCAG 2.2, success criterion 1.4.11, 3 : 1. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { sizer } from './order/buyer.ts';
import { visit } from './shop.ts';

type Judged = { readonly seen: number; readonly pale: readonly string[] };

/** Every field in sight plain, focused and marked as wrong. */
const judge = (page: Page): Promise<Judged> =>
  page.evaluate(() => {
    const context = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    if (context === null) throw new Error('got no canvas to mix colours on');
    /** Colours laid over each other, as the screen shows them. */
    const shown = (...colours: readonly string[]): number => {
      for (const colour of colours) {
        context.fillStyle = colour;
        context.fillRect(0, 0, 1, 1);
      }
      const [r = 0, g = 0, b = 0] = [...context.getImageData(0, 0, 1, 1).data]
        .map((value) => value / 255)
        .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const contrast = (one: number, other: number): number =>
      (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    /** Grounds from the page's own inwards. */
    const grounds = (element: Element | null): string[] =>
      element === null
        ? ['Canvas']
        : [...grounds(element.parentElement), getComputedStyle(element).backgroundColor];

    for (const one of document.querySelectorAll('details')) one.open = true;
    const pale: string[] = [];
    let seen = 0;
    const look = (field: HTMLElement, state: string): void => {
      // Of a switch that is drawn beside its input, the drawing is what is seen.
      const face = getComputedStyle(field).opacity === '0' ? field.nextElementSibling : field;
      if (face === null || face.getBoundingClientRect().width < 3) return;
      const style = getComputedStyle(face);
      const beside = grounds(face.parentElement);
      const border = shown(...beside, style.backgroundColor, style.borderBlockEndColor);
      const edge = parseFloat(style.borderBlockEndWidth) > 0 ? contrast(border, shown(...beside)) : 1;
      const plate = contrast(shown(...beside, style.backgroundColor), shown(...beside));
      seen += 1;
      if (Math.max(edge, plate) < 3) pale.push(`${field.id} ${state}: ${edge.toFixed(2)}`);
    };
    // Sliders, boxes to tick and files are drawn by the browser; what nobody sees has no border to see.
    const drawn =
      'input:not([type=range], [type=checkbox], [type=file], [type=hidden], [tabindex="-1"]), select, textarea';
    for (const field of document.querySelectorAll<HTMLElement>(drawn)) {
      if (field.matches('[type=radio]') && getComputedStyle(field).opacity !== '0') continue;
      look(field, 'plain');
      field.focus();
      look(field, 'focused');
      field.blur();
      field.setAttribute('aria-invalid', 'true');
      look(field, 'wrong');
    }
    return { seen, pale };
  });

describe.each(['light', 'dark'] as const)('in %s every field has a border that stands out', (colorScheme) => {
  test('where a piece is sized and ordered', async () => {
    const { page } = await visit('/pieces/wash-day/', { colorScheme });
    await sizer(page).locator('.sizer-input').first().fill('45 cm');
    await sizer(page).getByRole('button', { name: 'Order this piece' }).click();
    await sizer(page).getByRole('button', { name: 'Send the order' }).click();
    await sizer(page).locator('#order-name[aria-invalid=true]').waitFor();
    const { seen, pale } = await judge(page);
    expect(pale).toEqual([]);
    expect(seen).toBeGreaterThan(30);
  });

  test.each([
    '/find/',
    '/bench/orders/new/',
    '/bench/trays/new/',
    '/bench/pieces/wash-day/words/',
    '/bench/stock/',
  ])('on %s', async (path) => {
    const { page } = await visit(path, { colorScheme });
    const { seen, pale } = await judge(page);
    expect(pale).toEqual([]);
    expect(seen).toBeGreaterThan(2);
  });
});

test('a paler border is told, of each field', async () => {
  const { page } = await visit('/find/', { colorScheme: 'light' });
  await page.evaluate(() => document.documentElement.style.setProperty('--field', '#b0b6b2'));
  const { seen, pale } = await judge(page);
  expect(pale.length).toBe(seen);
});
