/** A small shop in a folder of its host; `build.ts` beside it builds it. Paths from the project's root. */
export const ADDRESS = 'https://mill.example/shop/';
export const CONTENT = '.cache/in-folder/content';
export const RELEASES = '.cache/in-folder/releases';
export const DIST = '.cache/in-folder/dist';

/** One of each: sized in two ways, lying finished, of several strands, with other parts to choose. */
export const PIECES = ['banked-fire', 'slack-water', 'beck-and-leat', 'wash-day', 'ford'];
