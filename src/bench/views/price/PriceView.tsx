/** A price taken apart: its lines, what it earns, each size, and what it would be if something cost otherwise. */
import type { PriceProps } from './priceProps.ts';
import { EarnedTable } from './EarnedTable.tsx';
import { SizePrices } from './SizePrices.tsx';
import { StackTable } from './StackTable.tsx';
import { TryOutForm } from './TryOutForm.tsx';

export function PriceView(props: PriceProps) {
  return (
    <>
      <p>{props.words.lead}</p>
      <StackTable {...props} />
      <EarnedTable {...props} />
      <TryOutForm {...props} />
      <SizePrices {...props} />
    </>
  );
}
