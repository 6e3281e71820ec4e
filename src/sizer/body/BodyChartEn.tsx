import { body } from '#words/en/body.ts';
import { BodyChart } from './BodyChart.tsx';
import type { BodyChartProps } from './model/props.ts';

/** The body chart in English, loaded when somebody looks at it. */
export default function BodyChartEn(props: BodyChartProps) {
  return <BodyChart {...props} words={body} />;
}
