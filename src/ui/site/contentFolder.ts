/** Where the content lies, as a path from the project's root. */
export const contentFolder = (): string => process.env.CLASPWISE_CONTENT ?? 'content';
