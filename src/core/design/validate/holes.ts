/** Holes that take the wire, crimps that take their wires, covers that close over them, rings that open for what hangs on them. */
import { coverFit, WIRES_IN_CRIMP } from '../ends/crimp.ts';
import { checkGuard } from '../ends/guard.ts';
import { holeForWiresMm, takes } from '../../geometry/packing.ts';
import type { Design } from '../design.ts';
import { joinsOf } from '../joins.ts';
import type { ValidationError } from '../validationError.ts';
import { report } from './shape.ts';

function validateStrung(design: Design, problems: ValidationError[]): void {
  const needMm = design.wire.diameterMm;
  const told = new Set<string>();
  design.strands.forEach((strand, s) => {
    strand.sections.forEach((section, k) => {
      for (const { component: id } of section.motif) {
        const holeMm = design.components[id]?.holeMm ?? 0;
        if (takes(holeMm, needMm) || told.has(id)) continue;
        told.add(id);
        const args = { component: id, holeMm, needMm, wire: design.wire.id };
        report(problems, 'hole-too-small', `strands.${s}.sections.${k}`, args);
      }
    });
  });
}

function validateCrimp(design: Design, problems: ValidationError[]): void {
  const { ends, wire, components } = design;
  const crimp = components[ends.crimp];
  if (crimp === undefined) return;
  const needMm = holeForWiresMm(WIRES_IN_CRIMP, wire.diameterMm) ?? 0;
  if (!takes(crimp.holeMm, needMm)) {
    const args = { component: crimp.id, holeMm: crimp.holeMm, needMm, wires: WIRES_IN_CRIMP };
    report(problems, 'crimp-too-small', 'ends.crimp', args);
  }
  const cover = ends.cover === null ? undefined : components[ends.cover];
  const covered = cover === undefined ? null : coverFit(cover, crimp);
  if (covered?.fit === 'tight') {
    const { takesMm, closedMm } = covered;
    report(problems, 'cover-wrong', 'ends.cover', {
      component: covered.cover,
      crimp: crimp.id,
      takesMm,
      closedMm,
    });
  }
}

/** A closed ring can't be opened for a closed loop. */
function validateJoins(design: Design, problems: ValidationError[]): void {
  for (const { place, ring, hangs } of joinsOf(design).unjoined) {
    report(problems, 'ring-closed', `hanging.rings.${place}`, { component: ring, hangs });
  }
}

export function validateHoles(design: Design, problems: ValidationError[]): void {
  validateStrung(design, problems);
  validateCrimp(design, problems);
  validateJoins(design, problems);
  const guard = design.ends.guard === null ? undefined : design.components[design.ends.guard];
  if (guard === undefined) return;
  const { holeMm, needMm, passes } = checkGuard(guard, design.wire.diameterMm);
  if (!passes) {
    report(problems, 'hole-too-small', 'ends.guard', {
      component: guard.id,
      holeMm,
      needMm,
      wire: design.wire.id,
    });
  }
}
