/** What answers a size, and says so in English: fetched when the form is turned to. */
export * from './form/answering.ts';
export { sized as words } from '#words/en/sized.ts';
