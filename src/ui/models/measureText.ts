/** A component's measures as a bead seller writes them: millimetres, along × across where they differ. */
import type { Component } from '#core/design/component.ts';
import { formatNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';

/** Differences below this are one size to the eye, mm. */
const SAME_MM = 0.05;

export function measureText(component: Component, lang: Lang): string {
  const { acrossMm } = component;
  // What hangs takes next to nothing of the wire: its length is how far it hangs.
  const longMm = component.kind === 'pendant' ? component.hangMm : component.alongMm;
  const long = formatNumber(longMm, lang, 1);
  const across = formatNumber(acrossMm, lang, 1);
  return Math.abs(longMm - acrossMm) < SAME_MM ? `${long}\u00a0mm` : `${long}\u00a0×\u00a0${across}\u00a0mm`;
}
