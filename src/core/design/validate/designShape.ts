/** The shape of a design, field by field, with the range of every figure. */
import * as caps from '../caps.ts';
import { COMPONENT_CAUTIONS, COMPONENT_KINDS, FAMILIES, JOINTS, LOOPS, SHAPES } from '../component.ts';
import { LIES, PIECE_KINDS, ROLES } from '../design.ts';
import { fields, flag, id, list, number, oneOf, optional, orNull, table, text, whole } from './shape.ts';
import type { Checker } from './shape.ts';

const measure = number(0, caps.MOST_MEASURE_MM, 'mm');
const money = whole(0, caps.MOST_MINOR, 'minor');

const component = fields({
  id,
  kind: oneOf(COMPONENT_KINDS),
  name: text,
  shape: oneOf(SHAPES),
  alongMm: measure,
  acrossMm: measure,
  roundingMm: measure,
  holeMm: measure,
  material: text,
  massG: orNull(number(0, caps.MOST_MASS_G, 'g')),
  look: fields({
    family: oneOf(FAMILIES),
    colour: text,
    accent: orNull(text),
  }),
  costMinor: money,
  stock: orNull(whole(0, caps.MOST_MINOR)),
  closedMm: orNull(measure),
  handed: flag,
  ways: whole(1, caps.MOST_STRANDS),
  loop: orNull(oneOf(LOOPS)),
  joint: optional(oneOf(JOINTS)),
  hangMm: measure,
  cautions: list(oneOf(COMPONENT_CAUTIONS), COMPONENT_CAUTIONS.length),
});

/** The thinnest coated wire sold is about 0.25 mm; half of that is still a slip of the pen. */
const LEAST_WIRE_MM = 0.1;

const wire = fields({
  id,
  name: text,
  diameterMm: number(LEAST_WIRE_MM, caps.MOST_WIRE_MM, 'mm'),
  strands: whole(1, 1000),
  breakN: orNull(number(0.1, 100_000, 'N')),
  massGPerM: number(0, 1000, 'g/m'),
  costMinorPerM: money,
});

const repeats = whole(0, caps.MOST_REPEATS);

const section = fields({
  id,
  name: text,
  motif: list(fields({ component: id, count: whole(1, caps.MOST_IN_ROW) }), caps.MOST_MOTIF_PARTS),
  usual: repeats,
  fewest: repeats,
  most: repeats,
  role: oneOf(ROLES),
  cost: orNull(whole(0, 1_000_000)),
});

/** Checks that a value is a design at all; what it names is checked elsewhere. */
export const designShape: Checker = fields({
  id: text,
  kind: oneOf(PIECE_KINDS),
  strands: list(
    fields({ id: text, sections: list(section, caps.MOST_SECTIONS), mirrored: flag }),
    caps.MOST_STRANDS,
  ),
  lie: oneOf(LIES),
  nestGapMm: measure,
  ends: fields({
    clasp: id,
    ring: orNull(id),
    crimp: id,
    cover: orNull(id),
    loopMm: measure,
    guard: orNull(id),
    extenderMm: measure,
    linkMm: optional(number(caps.LEAST_LINK_MM, caps.MOST_MEASURE_MM, 'mm')),
  }),
  hanging: orNull(fields({ pendant: id, rings: list(id, caps.MOST_RINGS) })),
  oneSided: flag,
  upright: optional(flag),
  wire,
  components: table(component, caps.MOST_KINDS),
});
