import { body } from '#words/de/body.ts';
import { BodyChart, type BodyChartProps } from './components/BodyChart.tsx';

/** The body chart in German, loaded when somebody looks at it. */
export default function BodyChartDe(props: BodyChartProps) {
  return <BodyChart {...props} words={body} />;
}
