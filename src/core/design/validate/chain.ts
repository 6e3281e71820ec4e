/** A chain whose links are known is a whole number of them. */
import { linkAt, wholeLinks } from '../chain.ts';
import type { Design } from '../design.ts';
import type { ValidationError } from '../validationError.ts';
import { report } from './shape.ts';

/** Noise of inches turned to millimetres, mm. */
const NOISE_MM = 0.001;

export function validateChain({ ends }: Design, problems: ValidationError[]): void {
  const { extenderMm: chainMm, linkMm } = ends;
  if (linkMm === undefined) return;
  if (chainMm === 0) {
    report(problems, { code: 'link-without-chain', at: 'ends.linkMm', linkMm });
  } else if (wholeLinks(chainMm, linkMm) === 0) {
    report(problems, { code: 'chain-too-short', at: 'ends.extenderMm', chainMm, linkMm });
  } else if (Math.abs(linkAt(ends, chainMm)! * linkMm - chainMm) > NOISE_MM) {
    const links = wholeLinks(chainMm, linkMm);
    report(problems, { code: 'chain-not-whole', at: 'ends.extenderMm', chainMm, linkMm, links });
  }
}
