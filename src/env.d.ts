/** What the middleware knows of a request, for every page made on demand. */
declare namespace App {
  interface Locals {
    visitor: import('#bench/access/visitor.ts').Visitor;
    /** The paired device that asks; null at the bench itself, and for whoever came in with the passphrase. */
    device: import('#bench/book/devices.ts').Device | null;
  }
}

/** A script with all that it imports (src/ui/build/bundledScripts.ts). */
declare module '*?bundle' {
  const text: string;
  export default text;
}
