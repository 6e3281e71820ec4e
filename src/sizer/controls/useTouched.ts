/** Whether somebody has turned to an element: with keyboard, finger or pointer. */
import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

const TURNS = ['focusin', 'pointerover', 'pointerdown'] as const;

export function useTouched(element: RefObject<HTMLElement>): boolean {
  const [touched, setTouched] = useState(false);
  useEffect(() => {
    const target = element.current;
    if (target === null || touched) return;
    const touch = () => setTouched(true);
    // Before the code was alive somebody may have been there already.
    if (target.contains(document.activeElement)) touch();
    for (const turn of TURNS) target.addEventListener(turn, touch);
    return () => {
      for (const turn of TURNS) target.removeEventListener(turn, touch);
    };
  }, [touched]);
  return touched;
}
