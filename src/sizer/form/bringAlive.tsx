/** The page's form, from markup that was built to one that answers. */
import { hydrate, type ComponentType } from 'preact';
import type { SizerData, SizerProps } from './Sizer.tsx';

/**
 * Call once.
 * @param Form of the page's language
 * @param root holds the form as it was built
 * @param json what the page hands over, a `SizerData`
 */
export function bringAlive(Form: ComponentType<SizerProps>, root: HTMLElement, json: string): void {
  const data = JSON.parse(json) as SizerData;
  const stays = { picture: htmlOf(root, '.sizer-drawing'), how: htmlOf(root, '.sizer-how') };
  hydrate(<Form {...data} stays={stays} />, root);
}

const htmlOf = (root: HTMLElement, selector: string): string => root.querySelector(selector)?.innerHTML ?? '';
