/** Breaking words into lines, where no browser does it. */

/** Mean width of a letter in a book face, as a share of its height: good enough to break by, not to set by. */
export const LETTER_SHARE = 0.5;

/** Lines of at most `widthMm` at that height of letter; a word longer than a line has one to itself. */
export function breakLines(text: string, widthMm: number, letterMm: number): string[] {
  const most = Math.floor(widthMm / (letterMm * LETTER_SHARE));
  const lines: string[] = [];
  for (const word of text.trim().split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
