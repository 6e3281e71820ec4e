/** Every page of the bench that stands further down than the navigation, in a browser. */
import { holdsForEvery } from './everyPage.ts';
import { FURTHER } from './pages.ts';

holdsForEvery(FURTHER);
