/** Results as the page shows them, made from the page's own template. */
import type { Hit } from './engine.ts';

/** A result's list item. All text is set as text: nothing of the index is read as markup. */
export function hitItem(template: HTMLTemplateElement, hit: Hit): DocumentFragment {
  const item = template.content.cloneNode(true) as DocumentFragment;
  const { title = '', image = '', pixels = '', alt = '', facts = '', price = '' } = hit.meta;
  const link = item.querySelector('a');
  if (link !== null) {
    link.href = hit.url;
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
