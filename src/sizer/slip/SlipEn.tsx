import { render } from 'preact';
import { order } from '#words/en/order.ts';
import { slip } from '#words/en/slip.ts';
import { Slip, type SlipProps } from './Slip.tsx';

/** Puts the slip in English into an element of the page. */
export function show(element: HTMLElement, props: SlipProps): void {
  render(<Slip {...props} lang="en" words={slip} orderWords={order} />, element);
}
