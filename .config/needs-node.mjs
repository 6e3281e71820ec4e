// Plain JavaScript on purpose: it must run on the old Node that it refuses.
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 22 || (major === 22 && minor < 12)) {
  console.error(
    `Claspwise needs Node 22.12 or later; this is ${process.versions.node}.\n` +
      'npm ci brings Node 24 along, unless it ran with --ignore-scripts.\n' +
      'Fix: run "npm ci" again without --ignore-scripts, or install Node 24 from nodejs.org.',
  );
  process.exit(1);
}
