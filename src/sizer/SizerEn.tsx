import { sizing } from '#words/en/sizing.ts';
import { Sizer, type SizerLanguage, type SizerProps } from './form/Sizer.tsx';

const load: SizerLanguage['load'] = {
  ordering: () => import('./ordering/OrderingEn.tsx'),
  chart: () => import('./body/BodyChartEn.tsx'),
  ruler: () => import('./ruler/ScreenRulerEn.tsx'),
};

/** The island in English: one language’s words, so that a phone gets no other. */
export default function SizerEn(props: SizerProps) {
  return <Sizer {...props} lang="en" words={sizing} load={load} />;
}
