/** What a buyer does on a piece page, in the words she reads. */
import type { Page } from 'playwright-core';

export type Wish = {
  readonly field: string;
  readonly size: string;
  readonly sit?: 'Snug' | 'Easy' | 'Loose';
  readonly hand: 'Left hand' | 'Right hand';
  readonly name: string;
  readonly email: string;
  readonly note: string;
  /** Where it goes, by the labels of the fields; null: she collects it. */
  readonly to: Readonly<Record<string, string>> | null;
};

/** The part of the page where a piece is sized and ordered. */
export const sizer = (page: Page) => page.getByRole('region', { name: 'Made to your size' });

/** Gives size, sit and hand; resolves once a result stands there. */
export async function giveSize(page: Page, wish: Wish): Promise<void> {
  const region = sizer(page);
  await region.getByLabel(wish.field).fill(wish.size);
  if (wish.sit !== undefined) await region.getByText(wish.sit, { exact: true }).click();
  // Asked only where it matters.
  const hand = region.getByText(wish.hand, { exact: true });
  if ((await hand.count()) > 0) await hand.click();
  await region.getByRole('heading', { name: 'What you would get' }).waitFor();
}

/** The figures shown, by their names. */
export async function shownFigures(page: Page): Promise<Record<string, string>> {
  return sizer(page).evaluate((region) =>
    Object.fromEntries(
      [...region.querySelectorAll('dt')].map((dt) => [
        dt.textContent ?? '',
        dt.nextElementSibling?.textContent ?? '',
      ]),
    ),
  );
}

/** What is asked of everybody, whichever piece it is. */
export type Buyer = Pick<Wish, 'name' | 'email' | 'note' | 'to'>;

/** Opens the form, by the button that says so, and fills it in. */
export async function fillIn(page: Page, wish: Buyer, opener = 'Order this piece'): Promise<void> {
  const region = sizer(page);
  await region.getByRole('button', { name: opener }).click();
  await region.getByLabel('Your name').fill(wish.name);
  await region.getByLabel('Your e-mail address').fill(wish.email);
  await region.getByLabel(/A note to the maker/).fill(wish.note);
  if (wish.to === null) await region.getByText('I collect it').click();
  for (const [label, text] of Object.entries(wish.to ?? {})) {
    const field = region.getByLabel(label, { exact: true });
    if (label === 'Country') await field.selectOption({ label: text });
    else await field.fill(text);
  }
}

/** Fills the form in and sends it. */
export async function order(page: Page, wish: Buyer, opener?: string): Promise<void> {
  await fillIn(page, wish, opener);
  await sizer(page).getByRole('button', { name: 'Send the order' }).click();
}

/** Number and present standing of the newest order on this device. */
export async function standing(page: Page): Promise<{ number: string; text: string }> {
  const entry = sizer(page)
    .getByRole('listitem')
    .filter({ hasText: /Order ...-...-.../ })
    .first();
  await entry.waitFor();
  const heading = (await entry.getByRole('heading').textContent()) ?? '';
  return {
    number: /...-...-.../.exec(heading)?.[0] ?? '',
    text: (await entry.getByRole('status').first().textContent()) ?? '',
  };
}
