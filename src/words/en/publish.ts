/** What the maker reads on putting her changes into the shop. */
import type { Changed, Step } from '../publishing.ts';

const pieces = (count: number): string => (count === 1 ? '1 piece' : `${count} pieces`);

const steps: Readonly<Record<Step, string>> = {
  reading: 'Reading what you wrote …',
  program: 'Building the whole shop anew, since the program has changed. This takes a minute or so …',
  pages: 'Making the pages …',
  search: 'Making the search …',
  putting: 'Putting it in place …',
};

const how: Readonly<Record<Changed['how'], string>> = { new: 'new', changed: 'changed', gone: 'gone' };

export const publish = {
  title: 'Publish',
  waiting: 'What you changed isn’t in the shop yet.',
  lead: 'What you change at the bench is yours alone until you publish it. Then the whole shop changes at once, and stays open all the while.',
  since: (when: string): string => `The shop stands as you published it on ${when}.`,
  nothing: 'Nothing has changed since then.',
  will: 'What will change',
  kinds: { pieces: 'Pieces', components: 'Beads and findings', wires: 'Wires', guides: 'Guides' },
  shop: 'The shop’s rules: prices of work, post, addresses or what stands in its file',
  how,
  stock: 'What there is',
  stockLead: 'These numbers are written into their files, and the shop sizes with them:',
  button: 'Publish now',
  again: 'Publish all the same',
  running: 'It is being published',
  steps,
  progress: (done: number, of: number): string => `${done} of ${pieces(of)}`,
  stay: 'You can close this page; it goes on by itself.',
  made: (when: string, seconds: string): string =>
    `Published on ${when}, in ${seconds} s. Everybody sees it now.`,
  same: (when: string): string => `Nothing had changed, so nothing was published (${when}).`,
  takenBack: (when: string): string =>
    `Taken back (${when}). Your changes are still written here; the shop shows what stood there before.`,
  failed: (when: string): string => `It could not be published (${when}). The shop stays as it was.`,
  stopped: 'It was stopped before it was done. Publish again.',
  mend: 'To mend first',
  mendLead: 'The shop stays as it is until this is mended:',
  said: 'What the program said',
  back: 'Take it back',
  backLead: (when: string): string =>
    `The shop as it stood before, published on ${when}, can be shown again at once. What you wrote stays written.`,
  backButton: 'Show the shop as it was',
  backSure: 'Take back what was published last',
};
