/** What can be done with the runs in hand, and the section they are of. */
import type { Section } from '#core/design/design.ts';
import type { SectionChange } from '../model/action.ts';
import { isLoose } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';
import { doingFor } from './doing.ts';
import { Counted } from './Counted.tsx';
import type { Board } from './useBoard.ts';

type Props = { readonly board: Board; readonly talk: Talk };

export function Hand({ board, talk }: Props) {
  const { design, span } = board;
  const { words, nameOf } = talk;
  const section = span === null ? undefined : design.strands[span.strand]?.sections[span.section];
  if (span === null || section === undefined) {
    return (
      <section class="hand" aria-labelledby="hand-heading">
        <h2 id="hand-heading">{words.hand.heading}</h2>
        <p class="quiet">{words.hand.nothing}</p>
      </section>
    );
  }
  const doing = doingFor(board, talk);
  const parts = section.motif.slice(span.from, span.to + 1);
  const mirrored = design.strands[span.strand]?.mirrored === true;
  const one = parts.length === 1 ? parts[0] : undefined;
  return (
    <section class="hand" aria-labelledby="hand-heading">
      <h2 id="hand-heading">
        {words.hand.heading}:{' '}
        {parts.map(({ component, count }) => words.runs.run(count, nameOf(component))).join(', ')}
      </h2>
      <div class="row">
        {one !== undefined && (
          <Counted
            label={words.hand.count}
            value={one.count}
            least={1}
            most={200}
            fewer={words.hand.fewer}
            more={words.hand.more}
            onChange={doing.count}
          />
        )}
        <button type="button" onClick={doing.remove}>
          {words.hand.remove}
        </button>
        <button type="button" onClick={() => doing.move(-1)}>
          {words.hand.inwards}
        </button>
        <button type="button" onClick={() => doing.move(1)}>
          {words.hand.outwards}
        </button>
        {section.role !== 'focal' && (
          <button type="button" onClick={() => doing.repeat(null)}>
            {isLoose(section) ? words.hand.repeats : words.hand.loose}
          </button>
        )}
        {mirrored && section.role !== 'focal' && (
          <button type="button" onClick={doing.middle}>
            {words.hand.middle}
          </button>
        )}
      </div>
      <SectionFields
        key={`${span.strand} ${span.section}`}
        section={section}
        mirrored={mirrored}
        talk={talk}
        onWhole={doing.whole}
        onChange={(change) =>
          board.act([{ type: 'section', strand: span.strand, section: span.section, change }])
        }
      />
    </section>
  );
}

type FieldProps = {
  readonly section: Section;
  readonly mirrored: boolean;
  readonly talk: Talk;
  readonly onWhole: () => void;
  readonly onChange: (change: SectionChange) => void;
};

/** Room above what a section has, so that a slider can go on. */
const SLIDER_SPARE = 6;

function SectionFields({ section, mirrored, talk, onWhole, onChange }: FieldProps) {
  const words = talk.words.section;
  const { name, role, usual, fewest, most } = section;
  const roles = mirrored ? (['body', 'filler', 'focal'] as const) : (['body', 'filler'] as const);
  const top = Math.max(most, usual) + SLIDER_SPARE;
  const bound = (label: string, value: number, set: (value: number) => SectionChange) => (
    <label>
      {label}
      <input
        type="range"
        min={0}
        max={top}
        value={value}
        onInput={(event) => onChange(set(Number(event.currentTarget.value)))}
      />
      <Counted
        label={label}
        hidden
        value={value}
        least={0}
        most={999}
        onChange={(next) => onChange(set(next))}
        fewer={talk.words.hand.fewer}
        more={talk.words.hand.more}
      />
    </label>
  );
  return (
    <fieldset>
      <legend>{words.heading(name)}</legend>
      <div class="row">
        <label>
          {words.name}
          <input
            value={name}
            maxLength={40}
            onChange={(event) => onChange({ name: event.currentTarget.value })}
          />
        </label>
        <label>
          {words.role}
          <select
            value={role}
            onChange={(event) => onChange({ role: event.currentTarget.value as Section['role'] })}
          >
            {roles.map((one) => (
              <option value={one} selected={one === role}>
                {words.roles[one]}
              </option>
            ))}
          </select>
        </label>
        <button type="button" onClick={onWhole}>
          {words.whole}
        </button>
      </div>
      {role !== 'focal' && (
        <div class="row">
          <Counted
            label={mirrored ? words.usual : words.usualOneRun}
            value={usual}
            least={0}
            most={999}
            fewer={talk.words.hand.fewer}
            more={talk.words.hand.more}
            onChange={(next) => onChange({ usual: next })}
          />
          <div role="group" aria-label={words.range} class="range">
            <span>{words.range}</span>
            {bound(words.fewest, fewest, (value) => ({ fewest: value }))}
            {bound(words.most, most, (value) => ({ most: value }))}
          </div>
        </div>
      )}
    </fieldset>
  );
}
