/**
 * The computation and what shows its answer, as one module that is fetched when the form is turned to: it is most of
 * the island's bytes, and reading a page needs none of it.
 */
export { listedOf, outcomeOf } from '../model/answer.ts';
export { chosenPiece } from '../model/chosen.ts';
export { figuresOf } from '../model/figures.ts';
export { limitsOf } from '../model/limits.ts';
export { rewrite } from '../model/rewrite.ts';
export { readyItem } from '../ordering/model/readyItem.ts';
export { sizedItem } from '../ordering/model/sizedItem.ts';
export { Announcement } from './Announcement.tsx';
export { Changes } from './Changes.tsx';
export { Verdict } from './Verdict.tsx';
