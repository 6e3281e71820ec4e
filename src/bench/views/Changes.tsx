/** An order's day, and the maker's notes on it. */
import { NOTE_CAP } from '../book/change.ts';
import { typed } from '../models/attempt.ts';
import { ChangeForm, type ChangeProps } from './ChangeForm.tsx';

export function Changes(props: ChangeProps) {
  const { entry, attempt, frame } = props;
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
