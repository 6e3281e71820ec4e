/** What differs from what the buyer saw: first on the page, before anything can be strung. */
import type { Difference } from '#words/difference.ts';
import type { Frame } from '../models/frame.ts';

export function Differences({ all, frame }: { all: readonly Difference[]; frame: Frame }) {
  const { words, format } = frame;
  if (all.length === 0) return <p class="good">{words.order.same}</p>;
  return (
    <section class="warning" role="alert" aria-labelledby="differs">
      <h2 id="differs">{words.order.differs}</h2>
      <ul>
        {all.map((one) => (
          <li>
            <bdi>{words.difference(one, format)}</bdi>
          </li>
        ))}
      </ul>
      <p>{words.order.differsHint}</p>
    </section>
  );
}
