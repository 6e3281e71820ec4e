/** What holds the piece together, and what hangs from it: each chosen out of the trays. */
import type { ComponentKind } from '#core/design/component.ts';
import { PIECE_KINDS, type PieceKind } from '#core/design/design.ts';
import type { BoardInput } from '../model/input.ts';
import { nameIn } from '../model/panel.ts';
import type { Talk } from '../model/talk.ts';
import { readMm } from './Strands.tsx';
import type { Board } from './useBoard.ts';

type Props = { readonly board: Board; readonly input: BoardInput; readonly talk: Talk };

type Option = { readonly id: string; readonly name: string };

/** Components of some kinds, by name. */
function optionsOf(input: BoardInput, kinds: readonly ComponentKind[]): Option[] {
  return Object.values(input.trays.components)
    .filter(({ kind }) => kinds.includes(kind))
    .map(({ id }) => ({ id, name: nameIn(input, id) }))
    .sort((one, other) => one.name.localeCompare(other.name));
}

export function Closing({ board, input, talk }: Props) {
  const { design, act } = board;
  const { ends } = design;
  const words = talk.words.closing;
  const part = (
    label: string,
    field: 'clasp' | 'ring' | 'crimp' | 'cover' | 'guard',
    kinds: readonly ComponentKind[],
  ) => (
    <Chosen
      label={label}
      value={ends[field]}
      options={optionsOf(input, kinds)}
      none={field === 'clasp' || field === 'crimp' ? null : words.none}
      choose={words.choose}
      onChange={(id) => act([{ type: 'ends', change: { [field]: id } }])}
    />
  );
  const mm = (label: string, field: 'loopMm' | 'extenderMm' | 'linkMm') => (
    <label>
      {label}
      <input
        type="text"
        inputMode="decimal"
        size={5}
        value={ends[field] ?? ''}
        onChange={(event) =>
          act([{ type: 'ends', change: { [field]: readMm(event.currentTarget.value, ends[field] ?? 0) } }])
        }
      />
    </label>
  );
  const wires = Object.keys(input.trays.wires).map((id) => ({ id, name: talk.wireName(id) }));
  return (
    <details class="closing" id="board-closing">
      <summary>
        <h2>{words.heading}</h2>
      </summary>
      <div class="row">
        <label>
          {words.kind}
          <select onChange={(event) => act([{ type: 'kind', kind: event.currentTarget.value as PieceKind }])}>
            {PIECE_KINDS.map((kind) => (
              <option value={kind} selected={kind === design.kind}>
                {words.kinds[kind]}
              </option>
            ))}
          </select>
        </label>
        <Chosen
          label={words.wire}
          value={design.wire.id}
          options={wires}
          none={null}
          choose={words.choose}
          onChange={(id) => act([{ type: 'wire', wire: id ?? '' }])}
        />
        {part(words.clasp, 'clasp', ['clasp'])}
        {part(words.ring, 'ring', ['ring', 'clasp', 'bead', 'spacer'])}
        {part(words.crimp, 'crimp', ['crimp'])}
        {part(words.cover, 'cover', ['cover'])}
        {part(words.guard, 'guard', ['spacer', 'cover', 'crimp'])}
        {mm(words.loop, 'loopMm')}
        {mm(words.extender, 'extenderMm')}
        {ends.extenderMm > 0 && mm(words.link, 'linkMm')}
      </div>
      <Pendant board={board} input={input} talk={talk} />
    </details>
  );
}

function Pendant({ board, input, talk }: Props) {
  const { design, act } = board;
  const { hanging, oneSided, upright } = design;
  const words = talk.words.closing;
  const rings = optionsOf(input, ['ring']);
  const hang = (pendant: string | null): void =>
    act([{ type: 'hanging', hanging: pendant === null ? null : { pendant, rings: hanging?.rings ?? [] } }]);
  const setRings = (next: readonly string[]): void => {
    if (hanging !== null) act([{ type: 'hanging', hanging: { ...hanging, rings: next } }]);
  };
  return (
    <div class="row">
      <Chosen
        label={words.pendant}
        value={hanging?.pendant ?? null}
        options={optionsOf(input, ['pendant'])}
        none={words.none}
        choose={words.choose}
        onChange={hang}
      />
      {hanging !== null && (
        <div role="group" aria-label={words.ringsOn} class="row">
          {hanging.rings.map((ring, at) => (
            <Chosen
              label={`${words.ringsOn} ${at + 1}`}
              value={ring}
              options={rings}
              none={null}
              choose={words.choose}
              onChange={(id) => setRings(hanging.rings.with(at, id ?? ring))}
            />
          ))}
          <button
            type="button"
            onClick={() => setRings([...hanging.rings, hanging.rings.at(-1) ?? rings[0]?.id ?? ''])}
          >
            {words.addRing}
          </button>
          {hanging.rings.length > 0 && (
            <button type="button" onClick={() => setRings(hanging.rings.slice(0, -1))}>
              {words.removeRing}
            </button>
          )}
        </div>
      )}
      <label class="check">
        <input
          type="checkbox"
          checked={oneSided}
          onChange={(event) =>
            act([{ type: 'front', oneSided: event.currentTarget.checked, upright: upright ?? null }])
          }
        />{' '}
        {words.oneSided}
      </label>
      {oneSided && (
        <label class="check">
          <input
            type="checkbox"
            checked={upright !== false}
            onChange={(event) =>
              act([{ type: 'front', oneSided, upright: event.currentTarget.checked ? null : false }])
            }
          />{' '}
          {words.upright}
        </label>
      )}
    </div>
  );
}

type ChosenProps = {
  readonly label: string;
  readonly value: string | null;
  readonly options: readonly Option[];
  /** What stands for nothing at all; null where something must be chosen. */
  readonly none: string | null;
  readonly choose: string;
  readonly onChange: (id: string | null) => void;
};

export function Chosen({ label, value, options, none, choose, onChange }: ChosenProps) {
  const isOpen = none === null && !options.some(({ id }) => id === value);
  return (
    <label>
      {label}
      <select
        onChange={(event) => {
          const { value: id } = event.currentTarget;
          if (id !== '' || none !== null) onChange(id === '' ? null : id);
        }}
      >
        {none !== null && (
          <option value="" selected={value === null}>
            {none}
          </option>
        )}
        {isOpen && (
          <option value="" selected>
            {choose}
          </option>
        )}
        {options.map(({ id, name }) => (
          <option value={id} selected={id === value}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
