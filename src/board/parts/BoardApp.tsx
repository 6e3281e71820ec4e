/** The whole board: what lies there, the trays beside it, the core's answers, and the way to the file. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { majorAmount } from '#words/format.ts';
import type { Where } from '../model/answers.ts';
import type { Hit } from '../model/hit.ts';
import type { BoardInput } from '../model/input.ts';
import { runsIn, spanAt, spanOf, startOf, type Place } from '../model/place.ts';
import type { About } from '../model/saving.ts';
import { talkFor } from '../model/talk.ts';
import { AboutFields, isEnough } from './AboutFields.tsx';
import { AnswersView } from './AnswersView.tsx';
import { Closing } from './Closing.tsx';
import { Drawing } from './Drawing.tsx';
import { Found } from './Found.tsx';
import { Hand } from './Hand.tsx';
import { Panel } from './Panel.tsx';
import { Runs } from './Runs.tsx';
import { SaveBar } from './SaveBar.tsx';
import { SizesView } from './SizesView.tsx';
import { Strands } from './Strands.tsx';
import { Swap } from './Swap.tsx';
import { useAnswers } from './useAnswers.ts';
import { useBoard } from './useBoard.ts';
import { useLater } from './useLater.ts';
import { useSaving } from './useSaving.ts';

type Props = {
  readonly input: BoardInput;
  /** Address of the script that works out sizes beside the board. */
  readonly sizesScript: string;
  /** Address of the page that shows the piece as it lies there, unsaved. */
  readonly previewPage: string;
};

const focus = (selector: string): void => document.querySelector<HTMLElement>(selector)?.focus();

export function BoardApp({ input, sizesScript, previewPage }: Props) {
  const talk = useMemo(() => talkFor(input), [input]);
  const board = useBoard(input);
  const { design, strand } = board;
  const answers = useAnswers(design, input, sizesScript);
  const isNew = board.work.digest === null;
  const [about, setAbout] = useState<About>({ name: input.piece.name, price: '', summary: '', story: '' });
  const ruled = answers.figures === null ? '' : talk.f.money(answers.figures.ruleMinor);
  const { currency } = input.rules;
  // Written as files have it, whatever the language of the page.
  const byRule =
    answers.figures === null ? '' : `${majorAmount(answers.figures.ruleMinor, currency)} ${currency}`;
  const priced = about.price.trim() === '' ? { ...about, price: byRule } : about;
  const saving = useSaving(board, isNew ? priced : null, previewPage);
  useEffect(() => {
    // A new piece begins with its first bead.
    if (input.digest === null) focus('#trays-search');
  }, [input]);
  const finder = useRef<((x: number, y: number) => Hit | null) | null>(null);

  const dropAfter = (x: number, y: number): Place | null => {
    const hit = finder.current?.(x, y) ?? null;
    if (hit === null) return null;
    if (hit.place === null) return hit.strand === strand ? board.after : startOf(hit.strand);
    if (!hit.inwards) return hit.place;
    const runs = runsIn(design.strands[hit.strand]!, hit.strand);
    const at = runs.findIndex(
      ({ section, part }) => section === hit.place!.section && part === hit.place!.part,
    );
    return runs[at - 1] ?? startOf(hit.strand);
  };
  const show = (where: Where): void => {
    if (typeof where !== 'string') {
      const { strand: on, section, part } = where;
      board.select(part < 0 ? spanOf(design, on, section) : spanAt({ strand: on, section, part }));
      focus('.runs');
      return;
    }
    const closing = document.querySelector<HTMLDetailsElement>('#board-closing');
    if (closing === null) return;
    closing.open = true;
    closing.querySelector<HTMLElement>('select')?.focus();
  };
  const keyed = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const { target, key, shiftKey } = event;
    // Within a text that is being written, these keys are the text's own.
    const isText =
      target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.value !== '');
    const redoes = key.toLowerCase() === 'y' || (key.toLowerCase() === 'z' && shiftKey);
    if (isText || (key.toLowerCase() !== 'z' && !redoes)) return;
    event.preventDefault();
    if (redoes) board.redo(talk.words.redone);
    else board.undo(talk.words.undone);
  };
  // Hundreds of choices that a bead more or less hardly changes: they follow once it is painted.
  const later = useLater(design);
  const rest = useMemo(
    () => (
      <>
        <Strands board={board} talk={talk} />
        <Closing board={board} input={input} talk={talk} />
        <Swap
          design={later}
          input={input}
          talk={talk}
          onTake={(step) => board.act(step, talk.words.swap.take)}
        />
        <Found
          design={later}
          strand={strand}
          unit={input.unit}
          talk={talk}
          onTake={(step) => board.act(step, talk.words.found.take)}
        />
      </>
    ),
    [later, strand, input, talk],
  );
  const { figures } = answers;
  const spoken =
    board.said === '' || figures === null
      ? board.said
      : `${board.said} ${talk.words.beads(figures.beads, talk.f)}, ${talk.f.length(figures.lengthMm)}.`;
  return (
    <div class="bead-board" onKeyDown={keyed}>
      <SaveBar
        board={board}
        saving={saving}
        talk={talk}
        mayBeSaved={!isNew || (isEnough(about) && figures !== null)}
        onShow={show}
        answers={answers}
      />
      <p class="spoken" role="status">
        {spoken}
      </p>
      <div class="work">
        <Drawing
          design={design}
          unit={input.unit}
          span={board.span}
          after={board.after}
          wrong={answers.findings.filter(({ stop }) => stop).map(({ where }) => where)}
          talk={talk}
          onSelect={board.select}
          onStrand={board.chooseStrand}
          finder={finder}
        />
        <Runs board={board} talk={talk} onTrays={() => focus('#trays-search')} />
        <Hand board={board} talk={talk} />
        {rest}
        {isNew && <AboutFields about={about} rulePrice={ruled} talk={talk} onChange={setAbout} />}
      </div>
      <div class="beside">
        <Panel board={board} input={input} talk={talk} dropAfter={dropAfter} onRuns={() => focus('.runs')} />
        <AnswersView
          design={design}
          answers={answers}
          listedMinor={input.listedMinor}
          talk={talk}
          onShow={show}
        />
        <SizesView
          design={design}
          sizes={answers.sizes}
          talk={talk}
          onDo={(step, said) => board.act(step, said)}
        />
      </div>
    </div>
  );
}
