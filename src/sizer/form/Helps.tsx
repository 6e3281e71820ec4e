/** What would bring the piece to the wanted size: for the buyer to ask with one click, and the maker to decide. */
import type { Choice } from '#core/design/choice.ts';
import type { Help } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { mailtoLink } from '#order/mailtoLink.ts';
import type { Format } from '#words/format.ts';
import { helpSentence } from '#words/sectionName.ts';
import type { SizedWords } from '#words/words.ts';

/** Whom to ask, and about which piece. */
export type AskedOf = { readonly email: string; readonly piece: string };

export type HelpsProps = {
  readonly words: SizedWords;
  readonly format: Format;
  readonly design: Design;
  readonly help: readonly Help[];
  readonly choice: Choice;
  readonly asked: AskedOf;
};

export function Helps({ words, format, design, help, choice, asked }: HelpsProps) {
  if (help.length === 0) return null;
  const sentences = [...new Set(help.map((one) => helpSentence(design, one, words, format)))];
  const { of, mm } = choice.measure;
  const size = words.asked(format, of, mm, choice.sit);
  const { subject, body } = words.helpMail;
  const link = mailtoLink(asked.email, subject(asked.piece), body(asked.piece, size, sentences));
  return (
    <div>
      <h4>{words.helpTitle}</h4>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <a class="button plain" href={link}>
        {words.helpAsk}
      </a>
      <p class="sizer-hint">{words.helpAskHint}</p>
    </div>
  );
}
