/** Tells a screen reader the answer once the buyer has paused, so that a dragged slider doesn't talk without end. */
import { useEffect, useState } from 'preact/hooks';
import type { Format } from '#words/format.ts';
import type { SizedWords } from '#words/words.ts';
import type { Sized } from '../model/outcome.ts';

/** Long enough to type the next figure. */
const PAUSE_MS = 700;

export type AnnouncementProps = {
  readonly words: SizedWords;
  readonly format: Format;
  /** Null where there is nothing to tell. */
  readonly sizing: Sized | null;
};

export function Announcement({ words, format, sizing }: AnnouncementProps) {
  const text = sizing === null ? '' : announcementOf(words, format, sizing);
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}

function announcementOf(words: SizedWords, format: Format, sizing: Sized): string {
  if (sizing.status === 'outside')
    return words.outside(format, sizing.side, sizing.choice.measure.of, sizing.limits);
  return words.announce(
    format,
    sizing.chosen.finishedLengthMm,
    sizing.chosen.insideGirthMm,
    sizing.chosen.priceMinor,
  );
}
