/** What lies in the trays: pictures first, for that is how she knows a bead. */
import { underBase } from '#ui/site/base.ts';
import { CARD_BOX } from '#draw/drawings/card.ts';
import { COMPONENT_KINDS } from '#core/design/component.ts';
import { contentFormWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import type { Tray, TrayRow } from '../../models/content/trayList.ts';

type Props = { readonly trays: readonly Tray[]; readonly text: string; readonly frame: Frame };

export function TrayListView({ trays, text, frame }: Props) {
  const words = contentFormWords(frame.lang);
  const said = words.trays;
  const count = trays.reduce((sum, { rows }) => sum + rows.length, 0);
  return (
    <>
      <form class="filter" method="get" action={underBase('/bench/trays/')} role="search">
        <label>
          {said.find}
          <input type="search" name="q" value={text} maxLength={100} placeholder={said.findHint} />
        </label>
        <button type="submit">{said.show}</button>
      </form>
      <details class="adding">
        <summary>{said.add}</summary>
        <p class="row">
          {COMPONENT_KINDS.map((kind) => (
            <a class="button" href={underBase(`/bench/trays/new/?kind=${kind}`)}>
              {words.options[`component.kind.${kind}`] ?? kind}
            </a>
          ))}
          <a class="button" href={underBase('/bench/wires/new/')}>
            {said.wire}
          </a>
        </p>
      </details>
      <p class="quiet" role="status">
        {said.count(count)}
      </p>
      {trays.map(({ name, rows }) => (
        <section>
          <h2>{name === null ? said.noTray : said.tray(name)}</h2>
          <ul class="parts">
            {rows.map((row) => (
              <Part row={row} frame={frame} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

/** Pixels across; drawn at twice that at the most. */
const WIDTH = 96;

function Part({ row, frame }: { readonly row: TrayRow; readonly frame: Frame }) {
  const { format, lang } = frame;
  const said = contentFormWords(lang).trays;
  const { id, kind, name, number, alongMm, acrossMm, stock } = row;
  const figure = (mm: number): string => format.number(mm, 2);
  const size =
    alongMm === acrossMm || alongMm === 0 ? figure(acrossMm) : `${figure(alongMm)} × ${figure(acrossMm)}`;
  const height = Math.round((WIDTH * CARD_BOX.height) / CARD_BOX.width);
  return (
    <li>
      {kind !== 'wire' && (
        <img
          class="piece"
          src={underBase(`/bench/part-pictures/${id}.svg`)}
          width={WIDTH}
          height={height}
          alt=""
          loading="lazy"
        />
      )}
      <span>
        <a href={underBase(kind === 'wire' ? `/bench/wires/${id}/` : `/bench/trays/${id}/`)}>{name}</a>
        <small class="quiet">
          {[
            `${size} mm`,
            row.material,
            number,
            stock === null ? null : `${said.columns.left}: ${format.number(stock)}`,
          ]
            .filter((one) => one !== null && one !== '')
            .join(' · ')}
        </small>
      </span>
    </li>
  );
}
