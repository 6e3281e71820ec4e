/** An order's day, and the maker's notes on it. */
import { formatDate } from '#words/format.ts';
import { weekWords } from '#words/words.ts';
import { NOTE_CAP } from '../book/change.ts';
import { typed } from '../models/attempt.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

type Props = ChangeProps & { readonly proposed: string | null };

export function Changes(props: Props) {
  const { entry, attempt, frame, proposed } = props;
  const { order } = frame.words;
  return (
    <section aria-labelledby="plan">
      <h2 id="plan">{order.plan}</h2>
      <ChangeForm {...props} form={{ kind: 'due' }} class="row">
        <label>
          {order.due}{' '}
          <input type="date" name="on" value={typed(attempt, { kind: 'due' }, 'on', entry.dueOn ?? '')} />
        </label>
        <button type="submit">{order.setDue}</button>
      </ChangeForm>
      {proposed !== null && (
        <ChangeForm {...props} form={{ kind: 'due' }} class="row">
          <input type="hidden" name="on" value={proposed} />
          {weekWords(frame.lang).proposed(formatDate(proposed, frame.lang))}
          <button type="submit">{weekWords(frame.lang).take}</button>
        </ChangeForm>
      )}
      <ChangeForm {...props} form={{ kind: 'note' }}>
        <label>
          {order.noteLabel}
          <textarea name="text" rows={3} maxLength={NOTE_CAP} required>
            {typed(attempt, { kind: 'note' }, 'text', '')}
          </textarea>
        </label>
        <button type="submit">{order.addNote}</button>
      </ChangeForm>
    </section>
  );
}
