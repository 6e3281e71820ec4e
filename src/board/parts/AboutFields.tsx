/** What a piece is called and costs: asked once, before its file is made. */
import type { About } from '../model/saving.ts';
import type { Talk } from '../model/talk.ts';

type Props = {
  readonly about: About;
  /** The price by the shop's rule, written out; '' where none can be reckoned yet. */
  readonly rulePrice: string;
  readonly talk: Talk;
  readonly onChange: (about: About) => void;
};

export const isEnough = ({ name, summary }: About): boolean => name.trim() !== '' && summary.trim() !== '';

export function AboutFields({ about, rulePrice, talk, onChange }: Props) {
  const words = talk.words.about;
  const field = (name: keyof About, label: string, most: number) => (
    <label>
      {label}
      <input
        name={name}
        value={about[name]}
        maxLength={most}
        autocomplete="off"
        onInput={(event) => onChange({ ...about, [name]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <fieldset class="about">
      <legend>{words.heading}</legend>
      <div class="row">
        {field('name', words.name, 60)}
        {field('price', words.price, 20)}
      </div>
      {rulePrice !== '' && <p class="quiet">{words.priceHint(rulePrice)}</p>}
      {field('summary', words.summary, 200)}
      <label>
        {words.story}
        <textarea
          name="story"
          rows={3}
          value={about.story}
          maxLength={4000}
          aria-describedby="story-hint"
          onInput={(event) => onChange({ ...about, story: event.currentTarget.value })}
        />
      </label>
      <p id="story-hint" class="quiet">
        {words.storyHint}
      </p>
      {!isEnough(about) && <p>{words.missing}</p>}
    </fieldset>
  );
}
