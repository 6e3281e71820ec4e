import { order } from '#words/en/order.ts';
import { Ordering, type OrderingProps } from './Ordering.tsx';

/** Ordering in English, loaded when somebody orders. */
export default function OrderingEn(props: OrderingProps) {
  return <Ordering {...props} lang="en" words={order} />;
}
