/** Zeichnungen in wahrer Größe: Der Bildschirm wird mit einer Bankkarte gemessen. */
import type { screen as english } from '../en/screen.ts';

export const screen: typeof english = {
  title: 'Wie groß ist Ihr Bildschirm?',
  how: 'Halten Sie eine Bankkarte (oder eine andere Karte dieser Größe: 85,6 mm breit) flach an den Bildschirm, ihre linke Kante auf die linke Kante des Umrisses. Schieben Sie den Regler, bis der Umriss genau so breit ist wie die Karte. Dieses Gerät merkt es sich.',
  slider: 'Breite des Umrisses',
  sliderText: (pxPerMm) => `${pxPerMm.toFixed(2).replace('.', ',')} Pixel je Millimeter`,
  done: 'Sie sind gleich breit',
};
