import fc from 'fast-check';

/** The same few random cases for every mutant, so that a survivor costs seconds and two counts can be compared. */
fc.configureGlobal({ numRuns: 25, seed: 1 });
