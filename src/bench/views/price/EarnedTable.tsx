/** What the listed price leaves for an hour, in her shop and to shops that sell on; what is tried out below each. */
import { underBase } from '#ui/site/base.ts';
import type { Earned } from '#core/sizing/price/stack.ts';
import type { PriceProps } from './priceProps.ts';

type Row = { readonly where: string; readonly tried: boolean; readonly earned: Earned };

export function EarnedTable(props: PriceProps) {
  const { sheet, frame, words } = props;
  const said = words.earned;
  const { format } = frame;
  return (
    <section>
      <h2 id="earned">{said.title}</h2>
      <div class="scroll" tabIndex={0} role="region" aria-labelledby="earned">
        <table class="orders">
          <thead>
            <tr>
              {HEADS.map((name) => (
                <th scope="col" class={name === 'where' ? undefined : 'number'}>
                  {said.columns[name]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rowsOf(props).map(({ where, tried, earned }) => (
              <tr>
                <th scope="row" data-label={said.columns.where}>
                  {tried ? `${where}, ${said.tried}` : where}
                </th>
                {Object.entries(cellsOf(earned, format.money)).map(([name, value]) => (
                  <td class="number" data-label={said.columns[name as keyof typeof said.columns]}>
                    {value}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Wholesale {...props} />
      <p class="quiet">{said.estimate(words.time(sheet.listed.now.earned.minutes, format))}</p>
    </section>
  );
}

const HEADS = ['where', 'price', 'material', 'packing', 'fees', 'left', 'perHour'] as const;

function cellsOf(earned: Earned, money: (minor: number) => string): Record<string, string> {
  return {
    price: money(earned.priceMinor),
    material: money(earned.materialMinor),
    packing: money(earned.packingMinor),
    fees: money(earned.feesMinor),
    left: money(earned.leftMinor),
    perHour: earned.perHourMinor === null ? '–' : money(earned.perHourMinor),
  };
}

function rowsOf({ sheet, frame: { format }, words }: PriceProps): Row[] {
  const { listed, wholesale } = sheet;
  const { where } = words.earned;
  const both = (name: string, now: Earned, tried: Earned | null): Row[] => [
    { where: name, tried: false, earned: now },
    ...(tried === null ? [] : [{ where: name, tried: true, earned: tried }]),
  ];
  return [
    ...both(where.shop, listed.now.earned, listed.tried?.earned ?? null),
    ...(wholesale === null
      ? []
      : both(where.wholesale(format.number(wholesale.percent, 2)), wholesale.now, wholesale.tried)),
  ];
}

/** Whether wholesale pays her hour, or how it comes to stand here. */
function Wholesale({ sheet: { wholesale, rules }, words }: PriceProps) {
  const said = words.earned;
  if (wholesale === null) {
    return (
      <p>
        <a href={underBase('/bench/shop/')}>{said.noWholesale}</a>
      </p>
    );
  }
  const { leftMinor, perHourMinor } = wholesale.now;
  if (leftMinor < 0) return <p class="warning">{said.wholesaleNothing}</p>;
  const short = perHourMinor !== null && perHourMinor < rules.price.labourMinorPerHour;
  return short ? <p class="warning">{said.wholesaleShort}</p> : null;
}
