/** A piece as a tutorial, on screen and on paper: what to lay ready, what to mind, and every step with its drawing. */
import type { ShownUnit } from '#core/units/unit.ts';
import { formatFor } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import { teachingWords, weekWords } from '#words/words.ts';
import { namesIn, plainNamesIn } from '../../models/partNames.ts';
import type { Tutorial } from '../../models/tutorial.ts';
import { Cautions, Needed } from './Needed.tsx';
import { StrandSteps } from './StrandSteps.tsx';
import type { Told } from './told.ts';

type Props = {
  readonly tutorial: Tutorial;
  readonly lang: Lang;
  readonly unit: ShownUnit;
  readonly currency: string;
};

export function TutorialSheet({ tutorial, lang, unit, currency }: Props) {
  const words = teachingWords(lang);
  const format = formatFor(lang, unit, currency);
  const { design, card, own, minutes } = tutorial;
  const nameOf = namesIn(design, {});
  const plainOf = plainNamesIn(design, nameOf, words.plain);
  const told: Told = { tutorial, words, lang, format, unit, nameOf, plainOf };
  const side = card.hand.boardSide;
  const otherHand = side === null ? null : card.hand.hand === 'right' ? 'left' : 'right';
  return (
    <article class="tutorial">
      {own.lead !== null && (
        <section class="own" aria-labelledby="own">
          <h2 id="own">{words.ownLead}</h2>
          {own.lead.split(/\n\s*\n/).map((paragraph) => (
            <p>{paragraph}</p>
          ))}
        </section>
      )}
      <Cautions {...told} />
      <Needed {...told} />
      <section aria-labelledby="steps">
        <h2 id="steps">{words.steps}</h2>
        <p>{words.estimate(weekWords(lang).time(minutes, format))}</p>
        {otherHand !== null && <p>{words.otherHand[otherHand]}</p>}
        {card.strands.map((_, strand) => (
          <StrandSteps {...told} strand={strand} />
        ))}
      </section>
    </article>
  );
}
