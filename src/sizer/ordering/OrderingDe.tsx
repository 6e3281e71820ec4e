import { order } from '#words/de/order.ts';
import { OrderRoad, type OrderRoadProps } from './Ordering.tsx';

/** The road of an order in German, loaded when somebody orders. */
export default function OrderRoadDe(props: OrderRoadProps) {
  return <OrderRoad {...props} lang="de" words={order} />;
}
