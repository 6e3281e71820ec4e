/** Runs jobs a few at a time and gives their results in the order of the jobs. */
export async function inTurn<Job, Result>(
  jobs: readonly Job[],
  atOnce: number,
  run: (job: Job) => Promise<Result>,
): Promise<Result[]> {
  const results: Result[] = new Array<Result>(jobs.length);
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < jobs.length) {
      const index = next;
      next += 1;
      const job = jobs[index];
      if (job !== undefined) results[index] = await run(job);
    }
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, jobs.length) }, worker));
  return results;
}
