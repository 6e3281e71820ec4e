import { sizing } from '#words/de/sizing.ts';
import { Sizer, type SizerLanguage, type SizerProps } from './components/Sizer.tsx';

const load: SizerLanguage['load'] = {
  road: () => import('./road/OrderRoadDe.tsx'),
  chart: () => import('./body/BodyChartDe.tsx'),
  ruler: () => import('./screen/ScreenRulerDe.tsx'),
};

/** The island in German. */
export default function SizerDe(props: SizerProps) {
  return <Sizer {...props} lang="de" words={sizing} load={load} />;
}
