/** The page's trail as a schema.org BreadcrumbList. */
type Step = { readonly name: string; readonly href: string };

/**
 * @param above pages above, from the front page down
 * @param absolute makes a path a whole address
 */
export function trailData(above: readonly Step[], here: Step, absolute: (path: string) => string): object {
  return {
    '@context': 'https://schema.org',
    '@type': 'BreadcrumbList',
    itemListElement: [...above, here].map(({ name, href }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name,
      item: absolute(href),
    })),
  };
}
