/** From a finished piece back to its counts: what was measured in, the likeliest counts out, each laid at one tap. */
import { useState } from 'preact/hooks';
import type { Design } from '#core/design/design.ts';
import { fittedOf, type Fitted } from '#core/design/choice.ts';
import { explainPiece, type Explained } from '#core/sizing/explain.ts';
import { MEASURING_SD_MM } from '#core/sizing/measuring.ts';
import { parseLength } from '#core/units/length.ts';
import { sentenceOf } from '#words/sentence.ts';
import type { Action } from '../model/action.ts';
import type { BoardInput } from '../model/input.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly design: Design;
  readonly strand: number;
  readonly unit: BoardInput['unit'];
  readonly talk: Talk;
  readonly onTake: (step: readonly Action[]) => void;
};

/** As many as are worth reading. */
const MOST_TOLD = 5;

export function Found({ design, strand, unit, talk, onTake }: Props) {
  const words = talk.words.found;
  const [text, setText] = useState('');
  const [of, setOf] = useState<Fitted>(fittedOf(design.kind));
  const [found, setFound] = useState<Explained | 'unread' | null>(null);
  const find = (event: Event): void => {
    event.preventDefault();
    const read = parseLength(text, unit);
    setFound(
      read.ok
        ? explainPiece(design, strand, { of, mm: read.mm, sdMm: MEASURING_SD_MM[of], estimates: null })
        : 'unread',
    );
  };
  return (
    <details>
      <summary>
        <h2>{words.heading}</h2>
      </summary>
      <p class="quiet">{words.hint}</p>
      <form class="row" onSubmit={find}>
        <label>
          {words.measure}
          <input value={text} size={10} onInput={(event) => setText(event.currentTarget.value)} />
        </label>
        <select aria-label={words.measure} onChange={(event) => setOf(event.currentTarget.value as Fitted)}>
          {(['length', 'girth'] as const).map((one) => (
            <option value={one} selected={one === of}>
              {words.of[one]}
            </option>
          ))}
        </select>
        <button type="submit">{words.find}</button>
      </form>
      <div role="status">
        {found === 'unread' && <p class="warning">{words.unread}</p>}
        {found !== null && found !== 'unread' && (
          <Told found={found} design={design} strand={strand} talk={talk} onTake={onTake} />
        )}
      </div>
    </details>
  );
}

type ToldProps = Omit<Props, 'unit'> & { readonly found: Explained };

function Told({ found, design, strand, talk, onTake }: ToldProps) {
  const { f, sized } = talk;
  const words = talk.words.found;
  if (found.status === 'refused')
    return <p class="warning">{sentenceOf(sized.problems, found.problem, f)}</p>;
  if (found.explanations.length === 0) return <p>{words.none}</p>;
  const sections = design.strands[strand]?.sections ?? [];
  return (
    <ul class="findings">
      {found.explanations.slice(0, MOST_TOLD).map(({ counts, offMm, share }) => (
        <li>
          {f.list(sections.map(({ name }, at) => `${name} ${f.number(counts[at] ?? 0)}`))}
          {' · '}
          {words.off(f.fine(Math.abs(offMm)))}
          {' · '}
          {words.share(`${f.number(share * 100)} %`)}{' '}
          <button type="button" class="plain" onClick={() => onTake([{ type: 'counts', strand, counts }])}>
            {words.take}
          </button>
        </li>
      ))}
    </ul>
  );
}
