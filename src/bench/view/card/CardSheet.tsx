/** The bench card: one sheet to string from, on screen and on paper. */
import { benchCardWords } from '#words/benchCard.ts';
import { formatDate } from '#words/format.ts';
import { orderWords } from '#words/order.ts';
import { stringingWords } from '#words/stringing.ts';
import { namesIn, plainNamesIn, sectionNames, type BenchCard } from '../../page/benchCard.ts';
import type { Frame } from '../../page/frame.ts';
import type { OrderDetail } from '../../page/orderDetail.ts';
import { densityOf } from '../../page/density.ts';
import { groupText } from '../../page/groups.ts';
import { stepLines } from '../../page/stepList.ts';
import { BoardMarks } from './BoardMarks.tsx';
import { Pictures } from './Pictures.tsx';
import { SequenceTable } from './SequenceTable.tsx';
import { Steps } from './Steps.tsx';
import { WireFacts } from './WireFacts.tsx';

type Props = { readonly bench: BenchCard; readonly detail: OrderDetail; readonly frame: Frame };

export function CardSheet({ bench, detail, frame }: Props) {
  const { lang, format } = frame;
  const words = benchCardWords(lang);
  const said = stringingWords(lang);
  const { copy, card, strands } = bench;
  const nameOf = namesIn(copy.design, detail.partNames);
  const plainOf = plainNamesIn(copy.design, nameOf, words.plain);
  const sections = sectionNames(copy.design);
  const several = strands.length > 1;
  const shared = { nameOf, words, format };
  const steps = stepLines(card.steps, (step) => said.step(step, format, plainOf));
  const texts = {
    groups: strands.flat().map((group) => groupText(group, nameOf, words.kinds.loop)),
    steps: steps.flatMap(({ parts }) => parts.map(({ text }) => text)),
    strands: strands.length,
    pendant: card.pendant !== null,
    warned: isWarned(detail),
  };
  return (
    <article class={`card ${densityOf(texts)}`} data-ticks={`${detail.entry.document.number}-${bench.basis}`}>
      <CardHead bench={bench} detail={detail} frame={frame} />
      <Pictures bench={bench} unit={frame.shop.unit} words={words} />
      <div class="columns">
        <div>
          {strands.map((groups, strand) => (
            <SequenceTable
              {...shared}
              strand={strand}
              several={several}
              groups={groups}
              sections={sections}
            />
          ))}
        </div>
        <div>
          <WireFacts {...shared} card={card} said={said} />
          <BoardMarks
            boards={card.strands.map(({ board }) => board)}
            sections={sections}
            words={words}
            format={format}
          />
        </div>
      </div>
      <Steps lines={steps} several={several} words={words} />
    </article>
  );
}

function CardHead({ bench: { copy, candidate, card, basis }, detail, frame }: Props) {
  const { lang, format, words: book } = frame;
  const words = benchCardWords(lang);
  const { document, dueOn } = detail.entry;
  const { buyer, quantity, measure } = document;
  const facts: [string, string][] = [
    [words.facts.size, orderWords(lang).rows(format, document, '')[1]?.value ?? measure.text],
    [words.facts.finished, book.both(card.finishedLengthMm, format)],
    [words.facts.girth, book.both(candidate.insideGirthMm, format)],
    ...(dueOn === null ? [] : [[words.facts.due, formatDate(dueOn, lang)] as [string, string]]),
  ];
  return (
    <header>
      <h1>
        {copy.name} <small>{document.number}</small>
      </h1>
      {buyer.name !== '' && (
        <p>
          <bdi>{words.for(buyer.name)}</bdi>
        </p>
      )}
      {isWarned(detail) && <p class="warning">{`${words.check} ${words.by[basis]}`}</p>}
      {quantity > 1 && <p class="warning">{words.quantity(quantity)}</p>}
      <dl class="facts inline">
        {facts.map(([label, value]) => (
          <div>
            <dt>{label}</dt>
            <dd>
              <bdi>{value}</bdi>
            </dd>
          </div>
        ))}
      </dl>
    </header>
  );
}

/** Whether the order differs from what the buyer saw. */
function isWarned({ now }: OrderDetail): boolean {
  return now.checked.differences.length > 0;
}
