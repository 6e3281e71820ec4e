/** Each size of the shop's table: its price by the rule and as asked, and what an hour of it earns. */
import { changesText } from '#ui/models/changesText.ts';
import type { SizePrice } from '../../models/pricing/sheet.ts';
import type { PriceProps } from './priceProps.ts';

export function SizePrices(props: PriceProps) {
  const { sheet, words } = props;
  const { sizes, listed } = sheet;
  if (sizes === null || sizes.rows.length === 0) return null;
  const said = words.sizes;
  return (
    <section>
      <h2 id="sizes">{said.title}</h2>
      <p>{said.lead}</p>
      <div class="scroll" tabIndex={0} role="region" aria-labelledby="sizes">
        <table class="orders">
          <thead>
            <tr>
              <th scope="col">{said.columns.size}</th>
              <th scope="col">{said.columns.changes}</th>
              {cellsOf(props, listed).map(({ label }) => (
                <th scope="col" class="number">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sizes.rows.map((row) => (
              <Row {...props} row={row} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function Row({ row, ...props }: PriceProps & { readonly row: SizePrice }) {
  const { sheet, frame, words } = props;
  const { columns } = words.sizes;
  return (
    <tr>
      <th scope="row" data-label={columns.size}>
        {frame.format.length(row.askedMm)}
      </th>
      <td data-label={columns.changes}>{changesText(row, sheet.design, frame.lang)}</td>
      {cellsOf(props, row).map(({ label, value }) => (
        <td class="number" data-label={label}>
          {value}
        </td>
      ))}
    </tr>
  );
}

/** What a size costs and earns, each under its heading. */
function cellsOf(
  { frame: { format }, words }: PriceProps,
  { now, tried }: Pick<SizePrice, 'now' | 'tried'>,
): { readonly label: string; readonly value: string }[] {
  const said = words.sizes;
  const hour = (minor: number | null): string => (minor === null ? '–' : format.money(minor));
  const cells = [
    { label: said.columns.ruled, value: format.money(now.ruleMinor) },
    { label: said.columns.price, value: format.money(now.priceMinor) },
    { label: said.columns.left, value: format.money(now.earned.leftMinor) },
    { label: said.columns.perHour, value: hour(now.earned.perHourMinor) },
  ];
  if (tried === null) return cells;
  return [
    ...cells,
    { label: said.tried.price, value: format.money(tried.priceMinor) },
    { label: said.tried.perHour, value: hour(tried.earned.perHourMinor) },
  ];
}
