/** What the board sends to be saved, checked before anything is done with it. */
import type { SaveRequest } from '#board/model/saving.ts';
import { settled } from '#board/model/settle.ts';
import { designShape } from '#core/design/validate/designShape.ts';
import type { Design } from '#core/design/design.ts';
import type { ValidationError } from '#core/design/validationError.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';

/** The largest design has 12 strands of 60 sections of 40 runs each, far over any real piece; a big real one is 20 KB. */
export const MOST_BOARD_BYTES = 512 * 1024;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= 4000;

function aboutOf(value: unknown): SaveRequest['about'] | undefined {
  if (value === null) return null;
  if (!isObject(value)) return undefined;
  const { name, price, summary, story } = value;
  if (!isText(name) || !isText(price) || !isText(summary) || !isText(story)) return undefined;
  return { name, price, summary, story };
}

export type BoardRequest = {
  readonly digest: string | null;
  readonly design: Design;
  readonly about: SaveRequest['about'];
};

/**
 * The request with its design whole again: wire and components out of the trays as they are now.
 * @returns null where it is none, which no board sends
 */
export function readBoardRequest(text: string, id: string, catalogue: Catalogue): BoardRequest | null {
  let sent: unknown;
  try {
    sent = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(sent) || !isObject(sent['design'])) return null;
  const { digest, design } = sent;
  const about = aboutOf(sent['about']);
  const wireId = String(sent['design']['wire']);
  const wire = Object.hasOwn(catalogue.wires, wireId) ? catalogue.wires[wireId] : undefined;
  if ((digest !== null && !isText(digest)) || about === undefined || wire === undefined) return null;
  // Its components are looked up; whatever was sent for them isn't read.
  const whole = { ...(design as object), id, wire, components: {} } as Design;
  const problems: ValidationError[] = [];
  designShape(whole, '', problems);
  // An end that nothing is chosen for is told as a problem of the file; anything else isn't a design.
  if (problems.some(({ at }) => !at.startsWith('ends.'))) return null;
  return { digest, design: settled(whole, catalogue), about };
}
