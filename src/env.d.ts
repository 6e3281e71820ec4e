/** What the middleware knows of a request, for every page made on demand. */
declare namespace App {
  interface Locals {
    visitor: import('#bench/access/visitor.ts').Visitor;
  }
}
