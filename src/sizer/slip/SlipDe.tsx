import { render } from 'preact';
import { order } from '#words/de/order.ts';
import { slip } from '#words/de/slip.ts';
import { Slip, type SlipProps } from './Slip.tsx';

/** Puts the slip in German into an element of the page. */
export function show(element: HTMLElement, props: SlipProps): void {
  render(<Slip {...props} lang="de" words={slip} orderWords={order} />, element);
}
