import { body } from '#words/de/body.ts';
import { BodyChart } from './BodyChart.tsx';
import type { BodyChartProps } from './model/props.ts';

/** The body chart in German, loaded when somebody looks at it. */
export default function BodyChartDe(props: BodyChartProps) {
  return <BodyChart {...props} words={body} />;
}
