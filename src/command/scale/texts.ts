/** Names and texts by the thousand, made of few words. Nobody is meant to read them; a search index is. */
import type { Random } from './random.ts';

type Words = readonly [string, ...string[]];

const list = (words: string): Words => words.split(' ') as unknown as Words;

const firsts = list(
  'Slow Grey First Last Early Late High Low Far Near Cold Warm Quiet Loud Long Short Old New Bright Dim Wet Dry Wild Plain ' +
    'Upper Nether Broken Mended Narrow Broad Silver Copper Amber Ashen Dusky Pale Deep Shallow Winter Summer Autumn April ' +
    'Market Chapel Harbour Hill Valley Meadow Mill Barn Kiln Forge Quarry Orchard Ferry Bridge Lantern Thunder Northern Western',
);
const seconds = list(
  'Rain Frost Thaw Mist Fog Gale Squall Hail Sleet Dew Rime Drizzle Cloud Moon Dusk Dawn Noon Ember Smoke Ash Spark Flame ' +
    'Weir Lock Leat Beck Tarn Ford Race Pool Spring Tide Eddy Ripple Wave Shore Sand Gravel Pebble Slate Flint Clay Loam Moss ' +
    'Fern Reed Rush Sedge Heather Gorse Rowan Alder Willow Hazel Thorn Bramble Barley Oats Hay Straw Fleece Wool Weft Warp ' +
    'Shuttle Spindle Bobbin Reel Thread Selvedge Teasel Madder Woad Weld Vat Loom Bell Clock Whistle Anchor Barge Oar Sail ' +
    'Rope Net Creel Heron Dipper Wagtail Swift Martin Rook Lapwing Curlew Plover Otter Vole Hare Trout Minnow Moth Beetle ' +
    'Lane Gate Stile Wall Step Yard Row Loft Hearth Window Lamp Kettle Apron Ribbon Button Needle Thimble Ladder Barrow Cart ' +
    'Hour Minute Morning Evening Harvest Fair Shift Errand Holiday Song Dance Tale Riddle Promise Secret Wager Truce Supper',
);
const openings: Words = [
  'I made it in a week when nothing dried',
  'It was begun for a neighbour and finished for somebody else',
  'The beads had waited in the drawer for a year',
  'Someone asked for the colour of a particular gate',
  'It started as a repair',
];
const middles: Words = [
  'the larger ones carry the light and the small ones keep them apart',
  'each was chosen against the window and half went back',
  'the order is the order in which they came to hand',
  'it is close to the wall above the river after rain',
  'no two lie quite alike, and that is the point',
];
const endings: Words = [
  'It wears well with wool',
  'It has been to two shows and came home once',
  'Nobody has brought one back',
  'The wire is finer than it looks',
  'I would make it again',
];

/** How many names there are before a number is put after them. */
const names = firsts.length * seconds.length;
// Shares no factor with the number of names, so that neighbours in time aren't neighbours in name.
const stride = 7919;

/** The name of the piece at `index`; all are different. */
export function nameAt(index: number): string {
  const place = (index * stride) % names;
  const round = Math.floor(index / names);
  const name = `${firsts[place % firsts.length]} ${seconds[Math.floor(place / firsts.length)]}`;
  return round === 0 ? name : `${name} ${round + 1}`;
}

/** A summary and a story. `about` is the name of its most seen bead. */
export function textsAt(random: Random, about: string): { readonly summary: string; readonly story: string } {
  const summary = `${about}, and what goes with it; ${random.pick(endings).toLowerCase()}.`;
  const story = [
    `${random.pick(openings)}.`,
    `Mostly ${about.toLowerCase()}: ${random.pick(middles)}.`,
    `${random.pick(endings)}.`,
  ].join(' ');
  return { summary, story };
}
