/** The maker's trays beside the board: found by a word, put by Enter, tap, or dragged over to where it belongs. */
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Action } from '../model/action.ts';
import type { BoardInput } from '../model/input.ts';
import { panelRows, type PanelRow } from '../model/panel.ts';
import type { Place } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';
import { readTyped } from '../model/typed.ts';
import { Tile } from './Tile.tsx';
import type { Board } from './useBoard.ts';
import { useLater } from './useLater.ts';

export const MODES = ['after', 'middle', 'instead'] as const;
export type Mode = (typeof MODES)[number];

type Props = {
  readonly board: Board;
  readonly input: BoardInput;
  readonly talk: Talk;
  /** The place after which something dropped there goes; null where it isn't on the board. */
  readonly dropAfter: (x: number, y: number) => Place | null;
  /** Over to the list of what lies there. */
  readonly onRuns: () => void;
};

/** Tiles shown at once; a word finds the others. */
const MOST_SHOWN = 48;

export function Panel({ board, input, talk, dropAfter, onRuns }: Props) {
  const { words, nameOf } = talk;
  const [text, setText] = useState('');
  const [mode, setMode] = useState<Mode>('after');
  const [active, setActive] = useState(0);
  const typed = useMemo(() => readTyped(text), [text]);
  const counted = useLater(board.design);
  const rows = useMemo(() => panelRows(input, counted, typed.words), [input, counted, typed]);
  const shown = useMemo(() => rows.slice(0, MOST_SHOWN), [rows]);
  const at = Math.min(active, Math.max(0, shown.length - 1));

  const put = (id: string, how: Mode, after: Place = board.after): void => {
    const { count } = typed;
    const what = words.runs.run(count, nameOf(id));
    board.act(actionFor(board, id, count, how, after, talk), words.trays.put(what, words.trays.sides[how]));
    // The middle and a change are done once; beads go on one after the other.
    setMode('after');
    setText('');
    setActive(0);
  };
  const keyed = (event: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const row = shown[at];
    if (by !== undefined) setActive(Math.min(shown.length - 1, Math.max(0, at + by)));
    else if (event.key === 'Escape' && text !== '') setText('');
    else if (event.key === 'Escape') onRuns();
    else if (event.key === 'Enter' && row !== undefined) {
      put(row.component.id, event.shiftKey ? 'middle' : event.altKey ? 'instead' : mode);
    } else return;
    event.preventDefault();
  };
  const drop = (id: string, x: number, y: number): void => {
    const after = dropAfter(x, y);
    if (after !== null) put(id, 'after', after);
  };
  // Tiles stay as they are while the board changes; what a tap on one does is always by the board of this moment.
  const doing = useRef({ tap: (_id: string): void => {}, drop });
  doing.current = { tap: (id) => put(id, mode), drop };
  const tiles = useMemo(
    () =>
      shown.map((row, index) => (
        <Tile
          key={row.component.id}
          row={row}
          talk={talk}
          input={input}
          isActive={index === at}
          onPut={() => doing.current.tap(row.component.id)}
          onDrop={(x, y) => doing.current.drop(row.component.id, x, y)}
        />
      )),
    [shown, talk, input, at],
  );
  const current = shown[at];
  return (
    <section class="trays" aria-labelledby="trays-heading">
      <h2 id="trays-heading">{words.trays.heading}</h2>
      <label>
        {words.trays.search}
        <input
          type="text"
          role="combobox"
          id="trays-search"
          autocomplete="off"
          aria-expanded="true"
          aria-controls="tray-list"
          aria-autocomplete="list"
          aria-describedby="trays-hint"
          aria-activedescendant={current === undefined ? undefined : `tile-${current.component.id}`}
          value={text}
          onInput={(event) => {
            setText(event.currentTarget.value);
            setActive(0);
          }}
          onKeyDown={keyed}
        />
      </label>
      <p id="trays-hint" class="quiet">
        {words.trays.hint}
      </p>
      <div class="modes" role="radiogroup" aria-label={words.trays.where}>
        <span aria-hidden="true">{words.trays.where}</span>
        {MODES.map((one) => (
          <label title={words.trays.modeHints[one]}>
            <input type="radio" name="mode" checked={one === mode} onChange={() => setMode(one)} />
            {words.trays.modes[one]}
          </label>
        ))}
      </div>
      <p class="quiet" role="status">
        {rows.length === 0 ? words.trays.none : words.trays.found(rows.length)}
      </p>
      <div class="tiles" id="tray-list" role="listbox" aria-label={words.trays.heading}>
        {tiles}
      </div>
      {rows.length > shown.length && <p class="quiet">{words.trays.more(rows.length - shown.length)}</p>}
    </section>
  );
}

function actionFor(
  board: Board,
  component: PanelRow['component']['id'],
  count: number,
  mode: Mode,
  after: Place,
  { words }: Talk,
): readonly Action[] {
  const { span, strand } = board;
  if (mode === 'instead' && span !== null) return [{ type: 'replace', span, component }];
  if (mode === 'middle' && board.design.strands[strand]?.mirrored === true) {
    return [{ type: 'middle', strand, component, count, name: words.named.middle }];
  }
  return [{ type: 'put', after, component, count, name: words.named.run }];
}
