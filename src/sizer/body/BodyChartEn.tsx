import { body } from '#words/en/body.ts';
import { BodyChart, type BodyChartProps } from './components/BodyChart.tsx';

/** The body chart in English, loaded when somebody looks at it. */
export default function BodyChartEn(props: BodyChartProps) {
  return <BodyChart {...props} words={body} />;
}
