/** The bench card: a sheet a strand to string from, on screen and on paper. */
import type { ComponentChildren } from 'preact';
import { sectionName } from '#words/sectionName.ts';
import { benchCardWords, stringingWords } from '#words/words.ts';
import { namesIn, plainNamesIn } from '#ui/models/partNames.ts';
import type { PieceCard } from '../../models/benchCard.ts';
import type { Frame } from '../../models/frame.ts';
import { phasesOf } from '#core/instructions/phases.ts';
import { BoardMarks } from './BoardMarks.tsx';
import { ExactFigures } from './ExactFigures.tsx';
import { EndPicture, StrandPicture } from './Pictures.tsx';
import { StringingList } from './StringingList.tsx';
import { Steps } from './Steps.tsx';
import { WireFacts } from './WireFacts.tsx';

type Props = {
  readonly bench: PieceCard;
  /** Whose it is and what for: the order's head, or the piece's. */
  readonly head: ComponentChildren;
  /** The order's number, for the head of each further sheet. */
  readonly mark?: string;
  /** Names that stand in for the design's own. */
  readonly partNames: Readonly<Record<string, string>>;
  /** What the ticked boxes are remembered by on this device. */
  readonly ticks: string;
  readonly frame: Frame;
};

/** Entries of a list that leaves room below it beside wire, ends and marks. */
const SHORT_LIST = 8;

export function CardSheet({ bench, head, mark, partNames, ticks, frame }: Props) {
  const { lang, format } = frame;
  const words = benchCardWords(lang);
  const said = stringingWords(lang);
  const { copy, card, strands } = bench;
  const { design } = copy;
  const nameOf = namesIn(design, partNames);
  const plainOf = plainNamesIn(design, nameOf, words.plain);
  const phases = phasesOf(card.steps, strands.length);
  const several = strands.length > 1;
  return (
    <article class="card" data-ticks={ticks}>
      {head}
      {card.strands.map((strandCard, strand) => {
        const sectionOf = (section: string) => sectionName(design, { strand, section });
        const shared = { card, strandCard, nameOf, words, said, format };
        const groups = strands[strand] ?? [];
        // The close-up stands where there is room: under a short list, else beside a long one.
        const short = groups.length < SHORT_LIST;
        const end = <EndPicture {...{ bench, strand, words }} />;
        return (
          <section class="strand">
            {several && (
              <h2>
                {words.strandOf(strand + 1, strands.length)}{' '}
                <small>
                  {copy.name} {mark}
                </small>
              </h2>
            )}
            <StrandPicture {...{ bench, strand, groups, words }} unit={frame.shop.unit} />
            <div class="columns">
              <div>
                <StringingList
                  {...{ strand, groups, sectionOf, nameOf, words, format }}
                  held={card.ends.held}
                  rings={card.pendant?.rings ?? []}
                />
                {short && end}
              </div>
              <div>
                <WireFacts {...shared} withPiece={strand === 0} />
                <BoardMarks board={strandCard.board} {...{ sectionOf, words, format }} />
                {!short && end}
                <ExactFigures {...shared} />
              </div>
            </div>
            <Steps
              paperHead={[copy.name, mark, several ? words.strandOf(strand + 1, strands.length) : undefined]}
              phases={phases[strand] ?? []}
              say={(step) => said.step(step, format, step.code === 'join-ring' ? nameOf : plainOf)}
              words={words}
            />
          </section>
        );
      })}
    </article>
  );
}
