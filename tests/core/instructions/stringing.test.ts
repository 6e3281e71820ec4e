import { describe, expect, it } from 'vitest';
import { describe as describePiece, usual } from '#core/sizing/usual.ts';
import { stringing } from '#core/instructions/stringing.ts';
import { loadOf, pendantMiddleMm } from '#core/body/load.ts';
import { solveLoop } from '#core/geometry/loop.ts';
import { expand } from '#core/design/expand.ts';
import { loopParts } from '#core/design/loopParts.ts';
import {
  ALL,
  card,
  design,
  focalBracelet,
  pendantNecklace,
  RULES,
  twoStrands,
  unequalNecklace,
  withComponent,
} from '#tests/support/workshop.ts';

describe('the rows', () => {
  it('run from clasp to ring, like components together, and end at the finished length', () => {
    const rows = card(focalBracelet).strands[0]?.rows ?? [];
    expect(
      rows
        .slice(0, 6)
        .map(({ kind, component, count, fromMm, toMm }) => [kind, component, count, fromMm, toMm]),
    ).toEqual([
      ['clasp', 'lobster', 1, 0, 12],
      ['loop', null, 1, 12, 16],
      ['end', 'crimp', 1, 16, 16],
      ['end', 'cover', 1, 16, 20],
      ['strung', 'ball-3', 1, 20, 23],
      ['strung', 'ball-3', 1, 23, 26],
    ]);
    expect(rows.slice(-4).map(({ kind, component, toMm }) => [kind, component, toMm])).toEqual([
      ['end', 'cover', 182],
      ['end', 'crimp', 182],
      ['loop', null, 186],
      ['ring', 'ring', 190],
    ]);
  });

  it('keep sections apart, though the same bead ends one and begins the next', () => {
    const rows = (card(focalBracelet).strands[0]?.rows ?? []).filter(({ kind }) => kind === 'strung');
    expect(rows[0]).toMatchObject({ section: 'filler', side: 'left', component: 'ball-3', runningCount: 1 });
    expect(rows[1]).toMatchObject({ section: 'run', side: 'left', component: 'ball-3', runningCount: 2 });
  });

  it('take like beads in a row together, side by side of the middle', () => {
    const rows = (card(design()).strands[0]?.rows ?? []).filter(({ kind }) => kind === 'strung');
    expect(rows).toEqual([
      {
        kind: 'strung',
        section: 'run',
        side: 'left',
        component: 'ball-8',
        count: 8,
        runningCount: 8,
        eachMm: 8,
        fromMm: 20,
        toMm: 84,
      },
      {
        kind: 'strung',
        section: 'run',
        side: 'right',
        component: 'ball-8',
        count: 8,
        runningCount: 16,
        eachMm: 8,
        fromMm: 84,
        toMm: 148,
      },
    ]);
  });

  it.each(ALL.map((piece) => [piece.id, piece] as const))('add up, without a gap: %s', (_, piece) => {
    for (const { rows, count, finishedLengthMm } of card(piece).strands) {
      rows.forEach((row, index) => {
        expect(row.fromMm).toBe(rows[index - 1]?.toMm ?? 0);
        expect(row.toMm - row.fromMm).toBeCloseTo(row.count * row.eachMm, 9);
      });
      expect(rows.at(-1)?.toMm).toBeCloseTo(finishedLengthMm, 9);
      expect(rows.at(-1)?.runningCount).toBe(count);
      const strung = rows.filter(({ kind }) => kind === 'strung');
      expect(strung.reduce((sum, row) => sum + row.count, 0)).toBe(count);
    }
  });

  it('a guard stands where its loop is, a bare crimp takes its own length, no ring no row', () => {
    const bare = design({ ends: { ...design().ends, cover: null, guard: 'guard', ring: null } });
    const rows = card(bare).strands[0]?.rows ?? [];
    expect(rows[1]).toMatchObject({ kind: 'loop', component: 'guard', eachMm: 4 });
    expect(rows[2]).toMatchObject({ kind: 'end', component: 'crimp', eachMm: 2 });
    expect(rows.at(-1)?.kind).toBe('loop');
  });
});

describe('the board', () => {
  it('has zero at the middle of the beads, marks both ways, the clasp on its side', () => {
    const board = card(pendantNecklace, 'right').strands[0]?.board;
    expect(board?.claspSide).toBe('left');
    expect(board?.zeroMm).toBe(208);
    expect(
      board?.marks.map(({ side, ends, section, fromZeroMm }) => `${side} ${section ?? ends} ${fromZeroMm}`),
    ).toEqual([
      'left middle 12',
      'left run 188',
      'left crimp 192',
      'left loop 196',
      'left clasp 208',
      'right middle 12',
      'right run 188',
      'right crimp 192',
      'right loop 196',
      'right ring 200',
    ]);
  });

  it('of a piece with no front has the clasp on the left', () => {
    expect(card(focalBracelet, 'left').strands[0]?.board.claspSide).toBe('left');
  });

  it('marks a focal on both sides of zero', () => {
    const marks = card(focalBracelet).strands[0]?.board.marks ?? [];
    expect(marks.filter(({ section }) => section === 'focal')).toEqual([
      { side: 'left', fromZeroMm: 10, ends: 'section', section: 'focal' },
      { side: 'right', fromZeroMm: 10, ends: 'section', section: 'focal' },
    ]);
  });

  it.each(ALL.map((piece) => [piece.id, piece] as const))(
    'every mark is a row’s edge, farther and farther out: %s',
    (_, piece) => {
      for (const { rows, board } of card(piece, 'left').strands) {
        const edges = rows.flatMap(({ fromMm, toMm }) => [fromMm, toMm]);
        const farthest = { left: 0, right: 0 };
        for (const { side, fromZeroMm } of board.marks) {
          const at = board.zeroMm + (side === board.claspSide ? -fromZeroMm : fromZeroMm);
          expect(edges.some((edge) => Math.abs(edge - at) < 1e-9)).toBe(true);
          expect(fromZeroMm).toBeGreaterThan(farthest[side]);
          farthest[side] = fromZeroMm;
        }
        const all = board.marks.filter(({ side }) => side === board.claspSide).at(-1)?.fromZeroMm;
        expect(all).toBeCloseTo(board.zeroMm, 9);
      }
    },
  );
});

describe('slack and cut', () => {
  it('slack is what the closed loop opens between its hole mouths', () => {
    const piece = card(design()).strands[0];
    const [sequence = []] = expand(design(), usual(design()));
    expect(piece?.slackMm).toBe(solveLoop(loopParts(design(), sequence)).slackMm);
    expect(piece?.cut.slackMm).toBe(piece?.slackMm);
    expect(piece?.cut.beadsMm).toBe(128);
  });

  it('larger beads need more of it', () => {
    const slack = (id: string) =>
      card({
        ...design(),
        strands: [
          {
            ...(design().strands[0] ?? { id: '', mirrored: true }),
            sections: [
              {
                ...(design().strands[0]?.sections[0] ?? focalBracelet.strands[0]!.sections[0]!),
                motif: [{ component: id, count: 1 }],
              },
            ],
          },
        ],
      }).strands[0]?.slackMm ?? 0;
    expect(slack('boulder')).toBeGreaterThan(slack('ball-8'));
    expect(slack('ball-8')).toBeGreaterThan(slack('ball-3'));
  });

  it('each strand has its own', () => {
    const { strands, finishedLengthMm } = card(twoStrands);
    expect(strands.map(({ id }) => id)).toEqual(['upper', 'lower']);
    expect(strands[1]?.slackMm).toBeLessThan(strands[0]?.slackMm ?? 0);
    expect(finishedLengthMm).toBe(Math.max(...strands.map((one) => one.finishedLengthMm)));
  });

  it('a chain that is let out is part of the loop, and told', () => {
    const chained = design({ ends: { ...design().ends, extenderMm: 50 } });
    const piece = { ...describePiece(chained, RULES, 5000, usual(chained)), chainUsedMm: 30 };
    const found = stringing(chained, RULES, piece, 'right');
    const [sequence = []] = piece.sequences;
    expect(found.ends).toMatchObject({ extenderMm: 50, chainUsedMm: 30 });
    expect(found.strands[0]?.slackMm).toBe(solveLoop(loopParts(chained, sequence, 30)).slackMm);
    expect(found.finishedLengthMm).toBe(160);
  });
});

describe('the ends', () => {
  it('crimp, cover and tails as they stand', () => {
    const { ends, strands } = card(design());
    expect(ends).toEqual({
      held: {
        clasp: { what: 'whole', component: 'lobster', ways: 1 },
        ring: { what: 'whole', component: 'ring', ways: 1 },
      },
      coverId: 'cover',
      roomMm: 1,
      clasp: 'lobster',
      ring: 'ring',
      loopMm: 4,
      extenderMm: 0,
      chainUsedMm: 0,
      links: null,
      link: null,
      crimp: { crimp: 'crimp', wires: 2, insideMm: 1.2, needMm: 0.96, fit: 'fits' },
      cover: { cover: 'cover', takesMm: 2.5, closedMm: 2.2, fit: 'fits' },
      guard: null,
    });
    expect(strands[0]?.tails.clasp.blockedBy).toBeNull();
  });

  it('a narrow bead is named at the end where it stands', () => {
    const narrow = withComponent(unequalNecklace, 'tube', { holeMm: 0.6 });
    const tails = card(narrow).strands[0]?.tails;
    expect(tails?.clasp.blockedBy).toMatchObject({ component: 'tube', position: 1 });
    expect(tails?.ring.blockedBy).toBeNull();
  });

  it('bare crimps, guards, and a crimp that is missing', () => {
    const { ends } = card(design({ ends: { ...design().ends, cover: null, guard: 'guard' } }));
    expect(ends.cover).toBeNull();
    expect(ends.guard).toMatchObject({ guard: 'guard', passes: true });
    const missing = card(design({ ends: { ...design().ends, crimp: 'none' } })).ends.crimp;
    expect(missing).toEqual({ crimp: 'none', wires: 2, insideMm: 0, needMm: 0.96, fit: 'tight' });
  });
});

describe('mass, pull and strength', () => {
  it('mass is the buyer’s figure, with how it is known', () => {
    const piece = describePiece(pendantNecklace, RULES, 5000, usual(pendantNecklace));
    expect(card(pendantNecklace).mass).toEqual({ massG: piece.massG, basis: 'rough' });
    const weighed = Object.values(design().components).reduce(
      (of, { id }) => withComponent(of, id, { massG: 1 }),
      design(),
    );
    expect(card(weighed).mass.basis).toBe('weighed');
  });

  it('a bracelet is held up by one end: all of it pulls there', () => {
    const weighed = Object.values(design().components).reduce(
      (of, { id }) => withComponent(of, id, { massG: 1 }),
      design(),
    );
    // 16 beads, 2 crimps, 2 covers, clasp and ring at a gram each
    expect(card(weighed).strength.pullN).toBeCloseTo(0.022 * 9.80665, 9);
  });

  it('a necklace hangs by both ends: a heavier pendant pulls harder', () => {
    const light = card(pendantNecklace).strength.pullN;
    const heavy = card(withComponent(pendantNecklace, 'drop', { massG: 50 })).strength.pullN;
    expect(heavy - light).toBeGreaterThan((0.045 * 9.80665) / 2);
    expect(heavy - light).toBeLessThan(0.045 * 9.80665);
  });

  it('a necklace too short for a mean neck is held up like a bracelet', () => {
    const short = { ...design(), kind: 'necklace' as const };
    expect(card(short).strength.pullN).toBe(card(design()).strength.pullN);
  });

  it('of several strands the one that bears most', () => {
    const upper = card({ ...twoStrands, strands: twoStrands.strands.slice(0, 1) }).strength.pullN;
    expect(card(twoStrands).strength.pullN).toBe(upper);
  });
});

describe('a strand as the body feels it', () => {
  it('pendant and rings hang on the first strand alone', () => {
    const nested = { ...pendantNecklace, strands: [...pendantNecklace.strands, ...design().strands] };
    const [first = [], second = []] = expand(nested, usual(nested));
    expect(loadOf(nested, first, 0).pendantG).toBeGreaterThan(5);
    expect(loadOf(nested, first, 0).pendantMiddleMm).toBe(4 + 12);
    expect(loadOf(nested, second, 1)).toMatchObject({ pendantG: 0, pendantMiddleMm: 0 });
    expect(pendantMiddleMm(design())).toBe(0);
  });

  it('its mass is spread over its finished length', () => {
    const [sequence = []] = expand(pendantNecklace, usual(pendantNecklace));
    const { lengthMm, gPerMm } = loadOf(pendantNecklace, sequence, 0);
    expect(lengthMm).toBe(408);
    expect(gPerMm * lengthMm).toBeGreaterThan(44 * 0.69);
    expect(gPerMm * lengthMm).toBeLessThan(44 * 0.69 + 3);
  });

  it('its across on the neck is that of the halves nearest the closing', () => {
    const [balls = []] = expand(pendantNecklace, usual(pendantNecklace));
    expect(loadOf(pendantNecklace, balls, 0).acrossMm).toBe(8);
    const [unequal = []] = expand(unequalNecklace, usual(unequalNecklace));
    const across = loadOf(unequalNecklace, unequal, 0).acrossMm;
    // 11 tubes of 10 × 3 and 11 balls of 8 × 8
    expect(across).toBeCloseTo((11 * 10 * 3 + 11 * 8 * 8) / (11 * 18), 9);
    expect(loadOf(design(), [], 0)).toEqual({
      lengthMm: 24,
      gPerMm: 0,
      pendantG: 0,
      pendantMiddleMm: 0,
      acrossMm: 0,
    });
  });
});
