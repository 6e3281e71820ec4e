/** The board as a list: every run by name and count, section by section. All that hands do at the board, keys do here. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Section } from '#core/design/design.ts';
import { isIn } from '../model/laid.ts';
import { runsIn, spanAt, spanOf, type Place, type Span } from '../model/place.ts';
import { isLoose } from '../model/place.ts';
import type { Talk } from '../model/talk.ts';
import { doingFor, type Doing } from './doing.ts';
import type { Board } from './useBoard.ts';

type Props = {
  readonly board: Board;
  readonly talk: Talk;
  /** Over to the search of the trays. */
  readonly onTrays: () => void;
};

const idOf = ({ strand, section, part }: Place): string => `run-${strand}-${section}-${part}`;

/** The run at the moving end of what is marked. */
function headOf(span: Span | null, anchor: number | null): Place | null {
  if (span === null) return null;
  const { strand, section, from, to } = span;
  return { strand, section, part: anchor === to ? from : to };
}

export function Runs({ board, talk, onTrays }: Props) {
  const { design, strand, span } = board;
  const { words } = talk;
  const [typed, setTyped] = useState('');
  const anchor = useRef<number | null>(null);
  const list = useRef<HTMLDivElement>(null);
  const laid = design.strands[strand];
  const runs = laid === undefined ? [] : runsIn(laid, strand);
  const head = headOf(span, anchor.current);
  const doing = doingFor(board, talk);
  const headId = head === null ? undefined : idOf(head);

  useEffect(() => {
    if (headId !== undefined)
      list.current?.querySelector(`#${headId}`)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [headId]);

  const goTo = (place: Place | undefined, extend: boolean): void => {
    if (place === undefined) return;
    if (extend && span !== null && place.section === span.section) {
      anchor.current ??= head?.part ?? place.part;
      const [from, to] = [Math.min(anchor.current, place.part), Math.max(anchor.current, place.part)];
      board.select({ ...span, from, to });
      return;
    }
    anchor.current = place.part;
    board.select(spanAt(place));
  };
  const at = head === null ? -1 : runs.findIndex((run) => idOf(run) === headId);

  const keyed = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey) return;
    const { key } = event;
    if (/^\d$/.test(key)) setTyped((before) => (before + key).slice(-3));
    else if (key === 'Escape' && typed !== '') setTyped('');
    else if (key === 'Enter' && typed !== '') {
      doing.count(Number(typed));
      setTyped('');
    } else if (key === 'Enter') onTrays();
    else if (key.toLowerCase() === 'r') {
      doing.repeat(typed === '' ? null : Number(typed));
      setTyped('');
    } else if (!move(event) && !did(key, doing)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  const move = ({ key, altKey, shiftKey }: KeyboardEvent): boolean => {
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[key];
    if (by !== undefined) {
      if (altKey) doing.move(by > 0 ? 1 : -1);
      else goTo(runs[Math.min(runs.length - 1, Math.max(0, at + by))], shiftKey);
      return true;
    }
    if (key === 'Home' || key === 'End') {
      goTo(runs.at(key === 'Home' ? 0 : -1), shiftKey);
      return true;
    }
    return false;
  };

  return (
    <section aria-labelledby="runs-heading">
      <h2 id="runs-heading">{laid?.mirrored === false ? words.runs.headingOneRun : words.runs.heading}</h2>
      <div
        ref={list}
        class="runs"
        role="listbox"
        tabIndex={0}
        aria-label={words.runs.label(strand + 1)}
        aria-describedby="runs-help"
        aria-multiselectable="true"
        aria-orientation="horizontal"
        aria-activedescendant={headId}
        onKeyDown={keyed}
      >
        {laid?.sections.map((section, index) => (
          <SectionRuns
            section={section}
            places={runs.filter((run) => run.section === index)}
            span={span}
            talk={talk}
            headId={headId}
            onWhole={() => board.select(spanOf(design, strand, index))}
            onRun={(place, extend) => goTo(place, extend)}
          />
        ))}
      </div>
      {runs.length === 0 && <p>{words.emptyBoard}</p>}
      <p class="typed" role="status">
        {typed === '' ? '' : words.runs.typed(typed)}
      </p>
      <details class="quiet">
        <summary>{words.runs.keys}</summary>
        <p id="runs-help">{words.runs.help}</p>
      </details>
    </section>
  );
}

/** What a key that moves nothing does; false for keys that mean nothing here. */
function did(key: string, doing: Doing): boolean {
  switch (key.toLowerCase()) {
    case 'delete':
    case 'backspace':
      doing.remove();
      return true;
    case 'm':
      doing.middle();
      return true;
    case 'a':
      doing.whole();
      return true;
    default:
      return false;
  }
}

type SectionProps = {
  readonly section: Section;
  readonly places: readonly Place[];
  readonly span: Span | null;
  readonly talk: Talk;
  readonly headId: string | undefined;
  readonly onWhole: () => void;
  readonly onRun: (place: Place, extend: boolean) => void;
};

function SectionRuns({ section, places, span, talk, headId, onWhole, onRun }: SectionProps) {
  const { words, nameOf } = talk;
  const { role, usual, fewest, most, name, motif } = section;
  const marks = [
    role === 'body' ? '' : words.runs[role],
    isLoose(section) || role === 'focal' ? '' : words.runs.times(usual, fewest, most),
  ].filter((mark) => mark !== '');
  return (
    <div role="group" aria-label={[name, ...marks].join(', ')} class={isLoose(section) ? 'loose' : 'group'}>
      {/* Tapping it is a second way to what A does. */}
      <span class="section-name" aria-hidden="true" onClick={onWhole}>
        {name}
        {marks.length > 0 && <small> {marks.join(', ')}</small>}
      </span>
      {places.map((place) => {
        const { component, count } = motif[place.part]!;
        const id = idOf(place);
        return (
          <div
            id={id}
            role="option"
            aria-selected={span !== null && isIn(span, place)}
            class={id === headId ? 'run head' : 'run'}
            onClick={(event) => onRun(place, event.shiftKey)}
          >
            {words.runs.run(count, nameOf(component))}
          </div>
        );
      })}
    </div>
  );
}
