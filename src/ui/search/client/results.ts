/** The list of results: shows what was found, some at a time. */
import { shownOf } from '../hit.ts';
import type { Engine, Hit } from './engine.ts';

/** Results fetched at a time: three rows of pictures, or nine. */
const AT_A_TIME = 9;

type Hits = Awaited<ReturnType<Engine['search']>>;

/** Results without a way to more of them. */
export type Shown = {
  readonly clear: () => void;
  /** @param isCurrent false once a newer search has been asked for */
  readonly show: (found: Hits, isCurrent: () => boolean) => Promise<void>;
};

/** A list of few results that is hidden, with what stands round it, while there are none. */
export function nearList(box: HTMLElement, template: HTMLTemplateElement): Shown {
  const list = box.querySelector('ul') ?? box;
  const clear = (): void => {
    list.replaceChildren();
    box.hidden = true;
  };
  return {
    clear,
    show: async (found, isCurrent) => {
      const hits = await Promise.all(found.map((result) => result.data()));
      if (!isCurrent()) return;
      list.replaceChildren(...hits.map((hit) => hitItem(template, hit)));
      box.hidden = hits.length === 0;
    },
  };
}

export function resultList(list: HTMLElement, more: HTMLButtonElement, template: HTMLTemplateElement): Shown {
  const showFrom = async (found: Hits, from: number, isCurrent: () => boolean): Promise<void> => {
    const hits = await Promise.all(found.slice(from, from + AT_A_TIME).map((result) => result.data()));
    if (!isCurrent()) return;
    const items = hits.map((hit) => hitItem(template, hit));
    if (from === 0) list.replaceChildren(...items);
    else list.append(...items);
    const next = from + AT_A_TIME;
    more.hidden = next >= found.length;
    // The first new piece takes the focus, so that the keyboard goes on where the reader is.
    more.onclick = async () => {
      await showFrom(found, next, isCurrent);
      list.querySelectorAll('a').item(next)?.focus();
    };
  };
  return {
    clear: () => {
      list.replaceChildren();
      more.hidden = true;
    },
    show: (found, isCurrent) => showFrom(found, 0, isCurrent),
  };
}

/** A result's list item. All text is set as text: nothing of the index is read as markup. */
function hitItem(template: HTMLTemplateElement, hit: Hit): DocumentFragment {
  const item = template.content.cloneNode(true) as DocumentFragment;
  const { address, title, facts, price, alt, image, pixels } = shownOf(hit, template.dataset);
  const link = item.querySelector('a');
  if (link !== null) {
    link.href = address;
    link.textContent = title;
  }
  const source = item.querySelector('source');
  if (source !== null && pixels !== '') source.srcset = pixels;
  const picture = item.querySelector('img');
  if (picture !== null) {
    picture.src = image;
    picture.alt = alt;
  }
  setText(item, '[data-facts]', facts);
  setText(item, '[data-price]', price);
  return item;
}

function setText(item: DocumentFragment, selector: string, text: string): void {
  const element = item.querySelector(selector);
  if (element !== null) element.textContent = text;
}
