/** Numbers of orders in a sentence, each leading to its order. */
import { underBase } from '#ui/site/base.ts';

export function OrderLinks({ numbers }: { readonly numbers: readonly string[] }) {
  return (
    <>
      {numbers.map((number, at) => (
        <>
          {at > 0 && ', '}
          <a href={underBase(`/bench/orders/${number}/`)}>{number}</a>
        </>
      ))}
    </>
  );
}
