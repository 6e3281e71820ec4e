/** The heading block of a guide; the rest of the file is Markdown. */
import { fields, text, whole } from '../fields/field.ts';

export const guideSchema = fields({
  title: text(80),
  summary: text(200),
  /** Place in lists, smallest first. */
  order: whole(0, 999),
});
