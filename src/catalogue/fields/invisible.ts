/** Signs that nobody sees and that make a text read otherwise than it stands. */

/**
 * Control characters but tab and line ends, and the marks that turn the
 * direction of writing (Unicode 16, Bidi_Control but ALM, LRM and RLM, which
 * only touch their neighbours).
 */
const INVISIBLE =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\u202a-\u202e\u2066-\u2069]/;

/** The first such sign as `U+0007`, and where it stands; null where there is none. */
export function invisibleSign(text: string): { readonly sign: string; readonly offset: number } | null {
  const found = INVISIBLE.exec(text);
  if (found === null) return null;
  const code = found[0].codePointAt(0) ?? 0;
  return { sign: `U+${code.toString(16).toUpperCase().padStart(4, '0')}`, offset: found.index };
}
