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
  const reported = new Set<string>();
  design.strands.forEach((strand, s) => {
    strand.sections.forEach((section, k) => {
      for (const { component: id } of section.motif) {
        const holeMm = design.components[id]?.holeMm ?? 0;
        if (takes(holeMm, needMm) || reported.has(id)) continue;
        reported.add(id);
        const at = `strands.${s}.sections.${k}`;
        report(problems, {
          code: 'hole-too-small',
          at,
          component: id,
          holeMm,
          needMm,
          wire: design.wire.id,
        });
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
    report(problems, {
      code: 'crimp-too-tight',
      at: 'ends.crimp',
      crimp: crimp.id,
      insideMm: crimp.holeMm,
      needMm,
      wire: wire.id,
    });
  }
  const cover = ends.cover === null ? undefined : components[ends.cover];
  const covered = cover === undefined ? null : coverFit(cover, crimp);
  if (covered?.fit === 'tight') {
    const { takesMm, closedMm } = covered;
    report(problems, {
      code: 'cover-too-tight',
      at: 'ends.cover',
      cover: covered.cover,
      takesMm,
      crimp: crimp.id,
      closedMm,
    });
  }
}

/** A closed ring can't be opened for a closed loop. */
function validateJoins(design: Design, problems: ValidationError[]): void {
  for (const { place, ring, hangs } of joinsOf(design).unjoined) {
    report(problems, { code: 'ring-closed', at: `hanging.rings.${place}`, ring, hangs });
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
    report(problems, {
      code: 'hole-too-small',
      at: 'ends.guard',
      component: guard.id,
      holeMm,
      needMm,
      wire: design.wire.id,
    });
  }
}
