/** One bead, wire or finding tried instead of another all through: both pieces side by side before anything is changed. */
import { useMemo, useState } from 'preact/hooks';
import type { Design } from '#core/design/design.ts';
import { drawBoard } from '#draw/drawings/board.ts';
import type { Action } from '../model/action.ts';
import { answersOf } from '../model/answers.ts';
import type { BoardInput } from '../model/input.ts';
import { layPiece } from '../model/laid.ts';
import { nameIn } from '../model/panel.ts';
import { reduce } from '../model/reduce.ts';
import { findingsSaid } from '../model/said.ts';
import { swapChoices, swapStep } from '../model/swapping.ts';
import type { Talk } from '../model/talk.ts';
import { figureRows } from './AnswersView.tsx';
import { Chosen } from './Closing.tsx';

type Props = {
  readonly design: Design;
  readonly input: BoardInput;
  readonly talk: Talk;
  readonly onTake: (step: readonly Action[]) => void;
};

export function Swap({ design, input, talk, onTake }: Props) {
  const { words } = talk;
  const [from, setFrom] = useState<string | null>(null);
  const [to, setTo] = useState<string | null>(null);
  const choices = useMemo(() => swapChoices(design, input.trays), [design, input]);
  const nameOf = (key: string): string => {
    if (key === 'wire') return `${words.swap.wire} (${talk.wireName(design.wire.id)})`;
    return key.startsWith('metal/')
      ? `${words.swap.metal} ${talk.materialName(key.slice(6))}`
      : nameIn(input, key);
  };
  const others = from === null ? [] : choices.instead(from);
  const step = from === null || to === null ? [] : swapStep(design, input.trays, from, to);
  const swapped = step.reduce((laid, action) => reduce(laid, action, input.trays).design, design);
  return (
    <details>
      <summary>
        <h2>{words.swap.heading}</h2>
      </summary>
      <div class="row">
        <Chosen
          label={words.swap.what}
          value={from}
          options={choices.used.map((id) => ({ id, name: nameOf(id) }))}
          none={null}
          choose={words.closing.choose}
          onChange={(id) => {
            setFrom(id);
            setTo(null);
          }}
        />
        <Chosen
          key={from}
          label={words.swap.by}
          value={to}
          options={others.map((id) => ({
            id,
            name:
              from === 'wire'
                ? talk.wireName(id)
                : from?.startsWith('metal/') === true
                  ? talk.materialName(id)
                  : nameIn(input, id),
          }))}
          none={null}
          choose={words.closing.choose}
          onChange={setTo}
        />
        {swapped !== design && (
          <button
            type="button"
            class="main"
            onClick={() => {
              onTake(step);
              setFrom(null);
              setTo(null);
            }}
          >
            {words.swap.take}
          </button>
        )}
      </div>
      {swapped !== design && <Both before={design} after={swapped} input={input} talk={talk} />}
    </details>
  );
}

type BothProps = {
  readonly before: Design;
  readonly after: Design;
  readonly input: BoardInput;
  readonly talk: Talk;
};

function Both({ before, after, input, talk }: BothProps) {
  const { words } = talk;
  const sides = [
    { title: words.swap.asIs, design: before, idPrefix: 'swap-a' },
    { title: words.swap.swapped, design: after, idPrefix: 'swap-b' },
  ].map((side) => {
    const { figures, findings } = answersOf(side.design, input.rules, input.listedMinor);
    const caption = { title: side.title, description: '', idPrefix: side.idPrefix };
    return {
      ...side,
      svg: drawBoard(side.design, layPiece(side.design).sequences, {
        ...caption,
        unit: input.unit,
        claspSide: 'left',
      }),
      rows: figures === null ? [] : figureRows({ figures, listedMinor: input.listedMinor, talk }),
      mend: findingsSaid(findings, talk).map(({ text }) => text),
    };
  });
  return (
    <div class="both">
      {sides.map(({ title, svg, rows, mend }) => (
        <figure>
          <figcaption>{title}</figcaption>
          <div dangerouslySetInnerHTML={{ __html: svg }} />
          <dl class="figures">
            {rows.map(([label, value]) => (
              <div>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
            <div>
              <dt>{words.swap.checks}</dt>
              <dd>{mend.length === 0 ? words.swap.none : mend.join(' ')}</dd>
            </div>
          </dl>
        </figure>
      ))}
    </div>
  );
}
