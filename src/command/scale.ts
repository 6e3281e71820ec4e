/** `npm run scale -- 10000 [folder]`: a catalogue of that many pieces, outside content/, to measure builds by. */
import { join, resolve } from 'node:path';
import { writeScaled } from './scale/write.ts';

/** More would fill a disk before it tells anything new. */
const mostPieces = 100_000;

const [countText = '', folderText] = process.argv.slice(2);
const count = Number(countText);
if (!/^\d+$/.test(countText) || count < 1 || count > mostPieces) {
  console.error(`Say how many pieces, from 1 to ${mostPieces}: npm run scale -- 1000`);
  process.exit(2);
}
const folder = folderText ?? join('.cache', 'scale', String(count));
if (resolve(folder) === resolve('content')) {
  console.error('That is the shop itself. Name another folder.');
  process.exit(2);
}
const began = Date.now();
writeScaled('content', folder, count, (what, done) => {
  console.log(`${what}: ${done} (${((Date.now() - began) / 1000).toFixed(1)} s)`);
});
console.log(`Build it with: CLASPWISE_CONTENT=${folder} npm run build`);
