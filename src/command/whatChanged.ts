/**
 * What a publishing would change, as one line of JSON: `{ problems, changes }`. A process of its own for the
 * bench, which answers orders meanwhile: a thousand pieces take seconds to read.
 */
import { promisedIn } from '#bench/context/promised.ts';
import { settingsFrom } from '#bench/context/settings.ts';
import { whatChanged } from '#release/whatChanged.ts';

console.log(JSON.stringify(whatChanged(promisedIn(settingsFrom(process.env, process.cwd()).bookFile))));
