/** Keeps every drawing inside an element at life size, also those drawn later. */
import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { lifeWidthPx } from './model/pixels.ts';

/** `pxPerMm` null: as large as the page has room for. */
export function useLifeSize(element: RefObject<HTMLElement>, pxPerMm: number | null): void {
  useLayoutEffect(() => {
    const root = element.current;
    if (root === null) return;
    const fit = () => {
      for (const svg of root.querySelectorAll('svg')) {
        const widthPx = pxPerMm === null ? null : lifeWidthPx(svg.getAttribute('viewBox'), pxPerMm);
        const style = widthPx === null ? '' : `${widthPx}px`;
        if (svg.style.width === style) continue;
        svg.style.width = style;
        svg.style.minWidth = style;
        svg.style.maxWidth = widthPx === null ? '' : 'none';
      }
    };
    fit();
    if (pxPerMm === null) return;
    const observer = new MutationObserver(fit);
    observer.observe(root, { childList: true, subtree: true });
    return () => observer.disconnect();
  }, [pxPerMm]);
}
