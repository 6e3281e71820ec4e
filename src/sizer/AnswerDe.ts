/** What answers a size, and says so in German: fetched when the form is turned to. */
export * from './form/answering.ts';
export { sized as words } from '#words/de/sized.ts';
