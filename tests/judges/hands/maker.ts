/**
 * A maker who does what the card says, step by step and no more, and stops at
 * the first step that hands can't do. She has the design's components before
 * her and the card's list; of how the steps were made she knows nothing.
 */
import type { Component } from '#core/design/component.ts';
import type { Design } from '#core/design/design.ts';
import type { Row } from '#core/instructions/rows.ts';
import type { Step, StepArgs, StepCode } from '#core/instructions/step.ts';
import { need, same } from './cannot.ts';
import { Hung } from './hung.ts';
import { Wire, type Held } from './wire.ts';

/** What the list calls for next. */
type Listed = { readonly kind: 'strung' | 'pendant'; readonly component: string };

const listed = (rows: readonly Row[]): Listed[] =>
  rows.flatMap(({ kind, component, count }) =>
    (kind === 'strung' || kind === 'pendant') && component !== null
      ? Array.from({ length: count }, () => ({ kind, component }))
      : [],
  );

export class Maker {
  readonly wires: Wire[] = [];
  laid: { readonly claspSide: 'left' | 'right' | null } | null = null;
  private readonly design: Design;
  private readonly gripMm: number;
  private readonly chainUsedMm: number;
  private readonly lists: readonly Listed[][];
  private readonly hung: Hung | null;
  private goggles = false;
  private tried = false;
  private parted = false;
  private chained = false;
  private closed = false;
  private readonly eyes = new Set<string>();

  /** @param gripMm wire that she needs to hold an end by, of the shop's rules; @param chainUsedMm how far down its chain the size closes */
  constructor(design: Design, rows: readonly (readonly Row[])[], gripMm: number, chainUsedMm: number) {
    this.design = design;
    this.gripMm = gripMm;
    this.chainUsedMm = chainUsedMm;
    this.lists = rows.map(listed);
    const { hanging } = design;
    this.hung =
      hanging === null
        ? null
        : new Hung(
            hanging.rings.map((id) => this.find(id)),
            this.find(hanging.pendant),
          );
  }

  private find(id: string): Component {
    const found = this.design.components[id];
    need(found !== undefined, `there is no ${id} on the tray`);
    return found;
  }

  private wire(strand: number | null): Wire {
    const found = this.wires[strand ?? -1];
    need(found !== undefined, 'no wire is cut for this');
    return found;
  }

  private readonly doing: {
    readonly [Code in StepCode]: (args: StepArgs[Code], strand: number | null) => void;
  } = {
    'wear-eye-protection': () => {
      this.goggles = true;
    },
    'try-clasp': ({ clasp, inHalves }) => {
      need(clasp === this.design.ends.clasp, 'this isn’t the clasp');
      need(this.wires.length === 0, 'it hangs on a wire already: too late to change it');
      this.tried = true;
      this.parted = inHalves;
    },
    'join-chain': ({ held, finding, chainMm, links }) => {
      need(this.wires.length === 0, 'the finding hangs on a wire already');
      need(same(chainMm, this.design.ends.extenderMm), 'the chain is of another length');
      need(links === this.linksIn(chainMm), 'the chain has other links');
      const far = this.design.ends.ring ?? (held === 'other-half' ? this.design.ends.clasp : null);
      need(finding !== null && finding === far, 'the chain belongs at the far end');
      this.chained = true;
    },
    'join-ring': ({ ring, place, above, below }) => {
      need(this.hung !== null, 'nothing is to hang');
      this.hung.join(ring, place, above, below);
    },
    'check-facing': ({ pendant, addRings }) => {
      need(this.hung !== null, 'nothing is to hang');
      this.hung.checkFacing(pendant, addRings);
    },
    'lay-out': ({ claspSide }) => {
      need(this.wires.length === 0, 'it is being strung already');
      this.laid = { claspSide };
    },
    'cut-wire': ({ wire, lengthMm }, strand) => {
      need(this.goggles, 'the cut end flies into an eye');
      need(wire === this.design.wire.id, 'this is another wire');
      need(strand === this.wires.length, 'the strands come in turn');
      this.wires.push(new Wire(this.design.wire.diameterMm, lengthMm, this.gripMm));
    },
    'thread-end': ({ end, crimp, guard, held, finding, way }, strand) => {
      const wire = this.wire(strand);
      if (end === 'ring') need(this.lists[strand ?? -1]?.length === 0, 'the list isn’t strung to its end');
      const holds = this.pickUp(held, finding);
      if (holds.component !== null && way !== null) {
        need(way <= holds.component.ways, `${holds.component.id} has no eye ${way}`);
        need(way === (strand ?? 0) + 1, 'the strands would cross');
        const eye = `${end} ${way}`;
        need(!this.eyes.has(eye), 'a strand is in this eye');
        this.eyes.add(eye);
      }
      wire.threadEnd(end, this.find(crimp), guard === null ? null : this.find(guard), holds);
    },
    'lead-back': ({ end, beads, loopMm, outMm, held, finding }, strand) => {
      this.holds(end, strand, held, finding);
      this.wire(strand).leadBack(end, beads, loopMm, outMm);
    },
    'check-loop': ({ end, held, finding }, strand) => {
      this.holds(end, strand, held, finding);
      this.wire(strand).look(end);
    },
    crimp: ({ end, crimp }, strand) => this.wire(strand).crimp(end, crimp),
    'close-cover': ({ end, cover }, strand) => this.wire(strand).closeCover(end, this.find(cover)),
    'cut-tail': ({ end, beads, bead }, strand) => {
      need(this.goggles, 'the cut end flies into an eye');
      this.wire(strand).cutTail(end, beads, bead);
    },
    'string-beads': ({ first, last, overTail }, strand) => {
      const wire = this.wire(strand);
      need(this.laid !== null, 'nothing is laid out to string from');
      need(first === wire.count + 1, `bead ${wire.count + 1} is next, not ${first}`);
      need(last >= first, 'nothing is to be strung');
      for (let at = first; at <= last; at += 1) wire.string(this.find(this.next(strand, 'strung')), overTail);
    },
    'hang-pendant': ({ pendant, rings, overTail }, strand) => {
      const wire = this.wire(strand);
      need(this.hung !== null, 'nothing is to hang');
      need(this.next(strand, 'pendant') === pendant, 'the list has another pendant here');
      const { top, name } = this.hung.take(pendant, rings);
      wire.hang(top, name, overTail);
    },
    'draw-up': ({ slackMm, roomMm }, strand) => this.wire(strand).drawUp(slackMm, roomMm),
    measure: ({ lengthMm, chained }, strand) => {
      need(chained === this.design.ends.extenderMm > 0, 'there is a chain, or there is none');
      this.wire(strand).measure(lengthMm);
    },
    'check-pattern': ({ count }, strand) => this.wire(strand).readPattern(count),
    'check-closed': ({ lengthMm, chainMm, chainUsedMm, links, link }) => {
      for (const wire of this.wires) {
        for (const { closed, cut } of Object.values(wire.ends)) {
          need(closed, 'an end is open');
          need(cut, 'a tail sticks out');
        }
      }
      const longestMm = Math.max(0, ...this.wires.map((wire) => wire.lengthMm()));
      need(same(longestMm, lengthMm), `it measures ${longestMm}, not ${lengthMm}`);
      need(same(chainMm, this.design.ends.extenderMm), 'the chain is of another length');
      need(same(chainUsedMm, this.chainUsedMm), 'the size asks for another link');
      need(links === this.linksIn(chainMm), 'the chain has other links');
      need(link === this.linksIn(this.chainUsedMm), 'it closes in another link');
      this.closed = true;
    },
  };

  /** Links that she counts along so much chain, one after the other; null where she doesn't know how long one is. */
  private linksIn(chainMm: number): number | null {
    const { linkMm } = this.design.ends;
    if (linkMm === undefined) return null;
    let links = 0;
    let alongMm = 0;
    while (!same(alongMm, chainMm) && alongMm < chainMm) {
      alongMm += linkMm;
      links += 1;
    }
    need(same(alongMm, chainMm), 'the chain would be cut through a link');
    return links;
  }

  /** The clasp, its half, the ring, the chain, or nothing, as it lies ready. */
  private pickUp(held: Held['what'], finding: string | null): Held {
    need(this.tried, 'nobody has tried the clasp, and soon it can’t be changed');
    const isHalf = held === 'first-half' || held === 'other-half';
    need(!isHalf || this.parted, 'the clasp isn’t parted');
    need(held !== 'whole' || finding !== this.design.ends.clasp || !this.parted, 'the clasp is in halves');
    if (held === 'chain') {
      need(this.design.ends.extenderMm > 0, 'there is no chain');
      this.chained = true;
    }
    return { what: held, component: finding === null ? null : this.find(finding) };
  }

  private holds(end: 'clasp' | 'ring', strand: number | null, held: string, finding: string | null): void {
    const there = this.wire(strand).ends[end].held;
    need(
      there?.what === held && (there.component?.id ?? null) === finding,
      `${finding ?? held} isn’t on this end`,
    );
  }

  /** The next thing of the list, which must be of this kind. */
  private next(strand: number | null, kind: Listed['kind']): string {
    const next = this.lists[strand ?? -1]?.shift();
    need(next !== undefined, 'the list ends here');
    need(next.kind === kind, `the list has a ${next.kind} here, not a ${kind}`);
    return next.component;
  }

  /** Carries out one step. Throws `Cannot`. */
  do({ code, strand, args }: Step): void {
    need(!this.closed, 'the piece is finished');
    (this.doing[code] as (args: Step['args'], strand: number | null) => void)(args, strand);
  }

  /** What is left to say when the last step is done. */
  finish(): void {
    need(this.closed, 'nobody has closed it and looked at it');
    need(this.chained === this.design.ends.extenderMm > 0, 'the chain isn’t on');
  }
}
