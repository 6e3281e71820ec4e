/** Tells a screen reader the answer once the buyer has paused, so that a dragged slider doesn't talk without end. */
import { useEffect, useState } from 'preact/hooks';

/** Long enough to type the next figure. */
const PAUSE_MS = 700;

export function Announcement({ text }: { readonly text: string }) {
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
