/** What all parts of a tutorial are given. */
import type { Tutorial } from '../../models/tutorial.ts';
import type { NameOf } from '#words/en/steps.ts';
import type { Format } from '#words/format.ts';
import type { Lang } from '#words/lang.ts';
import type { TeachingWords } from '#words/words.ts';
import type { ShownUnit } from '#core/units/unit.ts';

export type Told = {
  readonly tutorial: Tutorial;
  readonly words: TeachingWords;
  readonly lang: Lang;
  readonly format: Format;
  readonly unit: ShownUnit;
  readonly nameOf: NameOf;
  /** Findings by their kind. */
  readonly plainOf: NameOf;
};
