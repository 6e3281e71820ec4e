/** Sentences about her own words of a tutorial. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const teachFile: Pick<CatalogueSentences, 'teach-place-missing' | 'teach-place-unknown'> = {
  'teach-place-missing': ({ place }) => ({
    what: `Your words for this step have no {${place}} in them, and the learner couldn’t do it.`,
    fix: `Write {${place}} where the shop is to put what each size asks for; or leave the step out, and it is told as usual.`,
  }),
  'teach-place-unknown': ({ place, known }) => ({
    what: `There is no {${place}} in this step.`,
    fix: known === '' ? 'Write it out; nothing of this step hangs on the size.' : `There is ${known}.`,
  }),
};
