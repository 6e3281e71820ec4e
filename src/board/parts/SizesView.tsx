/** Every size that the piece can be made in, with what would close the gaps: done at one tap where it can be. */
import type { Design } from '#core/design/design.ts';
import type { Remedy } from '#core/sizing/gaps/remedies.ts';
import type { Action } from '../model/action.ts';
import { actionsFor, readIntervals, type Sizes } from '../model/sizes.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly design: Design;
  readonly sizes: Sizes | null | 'thinking';
  readonly talk: Talk;
  readonly onDo: (step: readonly Action[], said: string) => void;
};

export function SizesView({ design, sizes, talk, onDo }: Props) {
  const words = talk.words.sizes;
  return (
    <section aria-labelledby="sizes-heading" aria-busy={sizes === 'thinking'}>
      <h2 id="sizes-heading">{words.heading}</h2>
      {sizes === null && <p class="quiet">{words.none}</p>}
      {sizes === 'thinking' && <p class="quiet">{words.thinking}</p>}
      {sizes !== null && sizes !== 'thinking' && (
        <Known design={design} sizes={sizes} talk={talk} onDo={onDo} />
      )}
    </section>
  );
}

const varies = ({ strands }: Design): boolean =>
  strands.some(({ sections }) => sections.some(({ fewest, most }) => fewest < most));

function Known({ design, sizes, talk, onDo }: Props & { readonly sizes: Sizes }) {
  const { f, nameOf, words: all } = talk;
  const words = all.sizes;
  const { of, intervals, missedMm, closings } = sizes;
  const list = (mm: readonly number[]): string => f.list(mm.map(f.length));
  const named = (remedy: Remedy): string => {
    if (remedy.code === 'add-filler') return nameOf(remedy.component);
    if (remedy.code !== 'widen-section') return '';
    return design.strands[remedy.strand]?.sections.find(({ id }) => id === remedy.section)?.name ?? '';
  };
  return (
    <>
      <p>
        {words.of[of]}:{' '}
        {readIntervals(intervals, f.length)
          .map(({ fromMm, toMm }) => words.interval(f.length(fromMm), f.length(toMm)))
          .join('; ')}
      </p>
      {!varies(design) && <p>{words.only}</p>}
      {varies(design) && <p>{missedMm.length === 0 ? words.nothingMissed : words.missed(list(missedMm))}</p>}
      <ul class="findings">
        {closings.map(({ sizesMm, remedy }) => {
          const said = remedy === null ? words.noRemedy : words.remedy(remedy, named(remedy), f);
          const step = remedy === null ? [] : actionsFor(design, remedy, all.named.filler);
          return (
            <li>
              {words.for(list(sizesMm))} {said}.{' '}
              {step.length > 0 && (
                <button type="button" class="plain" onClick={() => onDo(step, said)}>
                  {words.do}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
