/** How far an upload is, in the maker's words. */
import type { HostProgress } from '#hosting/progress.ts';
import type { HostingWords } from '#words/words.ts';
import type { HowFar } from './howFar.ts';

/** Where the bar stands when a step begins; files fill the part between sending and clearing. */
const BEGINS = { connecting: 0.02, comparing: 0.05, sending: 0.1, clearing: 0.95 } as const;

export function howFarSent(
  { step, files }: HostProgress & { readonly state: 'running' },
  words: HostingWords,
): HowFar {
  const share = BEGINS[step];
  if (files === null || files.of === 0) return { step: words.steps[step], count: '', share };
  const within = (files.done / files.of) * (BEGINS.clearing - share);
  return { step: words.steps[step], count: words.progress(files.done, files.of), share: share + within };
}
