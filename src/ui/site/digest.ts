/** Names for what something was made from. */
import { createHash } from 'node:crypto';

/** So many hexadecimal digits, other ones where any input is another or they stand in another order. */
export function digest(digits: number, inputs: Iterable<string | Buffer>): string {
  const hash = createHash('sha256');
  for (const input of inputs) hash.update(input).update('\0');
  return hash.digest('hex').slice(0, digits);
}
