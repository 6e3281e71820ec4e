/** The bead board, as the maker reads it. English is the contract. */
import type { ComponentKind } from '#core/design/component.ts';
import type { Measure } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Remedy } from '#core/sizing/gaps/remedies.ts';
import type { Format } from '../format.ts';

/** "1 bead", "5 beads". */
const beads = (count: number, f: Format): string => `${f.number(count)} ${count === 1 ? 'bead' : 'beads'}`;

const measured: Readonly<Record<Measure['of'], string>> = {
  wrist: 'Wrists at an easy sit',
  ankle: 'Ankles at an easy sit',
  neck: 'Necks at an easy sit',
  length: 'Finished lengths',
};

export const board = {
  title: (name: string): string => `${name} on the board`,
  noScript: 'The board needs JavaScript. Without it, a piece is written in its file.',
  picture: 'The piece on the bead board',
  emptyBoard:
    'Nothing lies here yet. Choose a bead from your trays: it goes to the middle and from there outwards.',
  zero: 'the middle',

  // What new sections are called until she names them.
  named: { run: 'Run', middle: 'Middle', pattern: 'Pattern', filler: 'Beside the clasp' },

  undo: 'Undo',
  redo: 'Redo',
  undone: 'Taken back.',
  redone: 'Done again.',
  beads,

  trays: {
    heading: 'Your trays',
    search: 'Find a bead',
    hint: 'Type how many and what, as in “5 slate”, and press Enter; with Shift it goes into the middle, with Alt it stands instead.',
    found: (count: number): string => (count === 1 ? '1 found' : `${count} found`),
    none: 'Nothing in your trays is called that.',
    more: (count: number): string => `${count} more: type a word of the name to find them.`,
    left: (count: number, f: Format): string =>
      count < 0 ? `${f.number(-count)} short` : `${f.number(count)} left`,
    tray: (tray: string): string => `tray ${tray}`,
    where: 'A bead goes',
    modes: { after: 'next', middle: 'in the middle', instead: 'instead' },
    modeHints: {
      after: 'next to what is in hand, away from the middle',
      middle: 'in the very middle, once',
      instead: 'in place of what is in hand',
    },
    put: (what: string, side: string): string => `${what} ${side}.`,
    sides: { after: 'laid', middle: 'laid in the middle', instead: 'taken instead' },
  },

  runs: {
    heading: 'What lies there, from the middle outwards',
    headingOneRun: 'What lies there, from clasp to ring',
    label: (strand: number): string => `Beads of strand ${strand}`,
    help: 'Arrow keys choose, Shift with them marks more. A figure and Enter: how many. Enter alone: over to the trays, Escape back here. Delete: away. Alt with an arrow: move. R: this repeats, after a figure so many times. M: into the middle. A: the whole section. Ctrl+Z: undo.',
    keys: 'Keys',
    times: (usual: number, fewest: number, most: number): string =>
      fewest === most ? (usual === 1 ? '' : `${usual} ×`) : `${usual} × (${fewest} to ${most})`,
    run: (count: number, name: string): string => (count === 1 ? name : `${count} × ${name}`),
    typed: (figures: string): string => `${figures}: Enter for so many`,
    focal: 'in the middle',
    filler: 'beside the clasp',
  },

  hand: {
    heading: 'In hand',
    nothing: 'Nothing is in hand. Tap a bead on the board or in the list.',
    count: 'How many',
    fewer: 'One fewer',
    more: 'One more',
    remove: 'Take away',
    inwards: 'Move inwards',
    outwards: 'Move outwards',
    repeats: 'This repeats',
    loose: 'No longer repeats',
    middle: 'Make it the middle',
    removed: 'Taken away.',
    moved: 'Moved.',
    counted: (count: number): string => `Now ${count}.`,
    repeated: 'Marked as one that repeats.',
  },

  section: {
    heading: (name: string): string => `Section “${name}”`,
    name: 'Its name',
    role: 'It is',
    roles: {
      focal: 'the middle, which stands once',
      body: 'part of the strand',
      filler: 'a filler beside the clasp',
    },
    usual: 'Times, on each side',
    usualOneRun: 'Times, in all',
    fewest: 'at the fewest',
    most: 'at the most',
    range: 'For other sizes',
    whole: 'Mark all of it',
  },

  strands: {
    heading: 'Strands',
    one: (strand: number): string => `Groove ${strand}`,
    choose: 'Strand in work',
    mirrored: 'The other side is its mirror',
    add: 'Another strand like this',
    remove: 'Take this strand away',
    lie: 'They lie',
    lies: { 'side-by-side': 'side by side', nested: 'one below the other' },
    gap: 'Gap between them, mm',
  },

  closing: {
    heading: 'Wire and closing',
    wire: 'Wire',
    clasp: 'Clasp',
    ring: 'Ring on the other end',
    crimp: 'Crimp',
    cover: 'Crimp cover',
    guard: 'Wire guard',
    loop: 'Loop of wire, mm',
    extender: 'Chain to let it out by, mm',
    link: 'Inside length of one link, mm',
    none: 'none',
    choose: 'choose …',
    pendant: 'Pendant',
    ringsOn: 'Its rings, from the wire down',
    addRing: 'Add a ring',
    removeRing: 'Take the last ring off',
    kind: 'It is a',
    kinds: {
      necklace: 'necklace',
      bracelet: 'bracelet',
      anklet: 'anklet',
      collar: 'collar',
    } satisfies Record<Design['kind'], string>,
    oneSided: 'It has a better side',
    upright: 'That side has a top and a bottom',
  },

  figures: {
    heading: 'As it lies there',
    length: 'Finished length',
    girth: 'Room inside',
    mass: 'Weight',
    beads: 'Beads',
    minutes: 'Work',
    minutesValue: (minutes: number, f: Format): string => `${f.number(minutes)} min`,
    materials: 'Materials',
    rule: 'Price by your rule',
    listed: 'Your price',
    cut: 'Wire to cut',
    slack: 'Slack to leave',
    strength: 'Wire holds',
    strengthValue: (factor: number, f: Format): string =>
      factor > 100 ? 'far more than it must' : `${f.number(factor, 1)} times the pull`,
    notYet: 'The figures come when it can be strung.',
  },

  findings: {
    heading: 'To look at',
    some: (count: number): string => `${count} to look at`,
    fine: 'Nothing to mend.',
    stops: 'It can’t be strung so',
    show: 'Show',
    empty: 'The strand is empty.',
    emptyParts: 'Choose a clasp and a crimp.',
    tail: (component: string, holeMm: number, needMm: number, f: Format): string =>
      `The doubled wire can’t go back through ${component} at the end: its hole is ${f.number(holeMm, 2)} mm, it needs ${f.number(needMm, 2)} mm. Put a bead with a larger hole beside the clasp, or take a thinner wire.`,
    stock: (component: string, have: number, need: number, f: Format): string =>
      `${component}: it takes ${f.number(need)}, you have ${f.number(have)}.`,
    price: (rule: string): string => `Your price is below your rule, which comes to ${rule}.`,
    weak: 'The wire is too weak for this weight, with a snag on top. Take a stronger one.',
    place: { closing: 'Closing', wire: 'Wire', pendant: 'Pendant', piece: 'The piece' },
  },

  sizes: {
    heading: 'Sizes it can be made in',
    thinking: 'Working out the sizes …',
    none: 'They come when it can be strung.',
    of: measured,
    interval: (from: string, to: string): string => (from === to ? from : `${from} to ${to}`),
    missed: (sizes: string): string => `Often asked for, and not to be had: ${sizes}.`,
    nothingMissed: 'Every size between that is often asked for can be had.',
    only: 'No section may change in size yet. Let one go from fewer to more, and there is a range.',
    for: (sizes: string): string => `For ${sizes}:`,
    do: 'Do that',
    remedy: (remedy: Remedy, name: string, f: Format): string => {
      switch (remedy.code) {
        case 'widen-section':
          return `let “${name}” go ${f.number(Math.abs(remedy.repeats))} ${remedy.repeats > 0 ? 'further up' : 'further down'}`;
        case 'add-filler':
          return `put none to ${f.number(remedy.count)} of ${name} beside the clasp`;
        case 'new-filler':
          return `a bead or spacer ${f.number(remedy.alongMm, 1)} mm long beside the clasp, none to ${f.number(remedy.count)} of it, would do`;
        case 'chain':
          return `let it out by a chain of ${f.number(remedy.mm)} mm`;
      }
    },
    noRemedy: 'no small change was found',
  },

  save: {
    save: 'Save',
    saving: 'Saving …',
    preview: 'Preview',
    saved: 'Saved',
    unsaved: 'Not saved yet; kept on this device',
    failed:
      'It couldn’t be saved: the bench doesn’t answer. What lies on the board is kept on this device; try again.',
    problems: 'Not saved, because of this:',
    problem: (what: string, fix: string): string => `${what} ${fix}`,
    notWritable: 'It isn’t saved.',
    conflict: 'The file was changed elsewhere since you opened it. Nothing is lost: here are both.',
    theirs: 'As the file is now',
    mine: 'As it lies on your board',
    keepMine: 'Save what lies on the board into it',
    takeTheirs: 'Open the file as it is now',
    gone: 'The file is there no more.',
    aside: 'On this device lies work on an older state of this file.',
    takeAside: 'Go on with it',
    dropAside: 'Throw it away',
  },

  about: {
    heading: 'Before it is saved for the first time',
    name: 'What is it called?',
    price: 'Price',
    priceHint: (rule: string): string => `By your rule it comes to ${rule}.`,
    summary: 'One line about it, for the list',
    story: 'Its story',
    storyHint: 'Leave it empty to write it later; the line above stands in.',
    missing: 'Give it a name and a line, and it can be saved.',
  },

  swap: {
    heading: 'Try another bead, wire or clasp all through',
    what: 'Instead of',
    by: 'take',
    asIs: 'As it lies',
    swapped: 'Changed',
    take: 'Take the change',
    same: 'Choose two that differ.',
    wire: 'the wire',
    metal: 'everything of',
    checks: 'To mend',
    none: 'nothing',
  },

  found: {
    heading: 'From a finished piece',
    hint: 'Lay one of each section on the board, about as often as you see it, and measure the finished piece: the likeliest counts come out.',
    measure: 'Measured',
    of: { length: 'Length, laid straight', girth: 'Round its inside' },
    find: 'Find the counts',
    unread: 'Write a length, as in “17 3/4 in” or “45.2 cm”.',
    off: (mm: string): string => `off by ${mm}`,
    share: (percent: string): string => `${percent} likely`,
    take: 'Lay it so',
    none: 'No counts come near that.',
  },

  kindNames: {
    bead: 'bead',
    spacer: 'spacer',
    cap: 'bead cap',
    crimp: 'crimp',
    cover: 'crimp cover',
    ring: 'ring',
    clasp: 'clasp',
    pendant: 'pendant',
  } satisfies Record<ComponentKind, string>,
};
