/** The bench card: one sheet to string from, on screen and on paper. */
import type { ComponentChildren } from 'preact';
import { sectionName } from '#words/sectionName.ts';
import { benchCardWords, stringingWords } from '#words/words.ts';
import { namesIn, plainNamesIn, type PieceCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import { densityOf } from '../../models/density.ts';
import { groupText } from '../../models/groups.ts';
import { stepLines } from '../../models/stepList.ts';
import { BoardMarks } from './BoardMarks.tsx';
import { Pictures } from './Pictures.tsx';
import { SequenceTable } from './SequenceTable.tsx';
import { Steps } from './Steps.tsx';
import { WireFacts } from './WireFacts.tsx';

type Props = {
  readonly bench: PieceCard;
  /** Whose it is and what for: the order's head, or the piece's. */
  readonly head: ComponentChildren;
  /** Whether the head holds a warning. */
  readonly warned: boolean;
  /** Names that stand in for the design's own. */
  readonly partNames: Readonly<Record<string, string>>;
  /** What the ticked boxes are remembered by on this device. */
  readonly ticks: string;
  readonly frame: Frame;
};

export function CardSheet({ bench, head, warned, partNames, ticks, frame }: Props) {
  const { lang, format } = frame;
  const words = benchCardWords(lang);
  const said = stringingWords(lang);
  const { copy, card, strands } = bench;
  const nameOf = namesIn(copy.design, partNames);
  const plainOf = plainNamesIn(copy.design, nameOf, words.plain);
  const nameIn = (strand: number) => (section: string) => sectionName(copy.design, { strand, section });
  const several = strands.length > 1;
  const shared = { nameOf, words, format };
  const steps = stepLines(card.steps, (step) => said.step(step, format, plainOf));
  const texts = {
    groups: strands.flat().map((group) => groupText(group, nameOf, words.kinds.loop)),
    steps: steps.flatMap(({ parts }) => parts.map(({ text }) => text)),
    strands: strands.length,
    pendant: card.pendant !== null,
    warned,
  };
  return (
    <article class={`card ${densityOf(texts)}`} data-ticks={ticks}>
      {head}
      <Pictures bench={bench} unit={frame.shop.unit} words={words} />
      <div class="columns">
        <div>
          {strands.map((groups, strand) => (
            <SequenceTable
              {...shared}
              strand={strand}
              several={several}
              groups={groups}
              sectionOf={nameIn(strand)}
            />
          ))}
        </div>
        <div>
          <WireFacts {...shared} card={card} said={said} />
          <BoardMarks
            boards={card.strands.map(({ board }) => board)}
            sectionIn={nameIn}
            words={words}
            format={format}
          />
        </div>
      </div>
      <Steps lines={steps} several={several} words={words} />
    </article>
  );
}
