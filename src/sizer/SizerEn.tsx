import { sizing } from '#words/en/sizing.ts';
import { Sizer, type SizerLanguage, type SizerProps } from './form/Sizer.tsx';

export { bringAlive } from './form/bringAlive.tsx';

const load: SizerLanguage['load'] = {
  answer: () => import('./AnswerEn.ts'),
  order: () => import('#words/en/order.ts'),
  body: () => import('#words/en/body.ts'),
  screen: () => import('#words/en/screen.ts'),
};

/** The island in English: one language’s words, so that a phone gets no other. */
export default function SizerEn(props: SizerProps) {
  return <Sizer {...props} lang="en" words={sizing} load={load} />;
}
