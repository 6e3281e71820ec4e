/** A backup with harmed orders: which they are, what becomes of them, and whether she wants it all the same. */
import { underBase } from '#ui/site/base.ts';
import { markOf, type Harm } from '../book/checkBackup.ts';
import type { Frame } from '../models/frame.ts';
import { RestoreForm } from './RestoreForm.tsx';

export function HarmedView({ frame, harm }: { readonly frame: Frame; readonly harm: Harm }) {
  const { keep } = frame.words;
  return (
    <>
      <div class="warning" role="alert">
        <p>{keep.harmedFound}</p>
        <Numbers title={keep.harmedUnreadable} numbers={harm.unreadable} />
        <Numbers title={keep.harmedAltered} numbers={harm.altered} />
      </div>
      <p>{keep.harmedThen}</p>
      <RestoreForm frame={frame} told={markOf(harm)} />
      <p>
        <a href={underBase('/bench/keep/')}>{keep.harmedBack}</a>
      </p>
    </>
  );
}

function Numbers({ title, numbers }: { readonly title: string; readonly numbers: readonly string[] }) {
  if (numbers.length === 0) return null;
  return (
    <>
      <p>{title}</p>
      <ul>
        {numbers.map((number) => (
          <li>{number}</li>
        ))}
      </ul>
    </>
  );
}
