/** Sentences about a file as a whole: how it is saved, how it is written, and what a guide may hold. */
import type { CatalogueSentences } from '../catalogueCodes.ts';

export const contentFile: Pick<
  CatalogueSentences,
  | 'file-unreadable'
  | 'file-too-large'
  | 'file-not-utf8'
  | 'invisible-sign'
  | 'other-ending'
  | 'yaml'
  | 'tab-indent'
  | 'colon-inside'
  | 'yaml-references'
  | 'too-many-fields'
  | 'field-twice'
  | 'front-matter'
  | 'html-in-guide'
  | 'link-scheme'
> = {
  'file-unreadable': ({ why }) => ({
    what: `The file can’t be read (${why}).`,
    fix: 'Check that it is there and that you may open it.',
  }),
  yaml: ({ why }) => ({
    what: `The line can’t be read as YAML: ${why}.`,
    fix: 'Check the indent, the colon and one space after each field name, and quotes round a text that holds a colon or #.',
  }),
  'file-too-large': ({ kilobytes, most }) => ({
    what: `The file has ${kilobytes} KB; no more than ${most} KB are read.`,
    fix: 'Take apart what doesn’t belong together: components and wires may lie in several files.',
  }),
  'file-not-utf8': () => ({
    what: 'The file isn’t saved as UTF-8, so letters would be lost.',
    fix: 'Save it again in your editor with the encoding UTF-8.',
  }),
  'invisible-sign': ({ sign }) => ({
    what: `There is a sign in the text that nobody can see (${sign}).`,
    fix: 'Delete the word it stands in and type it again.',
  }),
  'other-ending': ({ ending, wanted }) => ({
    what: `The file ends in “${ending}” and would be passed over.`,
    fix: `Rename it so that it ends in “${wanted}”, or let its name begin with an underscore while it is a draft.`,
  }),
  'tab-indent': () => ({
    what: 'The line is indented with a tab, which YAML doesn’t allow.',
    fix: 'Indent with two blanks for each step; in most editors “replace tab with blanks” does it for the whole file.',
  }),
  'colon-inside': () => ({
    what: 'The text has a colon and a blank in it, and what follows is taken for another field.',
    fix: "Put the whole text in quotes: 'Moonstone: clear until you move'.",
  }),
  'yaml-references': () => ({
    what: 'References (&name and *name) or brackets in it stand for nothing, or for far too much.',
    fix: 'Write out what is meant, without & and *.',
  }),
  'too-many-fields': ({ most }) => ({
    what: `The file has more than ${most} fields.`,
    fix: 'Check whether it is the right file; components may be shared out among several.',
  }),
  'field-twice': ({ field }) => ({
    what: `“${field}” is written twice in the same place.`,
    fix: 'Keep the one that is right and take the other away.',
  }),
  'front-matter': () => ({
    what: 'The guide has no heading block.',
    fix: 'Begin the file with a line ---, then title, summary and order, then another line ---.',
  }),
  'html-in-guide': ({ tag }) => ({
    what: `“${tag}” is HTML, and a guide is plain text with Markdown.`,
    fix: 'Take it away. Headings are #, stress is *…*, links are [text](address).',
  }),
  'link-scheme': ({ address }) => ({
    what: `The link “${address}” doesn’t lead to a page, a file or an address.`,
    fix: 'Let it begin with https://, mailto:, tel: or / for a page of the shop.',
  }),
};
