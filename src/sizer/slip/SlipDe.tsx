import { order } from '#words/de/order.ts';
import { slip } from '#words/de/slip.ts';
import { Slip, type SlipProps } from './Slip.tsx';

/** The slip in German. */
export default function SlipDe(props: SlipProps) {
  return <Slip {...props} lang="de" words={slip} orderWords={order} />;
}
