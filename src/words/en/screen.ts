/** Showing drawings at their true size: the screen is measured with a bank card. */
export const screen = {
  title: 'How large is your screen?',
  how: 'Hold a bank card (or any card of that size: 85.6 mm wide) flat against the screen, its left edge on the left edge of the outline. Move the slider until the outline is just as wide as the card. This device remembers it.',
  slider: 'Width of the outline',
  sliderText: (pxPerMm: number): string => `${pxPerMm.toFixed(2)} pixels a millimetre`,
  done: 'They are the same width',
};
