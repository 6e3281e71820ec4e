/** The listed price as a bar of its lines; what is tried out as a second one on the same scale. The table says the same in figures. */
import { STACK_LINES, type PriceStack, type StackLine } from '#core/sizing/price/stack.ts';
import type { PriceProps } from './priceProps.ts';

/** The drawing's own units; it is stretched to the page. */
const WIDE = 1000;
const TALL = 40;

export function PriceBar({ sheet, frame: { format }, words }: PriceProps) {
  const { now, tried } = sheet.listed;
  const stacks = tried === null ? [now] : [now, tried];
  const most = Math.max(1, ...stacks.map(positiveSum));
  const said = shown(now)
    .map((line) => `${words.lines[line]} ${format.money(now.lines[line])}`)
    .join(', ');
  return (
    <>
      <svg
        class="price-bar"
        viewBox={`0 0 ${WIDE} ${TALL * stacks.length}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={words.drawn(said)}
      >
        {stacks.map((stack, at) => bar(stack, at, most))}
      </svg>
      <ul class="price-key" aria-hidden="true">
        {STACK_LINES.filter((line) => stacks.some(({ lines }) => lines[line] > 0)).map((line) => (
          <li class={`line-${line}`}>{words.lines[line]}</li>
        ))}
      </ul>
    </>
  );
}

/** A price below the rule is drawn to the rule: what is missing has no length. */
const shown = ({ lines }: PriceStack): StackLine[] => STACK_LINES.filter((line) => lines[line] > 0);
const positiveSum = (stack: PriceStack): number =>
  shown(stack).reduce((sum, line) => sum + stack.lines[line], 0);

function bar(stack: PriceStack, at: number, most: number) {
  let fromMinor = 0;
  return shown(stack).map((line) => {
    const x = (WIDE * fromMinor) / most;
    const width = (WIDE * stack.lines[line]) / most;
    fromMinor += stack.lines[line];
    return (
      <rect
        class={`line-${line}`}
        x={x.toFixed(1)}
        y={at * TALL + (at > 0 ? 4 : 0)}
        width={width.toFixed(1)}
        height={TALL - (at > 0 ? 4 : 0)}
      />
    );
  });
}
