import { sizing } from '#words/de/sizing.ts';
import { Sizer, type SizerLanguage, type SizerProps } from './form/Sizer.tsx';

export { bringAlive } from './form/bringAlive.tsx';

const load: SizerLanguage['load'] = {
  answer: () => import('./AnswerDe.ts'),
  order: () => import('#words/de/order.ts'),
  body: () => import('#words/de/body.ts'),
  screen: () => import('#words/de/screen.ts'),
};

/** The island in German. */
export default function SizerDe(props: SizerProps) {
  return <Sizer {...props} lang="de" words={sizing} load={load} />;
}
