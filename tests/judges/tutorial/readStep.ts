/**
 * A learner who knows no more than the printed sentences: from each she takes
 * what it says to do, and with which part. She has the list before her, whose
 * names she knows, and nothing of how the sentences were made.
 */
import type { Design } from '#core/design/design.ts';
import { WAYS_READ, type Reading } from './reading.ts';

/** A printed length in millimetres: `11¹³⁄₁₆ in (300 mm)`, `3 mm`. */
export function mmOf(said: string): number {
  const [, mm = ''] = /([\d.,]+) mm/.exec(said) ?? [];
  if (mm === '') throw new RangeError(`“${said}” names no millimetres`);
  return Number(mm.replaceAll(',', ''));
}

export type Known = {
  readonly design: Design;
  /** Ids by the names that are printed. */
  readonly idOf: (name: string) => string;
  /** Rings that the pendant hangs on, as the list has them, from the wire down. */
  readonly rings: readonly string[];
  /** Number of the last bead of the list. */
  readonly last: number;
};

/** What a loop is led round: `the ring`, `one half of the clasp`, `the chain’s last link`; nothing. */
function heldOf(said: string | undefined, { idOf }: Known) {
  if (said === undefined || said === '') return { held: 'nothing', finding: null };
  if (said === 'the chain’s last link') return { held: 'chain', finding: null };
  const [, which = '', name = ''] = /^(?:(one|the other) half of )?the (.+)$/.exec(said) ?? [];
  const held = { one: 'first-half', 'the other': 'other-half' }[which] ?? 'whole';
  return { held, finding: idOf(name) };
}

const numberOf = (said: string | undefined): number | null => (said === undefined ? null : Number(said));

/** One sentence read; throws where it says nothing that she knows. `end` is the one that she is at. */
export function readStep(sentence: string, end: 'clasp' | 'ring', known: Known): Reading {
  const { idOf, rings, design, last } = known;
  for (const [code, pattern] of WAYS_READ) {
    const found = pattern.exec(sentence);
    if (found === null) continue;
    const said = found.groups ?? {};
    const reading = (args: Record<string, unknown>): Reading => ({ code, args });
    switch (code) {
      case 'try-clasp':
        return reading({ clasp: idOf(said['clasp']!), inHalves: sentence.includes('Then part it') });
      case 'join-chain':
        return reading({
          ...heldOf(said['held'], known),
          chainMm: mmOf(said['length']!),
          links: numberOf(said['links']),
        });
      case 'join-ring': {
        const ring = idOf(said['open'] ?? said['split']!);
        const chain = [...rings, design.hanging?.pendant ?? ''];
        const at = chain.indexOf(ring);
        const things = (said['things'] ?? said['turned'])!
          .split(/, | and /)
          .reduce<string[]>((all, part) => {
            // Names hold commas: what doesn't begin with “the” goes on with the one before.
            if (part.startsWith('the ')) return [...all, part.slice(4)];
            return [...all.slice(0, -1), `${all.at(-1)}, ${part}`];
          }, [])
          .map(idOf);
        return reading({
          ring,
          place: at + 1,
          joint: said['open'] === undefined ? 'split' : 'open',
          above: at > 0 && things.includes(chain[at - 1]!) ? chain[at - 1] : null,
          below: things.includes(chain[at + 1]!) ? chain[at + 1] : null,
        });
      }
      case 'check-facing':
        return reading({
          pendant: idOf(said['pendant']!),
          addRings: said['how'] === 'faces front' ? 0 : 1,
        });
      case 'lay-out':
        return reading({ claspSide: /the clasp on the (left|right)/.exec(sentence)?.[1] ?? null });
      case 'cut-wire':
        return reading({ wire: idOf(said['wire']!), lengthMm: mmOf(said['length']!) });
      case 'thread-end': {
        const things = said['things']!.split(', then ').map((thing) => thing.replace(/ \(its .* eye\)$/, ''));
        const eye = /\(its (\w+) eye\)/.exec(said['things']!)?.[1];
        const crimp = idOf(things[0]!.slice(4));
        const guard = design.ends.guard;
        const hasGuard =
          guard !== null && things[1]?.startsWith('the ') && idOf(things[1].slice(4)) === guard;
        const held = heldOf(things[hasGuard ? 2 : 1], known);
        const way = eye === undefined ? null : ['first', 'second', 'third', 'fourth'].indexOf(eye) + 1;
        return reading({ end, ...held, crimp, guard: hasGuard ? guard : null, way });
      }
      case 'lead-back':
        return reading({
          end,
          ...heldOf(said['round'], known),
          loopMm: mmOf(said['loop']!),
          beads: said['beads'] === undefined ? (said['one'] === undefined ? 0 : 1) : Number(said['beads']),
          outMm: said['out'] === undefined ? null : mmOf(said['out']),
        });
      case 'check-loop':
        return reading({ end, ...heldOf(said['free'], known) });
      case 'crimp':
        return reading({ end, crimp: design.ends.crimp });
      case 'close-cover':
        return reading({ end, cover: idOf(said['cover']!) });
      case 'cut-tail': {
        const bead = said['bead'] === undefined ? null : Number(said['bead']);
        const beads = bead === null ? 0 : end === 'clasp' ? bead : last - bead + 1;
        return reading({ end, beads, bead });
      }
      case 'string-beads':
        return reading({
          first: Number(said['alone'] ?? said['first']),
          last: Number(said['alone'] ?? said['last']),
          overTail: said['over'] !== undefined,
        });
      case 'hang-pendant':
        return reading({
          pendant: idOf(said['pendant']!),
          rings: { 'its own loop': 0, 'its ring': 1 }[said['by']!] ?? rings.length,
        });
      case 'draw-up':
        return reading({
          slackMm: said['slack'] === undefined ? 0 : mmOf(said['slack']),
          roomMm: sentence.includes('The open cover') ? 1 : 0,
        });
      case 'measure':
        return reading({
          lengthMm: mmOf(said['length']!),
          chained: sentence.includes('the chain not counted'),
        });
      case 'check-pattern':
        return reading({ count: Number(said['count']) });
      case 'check-closed': {
        const lengthMm = mmOf(said['length']!);
        const chainMm = said['end'] === undefined ? 0 : mmOf(said['end']) - lengthMm;
        return reading({
          lengthMm,
          chainMm,
          chainUsedMm: said['at'] === undefined ? mmOf(said['used'] ?? '0 mm') : mmOf(said['at']) - lengthMm,
          links: numberOf(said['links']),
          // Where links are told at all and none is named it closes before them.
          link: said['links'] === undefined ? null : Number(said['link'] ?? 0),
        });
      }
      default:
        return reading({});
    }
  }
  throw new RangeError(`no learner knows what to do at “${sentence}”`);
}
