/** Back, on and save, always in sight; below it what stood in the way of saving. */
import { isUnsaved } from '../model/draft.ts';
import type { Answers, Where } from '../model/answers.ts';
import { findingsSaid, whereName } from '../model/said.ts';
import type { SavedProblem } from '../model/saving.ts';
import type { Talk } from '../model/talk.ts';
import type { Board } from './useBoard.ts';
import type { Saving } from './useSaving.ts';

type Props = {
  readonly board: Board;
  readonly saving: Saving;
  readonly talk: Talk;
  /** False where a new piece lacks its name. */
  readonly mayBeSaved: boolean;
  readonly onShow: (where: Where) => void;
  readonly answers: Answers;
};

/** The piece in a line: what she looks for between two beads. */
function sums({ figures, findings }: Answers, talk: Talk): string {
  const { words, f } = talk;
  const mend = findingsSaid(findings, talk).length;
  const all = [
    ...(figures === null
      ? []
      : [words.beads(figures.beads, f), f.length(figures.lengthMm), f.money(figures.ruleMinor)]),
    ...(mend === 0 ? [] : [words.findings.some(mend)]),
  ];
  return all.join(' · ');
}

export function SaveBar({ board, saving, talk, mayBeSaved, onShow, answers }: Props) {
  const { words } = talk;
  const isNew = board.work.digest === null;
  const unsaved = isNew || isUnsaved(board.work);
  const state = saving.busy ? words.save.saving : unsaved ? words.save.unsaved : words.save.saved;
  return (
    <div class="save-bar">
      <div class="row">
        <button type="button" disabled={!board.canUndo} onClick={() => board.undo(words.undone)}>
          {words.undo}
        </button>
        <button type="button" disabled={!board.canRedo} onClick={() => board.redo(words.redone)}>
          {words.redo}
        </button>
        <button
          type="button"
          class="main"
          disabled={saving.busy || !unsaved || !mayBeSaved}
          onClick={saving.save}
        >
          {words.save.save}
        </button>
        <button type="button" disabled={answers.figures === null} onClick={saving.preview}>
          {words.save.preview}
        </button>
        <span role="status" class="quiet">
          {state}
        </span>
        <p class="sums">
          <a href="#answers-heading">{sums(answers, talk)}</a>
        </p>
      </div>
      <Refusal board={board} saving={saving} talk={talk} onShow={onShow} />
      {board.aside !== null && (
        <div class="warning">
          <p>{words.save.aside}</p>
          <div class="row">
            <button type="button" onClick={board.takeAside}>
              {words.save.takeAside}
            </button>
            <button type="button" onClick={board.dropAside}>
              {words.save.dropAside}
            </button>
          </div>
        </div>
      )}
    </div>
  );
}

function Refusal({ board, saving, talk, onShow }: Omit<Props, 'mayBeSaved' | 'answers'>) {
  const { refused } = saving;
  const words = talk.words.save;
  if (refused === null) return null;
  if (refused === 'no-answer') {
    return (
      <p class="warning" role="alert">
        {words.failed}
      </p>
    );
  }
  if (refused.code === 'not-writable') {
    return (
      <p class="warning" role="alert">
        {words.notWritable} {refused.why}
      </p>
    );
  }
  if (refused.code === 'problems') {
    return (
      <div class="warning" role="alert">
        <p>{words.problems}</p>
        <ul>
          {refused.problems.map((problem) => (
            <Problem problem={problem} board={board} talk={talk} onShow={onShow} />
          ))}
        </ul>
      </div>
    );
  }
  return (
    <div class="warning" role="alert">
      <p>{words.conflict}</p>
      <div class="both">
        <figure>
          <figcaption>{words.theirs}</figcaption>
          {refused.now === null ? <p>{words.gone}</p> : <pre tabIndex={0}>{refused.now}</pre>}
        </figure>
        <figure>
          <figcaption>{words.mine}</figcaption>
          <pre tabIndex={0}>{refused.yours}</pre>
        </figure>
      </div>
      <div class="row">
        <button type="button" onClick={saving.saveOver}>
          {words.keepMine}
        </button>
        {refused.now !== null && (
          <a class="button" href={location.pathname}>
            {words.takeTheirs}
          </a>
        )}
      </div>
    </div>
  );
}

type ProblemProps = {
  readonly problem: SavedProblem;
  readonly board: Board;
  readonly talk: Talk;
  readonly onShow: (where: Where) => void;
};

function Problem({ problem: { what, fix, at }, board, talk, onShow }: ProblemProps) {
  return (
    <li>
      {talk.words.save.problem(what, fix)}{' '}
      {at !== null && (
        <button type="button" class="plain" onClick={() => onShow(at)}>
          {talk.words.findings.show}: {whereName(board.design, at, talk)}
        </button>
      )}
    </li>
  );
}
