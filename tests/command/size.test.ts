import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { EXIT } from '../../src/command/size/exit.ts';
import { MOST_INPUT } from '../../src/command/size/subject.ts';
import { pendantNecklace, twoStrands, withComponent } from '#tests/support/workshop.ts';
import { bySchema, content, root, size } from './terminal.ts';

const mistakesIn = bySchema('size-answer');

function answer(argv: readonly string[], stdin = '') {
  const { code, out, err } = size([...argv, '--json'], stdin);
  const json = JSON.parse(out);
  return { code, err, json, problems: mistakesIn(json) };
}

describe('a piece at the terminal', () => {
  it('is sized for a wrist, in sentences', () => {
    const { code, out, err } = size(['focal', '--wrist', '6 1/2 in', '--sit', 'easy', '--hand', 'left']);
    expect(code).toBe(EXIT.fits);
    expect(err).toBe('');
    expect(out).toMatch(
      /^Focal \(bracelet\)\nWrist 6 1\/2 in, sitting easy, clasp worked by the left hand\n/,
    );
    expect(out).toMatch(/Inside girth\s+7\s?in/);
    expect(out).toContain('Either hand: this piece looks the same from both sides');
  });

  it('answers in the unit the measure was written in, or the one asked for', () => {
    expect(size(['focal', '--wrist', '165 mm']).out).toMatch(/Inside girth\s+17\.\d\s?cm/);
    expect(size(['focal', '--wrist', '165 mm', '--unit', 'in']).out).toMatch(/Inside girth\s+7\s?in/);
  });

  it('inches and millimetres of one measure are one answer', () => {
    const inches = answer(['focal', '--wrist', '6 1/2 in']).json;
    const millimetres = answer(['focal', '--wrist', '165.1 mm']).json;
    expect(inches.sizing).toEqual(millimetres.sizing);
    expect(inches.stringing).toEqual(millimetres.stringing);
  });

  it('between two sizes gives the nearest below and above', () => {
    const { code, out } = size(['coarse', '--wrist', '7.2 in']);
    expect(code).toBe(EXIT.near);
    expect(out).toContain('--pick below');
    const { json } = answer(['coarse', '--wrist', '7.2 in']);
    expect(json.sizing.below.fittedMm).toBeLessThan(json.sizing.targetMm);
    expect(json.sizing.above.fittedMm).toBeGreaterThan(json.sizing.targetMm);
    const picked = answer(['coarse', '--wrist', '7.2 in', '--pick', 'below']).json;
    expect(picked.sizing.chosen).toEqual(json.sizing.below);
  });

  it('outside what it can be says the limits and what binds', () => {
    const { code, out } = size(['drop', '--length', '30 in']);
    expect(code).toBe(EXIT.outside);
    expect(out).toContain('can’t be made that large');
    expect(out).toContain('With more beads it would stop being this piece. (Run)');
  });

  it('a pendant necklace has a front: the clasp goes where the hand works it', () => {
    const { json } = answer(['drop', '--length', '17.5', '--hand', 'right']);
    expect(json.sizing.hand).toEqual({ hand: 'right', boardSide: 'left', reason: 'has-front-and-side' });
    expect(json.stringing.strands[0].board.claspSide).toBe('left');
    expect(json.stringing.pendant.facing.faces).toBe('front');
    expect(json.lie[0].pendantDropMm).toBeGreaterThan(json.lie[0].dropMm);
  });

  it('a place on the body gives the length that lies there', () => {
    const { json, code } = answer(['drop', '--place', '2 in', '--neck', '13 in', '--sex', 'female']);
    expect(code).toBe(EXIT.fits);
    expect(json.asked.place).toEqual({ dropMm: 50.8, band: null, aim: 'pendant' });
    // A bead is 8 mm a side, so the pendant lies within that of its place.
    expect(Math.abs(json.lie[0].pendantDropMm - 50.8)).toBeLessThan(8);
    const strand = answer([
      'drop',
      '--place',
      '2 in',
      '--neck',
      '13 in',
      '--sex',
      'female',
      '--aim',
      'strand',
    ]);
    expect(strand.json.asked.mm).toBeGreaterThan(json.asked.mm);
  });

  it('a landmark comes with its spread', () => {
    const { out } = size([
      'drop',
      '--place',
      'bust',
      '--sex',
      'female',
      '--height',
      '165 cm',
      '--neck',
      '33 cm',
    ]);
    expect(out).toContain('For nine people in ten that place lies between');
  });

  it('the bench card has every row, check and step', () => {
    const { out } = size(['drop', '--length', '17.5 in', '--card']);
    expect(out).toContain('At the bench\nClasp: left side of the board.');
    expect(out).toContain('On 1 ring the pendant faces front.');
    expect(out).toContain('[ ] Eye protection on');
    // Strung rows bear the numbers that the steps call them by, one after the other without a gap.
    const numbers = [...out.matchAll(/^ {2}(\d+)(?:–(\d+))?: (\d+) × /gm)].map(([, first, last, count]) => ({
      first: Number(first),
      last: Number(last ?? first),
      count: Number(count),
    }));
    expect(numbers.length).toBeGreaterThan(2);
    numbers.forEach(({ first, last, count }, at) => {
      expect(first).toBe((numbers[at - 1]?.last ?? 0) + 1);
      expect(last - first + 1).toBe(count);
    });
    expect(out).toMatch(
      /It costs: beads £[\d.]+, findings £[\d.]+, wire £[\d.]+, packing £1\.50, [\d.]+ minutes of work £/,
    );
    expect(out).toContain('An estimate for bare steel strand');
    expect(out).toMatch(/\[ \] Close it: 17[⅛-⅞]? ?.*in \([\d.]+\s?mm\)/);
  });

  it('several strands are told apart', () => {
    const nested = { ...twoStrands, kind: 'necklace', lie: 'nested', nestGapMm: 10 };
    const { out } = size(['-', '--length', '24 in'], JSON.stringify(nested));
    // The second strand of the made-up design reaches 13¾ in at most.
    expect(out).toMatch(/Finished length, Strand 1 +\d/);
    expect(out).toMatch(/Finished length, Strand 2 +\d/);
    expect(out).toMatch(/^Strand 1\nIts lowest bead lies/m);
    expect(out).toMatch(/^Strand 2\nFor a neck like that it is too short to close/m);
  });

  it('of two strands whose sections share an id, the one that ends the sizes is named', () => {
    const [upper, lower] = twoStrands.strands.map((one, at) => {
      const [run] = one.sections;
      return { ...one, sections: [{ ...run, name: ['Agate run', 'Pearl run'][at], most: 40 - 20 * at }] };
    });
    const piece = JSON.stringify({ ...twoStrands, strands: [upper, lower] });
    const argv = ['-', '--wrist', '10 in'];
    expect(size(argv, piece).out).toContain(
      'With more beads it would stop being this piece. (Pearl run (strand 2))',
    );
    expect(size([...argv, '--lang', 'de'], piece).out).toContain(
      'Mit mehr Perlen wäre es nicht mehr dieses Stück. (Pearl run (Strang 2))',
    );
    const { json, problems } = answer(argv, piece);
    expect(problems).toEqual([]);
    expect(json.sizing.limits.mostBinds).toEqual([{ strand: 1, section: 'run' }]);
  });

  it('a drop above the pit is said to be above', () => {
    const { out } = size(['drop', '--length', '15.5 in', '--neck', '14 in']);
    expect(out).not.toMatch(/[−-]\d/);
    expect(out).toMatch(/ above (?:it|the pit|and)/);
  });

  it('speaks German', () => {
    const { out } = size(['drop', '--length', '45 cm', '--lang', 'de', '--card']);
    expect(out).toContain('Drop (Halskette)');
    expect(out).toContain('Blaue Kugel, 8 mm');
    expect(out).toContain('[ ] Schutzbrille auf');
    expect(size(['--help', '--lang', 'de']).out).toContain('Ein Stück auf Maß rechnen.');
  });

  it('a child is met with cautions, a baby with none of it', () => {
    expect(size(['drop', '--length', '14', '--age', '8']).out).toContain('small parts');
    const baby = size(['drop', '--place', '1 in', '--age', '1']);
    expect(baby).toMatchObject({ code: EXIT.refused, out: '' });
    expect(baby.err).toContain('under two');
    expect(size(['drop', '--length', '14', '--age', '1']).out).not.toContain('below the pit');
  });
});

describe('a design on standard input', () => {
  it('is sized by the shop’s rules', () => {
    const { json, code, problems } = answer(['-', '--length', '17 in'], JSON.stringify(pendantNecklace));
    expect(code).toBe(EXIT.fits);
    expect(problems).toEqual([]);
    expect(json.piece).toEqual({ id: 'pendant', name: 'pendant', kind: 'necklace' });
  });

  it('names every problem of a design that can’t be strung', () => {
    const broken = withComponent(withComponent(pendantNecklace, 'ball-8', { holeMm: 0.3 }), 'ball-4', {
      material: 'cheese',
    });
    const { code, err } = size(['-', '--length', '17 in'], JSON.stringify(broken));
    expect(code).toBe(EXIT.refused);
    expect(err).toContain(
      'strands.0.sections.1: The hole of “ball-8” is 0.3 mm; the wire “fine-49” needs 0.48 mm.',
    );
    expect(err).toContain(
      'components.ball-4.material: “ball-4” is made of “cheese”, a material whose weight isn’t known.',
    );
  });

  it('says a figure out of range with its unit, in the reader’s language', () => {
    const wide = JSON.stringify(withComponent(pendantNecklace, 'ball-8', { holeMm: 1200.5 }));
    expect(size(['-', '--length', '17 in'], wide).err).toContain(
      'components.ball-8.holeMm: 1,200.5 mm is outside what can be: 0 to 300 mm.',
    );
    expect(size(['-', '--length', '17 in', '--lang', 'de'], wide).err).toContain(
      'components.ball-8.holeMm: 1.200,5 mm liegt außerhalb des Möglichen: 0 bis 300 mm.',
    );
  });

  it.each(['', '{', 'null', '[]', '"design"', '{"strands": 3}'])('%j is refused in words', (text) => {
    const { code, out, err } = size(['-', '--length', '17 in'], text);
    expect([EXIT.unread, EXIT.refused]).toContain(code);
    expect(out).toBe('');
    expect(err).not.toBe('');
  });

  it('has a limit', () => {
    expect(size(['-', '--length', '17 in'], ' '.repeat(MOST_INPUT + 1))).toMatchObject({ code: EXIT.unread });
  });
});

describe('a command line that can’t be read', () => {
  it.each([
    [[], 'Name a piece'],
    [['focal'], 'Say what is wanted'],
    [['focal', 'drop', '--wrist', '6'], 'Name one piece, not 2'],
    [['focal', '--wrist', '6', '--ankle', '8'], '--wrist and --ankle'],
    [['focal', '--place', '2', '--length', '18'], '--place and --length'],
    [['focal', '--wrist', 'six'], '“six” can’t be read as a measure'],
    [['focal', '--wrist=-6 in'], 'more than nothing'],
    [['focal', '--wrist', '0'], 'more than nothing'],
    [['focal', '--wrist', '6 ft'], '“ft” is no unit'],
    [['focal', '--wrist', '6 to 7'], 'two measures'],
    [['focal', '--wrist', ''], '--wrist'],
    [['focal', '--wrist', '6', '--sit', 'tight'], 'snug, easy, loose'],
    [['focal', '--wrist', '6', '--hand', 'both'], 'left, right'],
    [['focal', '--wrist', '6', '--lang', 'fr'], 'en, de'],
    [['focal', '--wrist', '6', '--quantity', 'two'], 'has to be a number'],
    [['focal', '--girth', '6'], 'There is no option --girth.'],
    [['focal', '--wrst', '6'], 'There is no option --wrst. Did you mean “--wrist”?'],
    [['focal', '-x'], 'There is no option -x.'],
    [['focal', '--wrist'], '--wrist needs a value'],
    [['focal', '--wrist', '--json'], '--wrist needs a value'],
    [['focal', '--wrist', '6', '--json=yes'], '--json stands alone'],
  ])('%j', (argv, sentence) => {
    const { code, out, err } = size(argv);
    expect(code).toBe(EXIT.usage);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err).toContain('Try --help.');
  });

  it.each([
    [['focal', '--wrist', '60 in'], EXIT.refused],
    [['focal', '--length', '8 in'], EXIT.refused],
    [['focal', '--wrist', '6 in', '--quantity', '1.5'], EXIT.refused],
    [['focal', '--place', '2 in'], EXIT.refused],
    [['drop', '--place', '90 in'], EXIT.refused],
    [['drop', '--place', 'bust', '--age', '6'], EXIT.refused],
    [['nothing', '--wrist', '6 in'], EXIT.unread],
    [['focal', '--wrist', '6 in', '--content', '/nowhere'], EXIT.unread],
  ])('%j ends with %i', (argv, code) => {
    const found = size(argv);
    expect(found.code).toBe(code);
    expect(found.err).not.toBe('');
    expect(found.out).toBe('');
  });
});

it('a measure of another kind is refused with those that serve', () => {
  expect(size(['drop', '--wrist', '6 in']).err).toContain('It is sized by --length or --neck.');
  expect(size(['focal', '--length', '18 in']).err).toContain('It is sized by --wrist.');
});

describe('the JSON and its schema', () => {
  it.each([
    ['focal', '--wrist', '6.5 in'],
    ['focal', '--wrist', '165 mm', '--sit', 'snug', '--hand', 'left'],
    ['focal', '--wrist', '3.5 in'],
    ['focal', '--wrist', '80 in'],
    ['coarse', '--wrist', '7.2 in'],
    ['drop', '--length', '17 1/2 in'],
    ['drop', '--neck', '14 in', '--sit', 'loose'],
    ['drop', '--length', '60 in'],
    ['drop', '--length', '11.2 in'],
    ['drop', '--place', 'pit', '--aim', 'strand'],
    ['drop', '--place', '3 in', '--age', '10'],
  ])('%s %s %s', (...argv) => {
    const { problems } = answer(argv);
    expect(problems).toEqual([]);
  });

  it('refuses a damaged answer', () => {
    const { json } = answer(['focal', '--wrist', '6.5 in']);
    for (const damage of [
      { ...json, version: 1 },
      { ...json, extra: 1 },
      { ...json, currency: 'pounds' },
      { ...json, sizing: { ...json.sizing, status: 'maybe' } },
      { ...json, stringing: { ...json.stringing, strands: [{}] } },
      { ...json, sizing: { ...json.sizing, chosen: { ...json.sizing.chosen, massG: '12' } } },
    ]) {
      expect(mistakesIn(damage)).not.toEqual([]);
    }
  });
});

it('as a process: the answer on standard output, the complaint on standard error, the code to the shell', () => {
  const spawn = (...argv: string[]) =>
    spawnSync(process.execPath, ['src/command/size.ts', ...argv, '--content', content], {
      cwd: root,
      encoding: 'utf8',
    });
  const good = spawn('focal', '--wrist', '6.5 in', '--json');
  expect([good.status, good.stderr]).toEqual([EXIT.fits, '']);
  expect(mistakesIn(JSON.parse(good.stdout))).toEqual([]);
  const bad = spawn('focal', '--wrist', 'six');
  expect([bad.status, bad.stdout]).toEqual([EXIT.usage, '']);
  expect(bad.stderr).toContain('can’t be read as a measure');
});
