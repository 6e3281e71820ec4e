/** A drawing with what it says to those who don't see it. */
export type Described = { readonly svg: string; readonly alt: string };
