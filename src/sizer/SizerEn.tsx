import { sizing } from '#words/en/sizing.ts';
import { Sizer, type SizerProps } from './components/Sizer.tsx';

/** The island in English: one language’s words, so that a phone gets no other. */
export default function SizerEn(props: SizerProps) {
  return (
    <Sizer
      {...props}
      lang="en"
      words={sizing}
      loadRoad={() => import('./road/OrderRoadEn.tsx')}
      loadChart={() => import('./body/BodyChartEn.tsx')}
    />
  );
}
