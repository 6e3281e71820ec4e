import { order } from '#words/de/order.ts';
import { Ordering, type OrderingProps } from './Ordering.tsx';

/** Ordering in German, loaded when somebody orders. */
export default function OrderingDe(props: OrderingProps) {
  return <Ordering {...props} lang="de" words={order} />;
}
