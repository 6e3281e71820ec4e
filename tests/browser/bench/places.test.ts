/** Every place that the bench's navigation leads to, in a browser. */
import { holdsForEvery } from './everyPage.ts';
import { PLACES } from './pages.ts';

holdsForEvery(PLACES);
