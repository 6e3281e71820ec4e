import { screen } from '#words/de/screen.ts';
import { ScreenRuler, type ScreenRulerProps } from './ScreenRuler.tsx';

/** Measuring the screen in German, loaded when somebody wants life size. */
export default function ScreenRulerDe(props: ScreenRulerProps) {
  return <ScreenRuler {...props} words={screen} />;
}
