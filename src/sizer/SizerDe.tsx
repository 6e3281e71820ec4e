import { sizing } from '#words/de/sizing.ts';
import { Sizer, type SizerProps } from './components/Sizer.tsx';

/** The island in German. */
export default function SizerDe(props: SizerProps) {
  return (
    <Sizer
      {...props}
      lang="de"
      words={sizing}
      loadRoad={() => import('./road/OrderRoadDe.tsx')}
      loadChart={() => import('./body/BodyChartDe.tsx')}
    />
  );
}
