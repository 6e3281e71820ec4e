/** An order's lines as a list of terms: the same in summary and slip. */
import type { OrderRow } from '#words/orderFacts.ts';

export function Rows({ rows }: { readonly rows: readonly OrderRow[] }) {
  return (
    <dl class="sizer-rows">
      {rows.map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
