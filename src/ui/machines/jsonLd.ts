/** JSON-LD for a script element: no text inside can close the element or open a comment. */
export function jsonLdText(data: object): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}
