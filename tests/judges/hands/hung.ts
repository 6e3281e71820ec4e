/** A pendant and its rings on the bench: what is joined to what, and which rings open at all. */
import type { Component } from '#core/design/component.ts';
import { need } from './cannot.ts';

export class Hung {
  /** From the wire down, the pendant last. */
  private readonly chain: readonly Component[];
  /** Whether each hangs in the one above it; the first hangs on the wire. */
  private readonly joined: boolean[];
  private seenFacing = false;
  private onWire = false;

  constructor(rings: readonly Component[], pendant: Component) {
    this.chain = [...rings, pendant];
    this.joined = this.chain.map((_, at) => at === 0);
  }

  /** @param place 1 for the ring on the wire */
  join(ring: string, place: number, above: string | null, below: string | null): void {
    const at = place - 1;
    const opened = this.chain[at];
    need(opened?.id === ring && opened.kind === 'ring', `there is no ring ${ring} at place ${place}`);
    need(opened.joint !== 'closed', `${ring} is a closed ring: it can’t be opened`);
    need(!this.onWire, 'it hangs on the wire already');
    need(above !== null || below !== null, 'nothing is put on the ring');
    if (below !== null) this.link(at + 1, below, at + 1);
    if (above !== null) this.link(at, above, at - 1);
    this.seenFacing = false;
  }

  private link(lower: number, named: string, place: number): void {
    need(this.chain[place]?.id === named, `${named} isn’t its neighbour`);
    need(this.joined[lower] === false, 'these are joined already');
    this.joined[lower] = true;
  }

  /** A ring on the wire stands square to it, and everything linked on turns a quarter. */
  checkFacing(pendant: string, addRings: number): void {
    const last = this.chain.at(-1);
    need(last?.id === pendant, `${pendant} isn’t what hangs`);
    need(this.joined.every(Boolean), 'it isn’t joined yet, so it can’t be held up');
    const quarters = this.chain.length - 1 + (last.loop === 'through' ? 0 : 1);
    const isFront = last.loop === null || quarters % 2 === 0;
    need(addRings === (isFront ? 0 : 1), 'it doesn’t face as the card says');
    this.seenFacing = true;
  }

  /** @returns what the wire goes through, and a name for all of it. */
  take(pendant: string, rings: number): { readonly top: Component; readonly name: string } {
    const [top] = this.chain;
    need(top !== undefined && this.chain.at(-1)?.id === pendant, `${pendant} isn’t what hangs`);
    need(this.chain.length - 1 === rings, `it has ${this.chain.length - 1} rings, not ${rings}`);
    need(this.joined.every(Boolean), 'pendant and rings aren’t joined');
    need(this.seenFacing, 'nobody has seen which way it faces');
    need(!this.onWire, 'it hangs already');
    this.onWire = true;
    return { top, name: this.name() };
  }

  name(): string {
    return this.chain.map(({ id }) => id).join(' > ');
  }
}
