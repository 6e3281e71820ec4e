/** Which strand is in work, and how strands lie to each other. */
import type { Talk } from '../model/talk.ts';
import type { Board } from './useBoard.ts';

export function Strands({ board, talk }: { readonly board: Board; readonly talk: Talk }) {
  const { design, strand, act } = board;
  const words = talk.words.strands;
  const several = design.strands.length > 1;
  const { lie, nestGapMm } = design;
  return (
    <fieldset class="strands">
      <legend>{words.heading}</legend>
      <div class="row">
        {several && (
          <div role="group" aria-label={words.choose} class="row">
            {design.strands.map((_, index) => (
              <button type="button" aria-pressed={index === strand} onClick={() => board.chooseStrand(index)}>
                {words.one(index + 1)}
              </button>
            ))}
          </div>
        )}
        <label class="check">
          <input
            type="checkbox"
            checked={design.strands[strand]?.mirrored === true}
            onChange={(event) => act([{ type: 'mirrored', strand, mirrored: event.currentTarget.checked }])}
          />{' '}
          {words.mirrored}
        </label>
        <button type="button" onClick={() => act([{ type: 'add-strand', like: strand }])}>
          {words.add}
        </button>
        {several && (
          <button type="button" onClick={() => act([{ type: 'remove-strand', strand }])}>
            {words.remove}
          </button>
        )}
      </div>
      {several && (
        <div class="row">
          <label>
            {words.lie}
            <select
              onChange={(event) =>
                act([{ type: 'lie', lie: event.currentTarget.value as 'nested', gapMm: nestGapMm }])
              }
            >
              {(['side-by-side', 'nested'] as const).map((one) => (
                <option value={one} selected={one === lie}>
                  {words.lies[one]}
                </option>
              ))}
            </select>
          </label>
          {lie === 'nested' && (
            <label>
              {words.gap}
              <input
                type="text"
                inputMode="decimal"
                size={5}
                value={nestGapMm}
                onChange={(event) =>
                  act([{ type: 'lie', lie: 'nested', gapMm: readMm(event.currentTarget.value, nestGapMm) }])
                }
              />
            </label>
          )}
        </div>
      )}
    </fieldset>
  );
}

/** Millimetres as typed, with a comma too; what was there where it is none. */
export function readMm(text: string, before: number): number {
  const value = Number(
    text
      .trim()
      .replace(',', '.')
      .replace(/\s*mm$/, ''),
  );
  return text.trim() !== '' && Number.isFinite(value) ? value : before;
}
