/** A component's measures as a bead seller writes them: millimetres, along × across where they differ. */
import type { Component } from '#core/components/component.ts';
import { formatNumber } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';

/** Differences below this are one size to the eye, mm. */
const SAME_MM = 0.05;

export function measureText({ alongMm, acrossMm }: Component, lang: Lang): string {
  const along = formatNumber(alongMm, lang, 1);
  const across = formatNumber(acrossMm, lang, 1);
  return Math.abs(alongMm - acrossMm) < SAME_MM
    ? `${along}\u00a0mm`
    : `${along}\u00a0×\u00a0${across}\u00a0mm`;
}
