/** Whether an element has come into sight, or the keyboard has come into it. */
import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Begins a little before, so that what it is for is there in time. */
const MARGIN = '300px';

export function useSeen(element: RefObject<HTMLElement>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const target = element.current;
    if (target === null || seen) return;
    const see = () => setSeen(true);
    const observer = new IntersectionObserver(
      (entries) => entries.some(({ isIntersecting }) => isIntersecting) && see(),
      { rootMargin: MARGIN },
    );
    observer.observe(target);
    target.addEventListener('focusin', see);
    return () => {
      observer.disconnect();
      target.removeEventListener('focusin', see);
    };
  }, [seen]);
  return seen;
}
