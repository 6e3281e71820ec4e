/** The lines of the listed price, with how each comes about, and as a bar. */
import { STACK_LINES, type PriceStack, type StackLine } from '#core/sizing/price/stack.ts';
import { wireMm } from '#core/sizing/price/costs.ts';
import { usual } from '#core/sizing/usual.ts';
import { PriceBar } from './PriceBar.tsx';
import type { PriceProps } from './priceProps.ts';

export function StackTable(props: PriceProps) {
  const { sheet, frame, words } = props;
  const { now, tried } = sheet.listed;
  const { format } = frame;
  const row = (name: string, how: string, of: (stack: PriceStack) => number, strong = false) => (
    <tr class={strong ? 'sum' : undefined}>
      <th scope="row">{name}</th>
      <td class="how">{how}</td>
      <td class="number" data-label={tried === null ? undefined : words.columns.now}>
        {signed(of(now), format.money)}
      </td>
      {tried !== null && (
        <>
          <td class="number" data-label={words.columns.tried}>
            {signed(of(tried), format.money)}
          </td>
          <td class="number" data-label={words.columns.more}>
            {differenceText(of(tried) - of(now), format.money)}
          </td>
        </>
      )}
    </tr>
  );
  const lines = STACK_LINES.filter((line) => line !== 'own');
  return (
    <section>
      <h2 id="stack">{words.stack}</h2>
      <PriceBar {...props} />
      <div class="scroll" tabIndex={0} role="region" aria-labelledby="stack">
        <table class="price-stack">
          <thead>
            <tr>
              <th scope="col">{words.columns.line}</th>
              <th scope="col">{words.columns.how}</th>
              <th scope="col" class="number">
                {words.columns.now}
              </th>
              {tried !== null && (
                <>
                  <th scope="col" class="number">
                    {words.columns.tried}
                  </th>
                  <th scope="col" class="number">
                    {words.columns.more}
                  </th>
                </>
              )}
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => row(words.lines[line], howText(line, props), ({ lines: all }) => all[line]))}
            {row(words.ruled, '', ({ ruleMinor }) => ruleMinor, true)}
            {row(words.lines.own, ownText(now, props), ({ lines: all }) => all.own)}
            {row(words.asked, '', ({ priceMinor }) => priceMinor, true)}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** With its sign, as a difference is read; none at all as a dash. */
function differenceText(minor: number, money: (minor: number) => string): string {
  if (minor === 0) return '–';
  return minor > 0 ? `+${money(minor)}` : signed(minor, money);
}

/** Below nothing by a minus sign, which is as wide as a plus. */
const signed = (minor: number, money: (minor: number) => string): string => money(minor).replace('-', '−');

function ownText({ lines: { own } }: PriceStack, { words }: PriceProps): string {
  const { above, below, none } = words.how.own;
  return own === 0 ? none : own > 0 ? above : below;
}

/** How a line comes about, as the rules have it now. */
function howText(line: Exclude<StackLine, 'own'>, { sheet, frame: { format }, words }: PriceProps): string {
  const { how } = words;
  const { rules, design, listed } = sheet;
  const { price } = rules;
  switch (line) {
    case 'beads':
      return '';
    case 'findings':
      return how.findings;
    case 'packing':
      return how.packing;
    case 'wire':
      return how.wire(format, wireMm(design, usual(design), rules));
    case 'mark-up':
      return how['mark-up'](format, Math.round(price.materialPercent) - 100);
    case 'labour':
      return how.labour(
        words.time(listed.now.earned.minutes, format),
        format.money(price.labourMinorPerHour),
      );
    case 'fees':
      return how.fees(format, price.fees);
    case 'rounding':
      return how.rounding(format, Math.max(1, price.roundToMinor), price.endingMinor ?? 0);
  }
}
