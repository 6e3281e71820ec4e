/** One wire in the hands: what is on it, how far each end is done, and how much wire is still free. */
import type { Component } from '#core/design/component.ts';
import { holeForWiresMm, takes } from '#core/geometry/packing.ts';
import { need, same } from './cannot.ts';

export type EndName = 'clasp' | 'ring';

/** What a loop goes round. */
export type Held = { readonly what: string; readonly component: Component | null };

/** A component on the wire, or a pendant's top ring or loop, which is all the wire knows of it. */
type Bead = { readonly component: Component; readonly name: string; wires: number; readonly counts: boolean };

type End = {
  crimp: Component | null;
  guard: Component | null;
  held: Held | null;
  loopMm: number | null;
  /** Set by looking, undone by moving the wire. */
  looked: boolean;
  closed: boolean;
  cover: Component | null;
  /** Bare wire between the crimp and the bead beside it. */
  gapMm: number;
  /** Of the wire led back: how much stands out of the crimp, and how many beads are over it. */
  tailMm: number;
  tailBeads: number;
  cut: boolean;
};

const untouched = (): End => ({
  crimp: null,
  guard: null,
  held: null,
  loopMm: null,
  looked: false,
  closed: false,
  cover: null,
  gapMm: 0,
  tailMm: 0,
  tailBeads: 0,
  cut: false,
});

export class Wire {
  readonly beads: Bead[] = [];
  readonly ends: Readonly<Record<EndName, End>> = { clasp: untouched(), ring: untouched() };
  /** Left free when it was drawn up; null before. */
  slackMm: number | null = null;
  private measured = false;
  private read = false;
  private freeMm: number;
  private readonly diameterMm: number;
  /** What she needs to hold an end by. */
  private readonly gripMm: number;

  constructor(diameterMm: number, cutMm: number, gripMm: number) {
    this.diameterMm = diameterMm;
    this.gripMm = gripMm;
    this.freeMm = cutMm;
  }

  /** Beads that count, without what hangs. */
  get count(): number {
    return this.beads.filter(({ counts }) => counts).length;
  }

  private fits(component: Component, wires: number): void {
    const needMm = holeForWiresMm(wires, this.diameterMm);
    // A clasp's eye and a pendant's loop aren't measured: any wire goes in.
    if (component.holeMm === 0 && (component.kind === 'clasp' || component.kind === 'pendant')) return;
    need(needMm !== null && takes(component.holeMm, needMm), `the hole of ${component.id} is full`);
  }

  private use(mm: number): void {
    this.freeMm -= mm;
    need(this.freeMm > -0.001, 'the wire is too short');
  }

  private opposite = (end: EndName): End => this.ends[end === 'clasp' ? 'ring' : 'clasp'];

  /** Crimp, guard and finding over the tip of one end. */
  threadEnd(end: EndName, crimp: Component, guard: Component | null, held: Held): void {
    const at = this.ends[end];
    need(at.crimp === null, 'this end is threaded already');
    if (end === 'clasp') need(this.beads.length === 0, 'beads stand before this end');
    else need(this.opposite(end).closed, 'all would slide off the open end');
    need(crimp.kind === 'crimp', `${crimp.id} is no crimp`);
    this.fits(crimp, 1);
    if (guard !== null) this.fits(guard, 1);
    if (held.component !== null) this.fits(held.component, 1);
    Object.assign(at, { crimp, guard, held });
  }

  /** Back through the crimp, and through so many of the beads next to it. */
  leadBack(end: EndName, beads: number, loopMm: number, outMm: number | null): void {
    const at = this.ends[end];
    need(at.crimp !== null, 'there is no crimp to lead the wire back through');
    need(at.loopMm === null, 'the wire is led back already');
    this.fits(at.crimp, 2);
    const passed = this.lastBeads(beads);
    for (const bead of passed) {
      this.fits(bead.component, bead.wires + 1);
      bead.wires += 1;
    }
    this.use(2 * (at.crimp.alongMm + loopMm));
    at.loopMm = loopMm;
    at.tailBeads = beads;
    if (end === 'clasp') {
      need(outMm !== null, 'nobody says how much wire to let stand out');
      this.use(outMm);
      at.tailMm = outMm;
    }
  }

  /** So many beads from the open end, with what hangs among them. */
  private lastBeads(count: number): Bead[] {
    need(count <= this.count, 'there are not so many beads');
    let from = this.beads.length;
    for (let left = count; left > 0;) {
      from -= 1;
      if (this.beads[from]?.counts === true) left -= 1;
    }
    return this.beads.slice(from);
  }

  /** The wire pulled through from the open end until it lies as it will. */
  drawUp(slackMm: number, roomMm: number): void {
    const at = this.ends.ring;
    need(at.loopMm !== null, 'the wire isn’t led back, so there is nothing to draw on');
    need(this.slackMm === null, 'it is drawn up already');
    at.gapMm = roomMm;
    this.use(this.bareMm() + slackMm + roomMm);
    const runsMm = this.lastBeads(at.tailBeads).reduce((sum, bead) => sum + lengthOf(bead), roomMm);
    this.use(runsMm);
    at.tailMm = runsMm + this.freeMm;
    at.looked = false;
    this.slackMm = slackMm;
  }

  /** Wire through all that is strung, and the gap at the first end. */
  private bareMm(): number {
    return this.beads.reduce((sum, bead) => sum + lengthOf(bead), this.ends.clasp.gapMm);
  }

  look(end: EndName): void {
    const at = this.ends[end];
    need(at.loopMm !== null, 'there is no second wire in the crimp to look at');
    need(!at.closed, 'the crimp is closed: looking is too late');
    if (end === 'ring') need(this.slackMm !== null, 'the wire will move once more');
    at.looked = true;
  }

  /** Bearing point to bearing point, with both findings on. */
  lengthMm(): number {
    return (['clasp', 'ring'] as const).reduce((sum, end) => {
      const { crimp, held, loopMm, gapMm } = this.ends[end];
      need(
        crimp !== null && held !== null && loopMm !== null,
        `nothing is on at the ${end} end to measure by`,
      );
      const bearsMm = held.what === 'other-half' ? 0 : (held.component?.alongMm ?? 0);
      return sum + bearsMm + loopMm + crimp.alongMm + (end === 'ring' ? gapMm : 0);
    }, this.bareMm());
  }

  measure(lengthMm: number): void {
    const foundMm = this.lengthMm();
    need(this.slackMm !== null, 'it isn’t drawn up, so any length could be measured');
    need(!this.ends.ring.closed, 'measured after the last crimp: too late to mend');
    need(same(foundMm, lengthMm), `it measures ${foundMm}, not ${lengthMm}`);
    this.measured = true;
  }

  readPattern(count: number): void {
    need(this.slackMm !== null, 'it isn’t drawn up, so beads may still slip off');
    need(!this.ends.ring.closed, 'read after the last crimp: too late to mend');
    need(this.count === count, `${this.count} beads are on, not ${count}`);
    this.read = true;
  }

  crimp(end: EndName, id: string): void {
    const at = this.ends[end];
    need(at.crimp?.id === id, `no crimp ${id} is on this end`);
    need(!at.closed, 'this crimp is closed already');
    need(at.loopMm !== null, 'the wire isn’t led back: the crimp would hold nothing');
    need(at.looked, 'nobody has looked whether the wires cross');
    if (end === 'ring') {
      need(this.slackMm !== null, 'the wire hangs loose');
      need(this.measured && this.read, 'neither may be mended after this: measure and read first');
    }
    at.closed = true;
  }

  closeCover(end: EndName, cover: Component): void {
    const at = this.ends[end];
    need(at.closed && at.crimp !== null, 'there is no closed crimp to cover');
    need(at.cover === null, 'it has its cover');
    need(
      at.cut || at.tailBeads > 0 || (end === 'clasp' && this.beads.length === 0),
      'the stub is in the way',
    );
    const roomMm = Math.max(0, (cover.alongMm - at.crimp.alongMm) / 2);
    // At the first end nothing is strung yet, so the beads will stand off as far as the cover keeps them.
    if (end === 'clasp' && this.beads.length === 0) at.gapMm = roomMm;
    need(same(at.gapMm, roomMm), 'there is no room for the cover beside the last bead');
    at.cover = cover;
  }

  /** One bead from the open end, up to what is there. */
  string(component: Component, overTail: boolean): void {
    this.fits(component, 1);
    this.put(component, component.id, overTail, true);
  }

  /** What hangs, by its top ring or its own loop. */
  hang(top: Component, name: string, overTail: boolean): void {
    this.put(top, name, overTail, false);
  }

  private put(component: Component, name: string, overTail: boolean, counts: boolean): void {
    const at = this.ends.clasp;
    need(at.closed, 'it would slide off: the first end isn’t crimped');
    need(this.ends.ring.crimp === null, 'this end is closed to beads: its crimp is on');
    const wires = overTail ? 2 : 1;
    need(overTail || at.cut, 'the tail stands in the way beside the wire');
    need(!overTail || !at.cut, 'there is no tail any more to go over');
    this.fits(component, wires);
    this.beads.push({ component, name, wires, counts });
    if (overTail && counts) at.tailBeads += 1;
  }

  /** @param bead number of the last bead that the tail leaves, counted from the clasp; null for none */
  cutTail(end: EndName, beads: number, bead: number | null): void {
    const at = this.ends[end];
    need(at.closed, 'the crimp doesn’t hold yet: the tail would slip');
    need(!at.cut, 'it is cut already');
    need(at.cover === null || beads > 0, 'the cover is over the stub');
    need(at.tailBeads === beads, `the tail runs through ${at.tailBeads} beads, not ${beads}`);
    const last = end === 'clasp' ? beads : this.count - beads + 1;
    need(bead === (beads === 0 ? null : last), `the tail doesn’t leave bead ${bead ?? 'none'}`);
    const over = end === 'clasp' ? this.beads.filter(({ wires }) => wires > 1) : this.lastBeads(beads);
    const overMm = over.reduce((sum, bead) => sum + lengthOf(bead), beads > 0 ? at.gapMm : 0);
    need(at.tailMm > overMm + this.gripMm - 0.001, 'too little of the tail stands out to hold it by');
    at.cut = true;
  }
}

/** What hangs takes none of the wire. */
const lengthOf = ({ component, counts }: Bead): number => (counts ? component.alongMm : 0);
