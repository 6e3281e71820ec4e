import { screen } from '#words/en/screen.ts';
import { ScreenRuler, type ScreenRulerProps } from './ScreenRuler.tsx';

/** Measuring the screen in English, loaded when somebody wants life size. */
export default function ScreenRulerEn(props: ScreenRulerProps) {
  return <ScreenRuler {...props} words={screen} />;
}
