/**
 * The computation, as one module that is fetched when somebody turns
 * to the form: it is most of the island's bytes, and reading a page needs none of it.
 */
export { listedOf, outcomeOf } from './answer.ts';
export { chosenPiece } from './chosen.ts';
export { figuresOf } from './figures.ts';
export { limitsOf } from './limits.ts';
export { rewrite } from './rewrite.ts';
