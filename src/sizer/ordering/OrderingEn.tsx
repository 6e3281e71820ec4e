import { order } from '#words/en/order.ts';
import { OrderRoad, type OrderRoadProps } from './Ordering.tsx';

/** The road of an order in English, loaded when somebody orders. */
export default function OrderRoadEn(props: OrderRoadProps) {
  return <OrderRoad {...props} lang="en" words={order} />;
}
