/** Where an order stands, the one step that usually comes next with the message that goes with it, and all others. */
import { ORDER_STATES } from '#words/benchCodes.ts';
import { formatMoney } from '#words/format.ts';
import { moneyWords } from '#words/words.ts';
import { goesBack, NOTE_CAP } from '../book/change.ts';
import type { Draft } from '../letters/letters.ts';
import { isAttempt, typed, type FormName } from '../models/attempt.ts';
import type { OrderDetail } from '../models/orderDetail.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';
import { LetterBody } from './Letters.tsx';
import { ParcelFields, Parcels } from './Parcels.tsx';

type Props = ChangeProps & {
  readonly detail: OrderDetail;
  /** The message that was just made ready; null for none. */
  readonly written: Draft | null;
};

export function Next({ detail, written, ...props }: Props) {
  const { entry, frame } = props;
  const { words } = frame;
  return (
    <section class="next" aria-labelledby="state">
      <h2 id="state">
        {words.order.state}: <span class={`mark state-${entry.state}`}>{words.states[entry.state]}</span>
      </h2>
      {written !== null && (
        <div class="ready">
          <h3>{moneyWords(frame.lang).next.written(words.order.letterNames[written.letter])}</h3>
          <LetterBody {...props} draft={written} id="ready" focus />
        </div>
      )}
      <Step {...props} detail={detail} first={written === null} />
      {(entry.state === 'sent' || detail.parcels.length > 0) && (
        <Parcels {...props} parcels={detail.parcels} />
      )}
      <Others {...props} />
    </section>
  );
}

const STEP: FormName = { kind: 'step' };

type StepProps = ChangeProps & { readonly detail: OrderDetail; readonly first: boolean };

/** `first`: nothing else is to be done before it. */
function Step({ detail, first, ...props }: StepProps) {
  const { frame } = props;
  const { next } = moneyWords(frame.lang);
  const step = detail.next;
  if (step === null) return <p>{doneText(detail, frame)}</p>;
  return (
    <ChangeForm {...props} form={STEP}>
      <input type="hidden" name="state" value={step.state} />
      {step.state === 'sent' && <ParcelFields {...props} form={STEP} />}
      {step.letter !== null && <input type="hidden" name="write" value={step.letter} />}
      <button type="submit" class={first ? 'main' : undefined}>
        {next.step(step.state)}
      </button>
      {step.letter !== null && <p class="quiet">{next.letter(step.letter)}</p>}
      {step.doubt !== null && <p class="quiet">{next.doubts[step.doubt]}</p>}
    </ChangeForm>
  );
}

/** Nothing more to do, but for money that is still to come or to go back. */
function doneText({ entry, money }: OrderDetail, { lang }: ChangeProps['frame']): string {
  const { next } = moneyWords(lang);
  const { openMinor } = money.ledger;
  const sum = formatMoney(Math.abs(openMinor), money.due.currency, lang);
  if (money.kept && openMinor > 0) return next.stillToPay(sum);
  if (openMinor < 0) return next.stillToPayBack(sum);
  return entry.state === 'sent' ? next.finished : next.cancelled;
}

function Others(props: ChangeProps) {
  const { entry, attempt, frame } = props;
  const { next } = moneyWords(frame.lang);
  const { words } = frame;
  const form = { kind: 'state' };
  return (
    <details open={isAttempt(attempt, form)}>
      <summary>{next.else}</summary>
      <ChangeForm {...props} form={form}>
        <label>
          {next.reason}
          <input
            name="reason"
            maxLength={NOTE_CAP}
            value={typed(attempt, form, 'reason', '')}
            aria-describedby="reason-hint"
          />
        </label>
        <p class="quiet" id="reason-hint">
          {next.reasonHint}
        </p>
        <p class="row">
          {ORDER_STATES.filter((state) => state !== entry.state).map((state) => (
            <button type="submit" name="state" value={state}>
              {goesBack(entry.state, state) ? next.back(words.states[state]) : next.step(state)}
            </button>
          ))}
        </p>
      </ChangeForm>
    </details>
  );
}
