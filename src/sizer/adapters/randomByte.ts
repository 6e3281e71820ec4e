/** A whole number from 0 to 255 from the browser's own source of randomness, which nobody can guess. */
export function randomByte(): number {
  return crypto.getRandomValues(new Uint8Array(1))[0] ?? 0;
}
