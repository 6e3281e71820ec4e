/** Safe-keeping where the book is damaged or gone: what happened, what is safe, what to do. */
import { underBase } from '#ui/site/base.ts';
import type { BenchProblem } from '#words/benchCodes.ts';
import type { Copy } from '../book/copies.ts';
import type { CheckState } from '../context/bench.ts';
import type { Frame } from '../models/frame.ts';
import { CheckView } from './CheckView.tsx';
import { CopiesView } from './CopiesView.tsx';
import { RestoreForm } from './RestoreForm.tsx';
import { SureForm } from './SureForm.tsx';

type Props = {
  readonly frame: Frame;
  readonly problem: BenchProblem;
  readonly copies: readonly Copy[];
  readonly check: CheckState;
};

export function BrokenView({ frame, problem, copies, check }: Props) {
  const { keep } = frame.words;
  return (
    <>
      <div class="warning" role="alert">
        <h2>{keep.broken}</h2>
        <p>{frame.words.problem(problem, frame.format)}</p>
        <p>{keep.brokenSafe}</p>
      </div>
      <div class="columns">
        <section aria-labelledby="restore">
          <h2 id="restore">{keep.brokenRestore}</h2>
          <p>{keep.brokenRestoreHint}</p>
          <RestoreForm frame={frame} />
        </section>
        <section aria-labelledby="begin">
          <h2 id="begin">{keep.begin}</h2>
          <p>{keep.beginHint}</p>
          <SureForm
            action={underBase('/bench/keep/begin/')}
            sure={keep.beginSure}
            button={keep.beginButton}
          />
        </section>
      </div>
      {check.state === 'done' && <CheckView frame={frame} check={check} />}
      <CopiesView frame={frame} copies={copies} unreached={[]} />
    </>
  );
}
