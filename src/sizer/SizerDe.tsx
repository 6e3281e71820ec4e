import { sizing } from '#words/de/sizing.ts';
import { Sizer, type SizerLanguage, type SizerProps } from './form/Sizer.tsx';

const load: SizerLanguage['load'] = {
  ordering: () => import('./ordering/OrderingDe.tsx'),
  chart: () => import('./body/BodyChartDe.tsx'),
  ruler: () => import('./ruler/ScreenRulerDe.tsx'),
};

/** The island in German. */
export default function SizerDe(props: SizerProps) {
  return <Sizer {...props} lang="de" words={sizing} load={load} />;
}
