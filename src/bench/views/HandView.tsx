/** The form of an order by hand: problems first, then the piece, what it comes to, the buyer; the e-mail beside it. */
import { underBase } from '#ui/site/base.ts';
import type { HandWords } from '#words/words.ts';
import type { HandField } from '../intake/handForm.ts';
import { SOURCE_CAP } from '../intake/handForm.ts';
import type { Frame } from '../models/frame.ts';
import type { HandSheet } from '../models/handSheet.ts';
import { HandBuyer } from './hand/HandBuyer.tsx';
import { HandPiece } from './hand/HandPiece.tsx';
import { HandResult } from './hand/HandResult.tsx';

type Props = { readonly sheet: HandSheet; readonly frame: Frame; readonly words: HandWords };

const action = (): string => underBase('/bench/orders/new/');
/** Carried from step to step. */
const KEPT: readonly HandField[] = ['mail', 'restring', 'number', 'placedAt'];

export function HandView({ sheet, frame, words }: Props) {
  const { order, stage } = sheet;
  const { fields } = order;
  const mail = fields.mail !== '';
  return (
    <>
      {stage === 'fresh' && <p>{words.lead}</p>}
      <Said sheet={sheet} frame={frame} words={words} />
      <div class={mail ? 'columns' : undefined}>
        <form class="hand" method="post" action={action()} noValidate>
          {KEPT.map((name) => (
            <input type="hidden" name={name} value={fields[name]} />
          ))}
          <input type="hidden" name="shown" value={order.showing} />
          <HandPiece sheet={sheet} frame={frame} words={words} />
          <HandResult sheet={sheet} frame={frame} words={words} />
          <HandBuyer sheet={sheet} frame={frame} words={words} />
          <button type="submit" class="main" name="do" value="enter">
            {words.enter}
          </button>
        </form>
        {mail ? <Mail text={fields.mail} words={words} /> : <FromMail words={words} />}
      </div>
    </>
  );
}

/** What became of the step: the page's first word, which a screen reader is told. */
function Said({ sheet, frame, words }: Props) {
  const { stage, problems, remarks, takenNumber, order } = sheet;
  const wrong = Object.entries(problems);
  return (
    <>
      {order.fields.restring !== '' && <p>{words.restringing(order.fields.restring)}</p>}
      {wrong.length > 0 && (
        <section class="warning" role="alert" aria-labelledby="wrong">
          <h2 id="wrong">{words.wrong}</h2>
          <ul>
            {wrong.map(([name, problem]) => (
              <li>
                <a href={`#hand-${name}`}>{words.problem(problem, frame.format)}</a>
              </li>
            ))}
          </ul>
        </section>
      )}
      {(stage === 'look' || stage === 'look-again') && (
        <p class="warning" role="alert">
          {stage === 'look' ? words.look : words.lookAgain}
        </p>
      )}
      {takenNumber !== null && (
        <p class="warning" role="alert">
          {words.taken(takenNumber)} <a href={underBase(`/bench/orders/${takenNumber}/`)}>{takenNumber}</a>
        </p>
      )}
      {stage === 'read' && (
        <section class="noted" aria-labelledby="unread" role="status">
          <p>{words.readHint}</p>
          <h2 id="unread">{words.unread}</h2>
          <ul>
            {remarks.map((one) => (
              <li>{words.remark(one, frame.format)}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Mail({ text, words }: { readonly text: string; readonly words: HandWords }) {
  return (
    <section aria-labelledby="mail">
      <h2 id="mail">{words.mailBeside}</h2>
      <pre class="mail" tabIndex={0} role="group" aria-labelledby="mail" dir="auto">
        {text}
      </pre>
    </section>
  );
}

function FromMail({ words }: { readonly words: HandWords }) {
  return (
    <details>
      <summary>{words.fromMail}</summary>
      <form method="post" action={action()}>
        <p>{words.fromMailHint}</p>
        <label>
          {words.mailText}
          <textarea name="mail" rows={10} maxLength={SOURCE_CAP} required></textarea>
        </label>
        <button type="submit" name="do" value="read">
          {words.readMail}
        </button>
      </form>
    </details>
  );
}
