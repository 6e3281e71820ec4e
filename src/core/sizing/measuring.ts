/** How well a maker measures a finished piece. */
import type { Fitted } from '../design/choice.ts';

/** How far a maker's measuring is off, standard deviation, mm (common practice, no source). */
export const MEASURING_SD_MM: Readonly<Record<Fitted, number>> = { length: 0.5, girth: 1.5 };
