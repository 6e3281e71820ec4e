import { order } from '#words/en/order.ts';
import { slip } from '#words/en/slip.ts';
import { Slip, type SlipProps } from './Slip.tsx';

/** The slip in English. */
export default function SlipEn(props: SlipProps) {
  return <Slip {...props} lang="en" words={slip} orderWords={order} />;
}
