/** Line drawings of where the tape goes. Each is 120 by 90; `tape` marks the tape, drawn in the accent colour. */
import type { Measure } from '#core/design/choice.ts';

type Lines = { readonly body: readonly string[]; readonly tape: readonly string[] };

const LINES: Readonly<Record<Measure['of'], Lines>> = {
  wrist: {
    body: [
      'M2 30C22 31 40 35 56 36C64 36 70 31 80 29L104 25C110 24 112 30 107 32L90 37',
      'M2 64C24 62 42 58 56 58C64 59 72 66 84 67L92 67C97 67 97 61 92 61L86 60',
      'M90 37L113 35C119 35 119 42 113 43L92 46',
      'M92 46L113 46C118 47 118 53 112 54L92 54',
      'M92 54L106 57C110 58 109 63 104 63L94 61',
      'M57 41C59 40 61 41 61 43',
    ],
    tape: ['M44 35C40 42 40 51 44 59', 'M50 36C46 43 46 51 50 58.5'],
  },
  ankle: {
    body: [
      'M46 2C46 20 50 34 51 48C52 58 44 64 43 72C42 79 48 82 58 82L104 82C111 82 111 74 105 72L84 65C76 62 72 56 72 46C73 32 77 18 78 2',
      'M58 60C60 57 64 57 65 60',
    ],
    tape: ['M50 40C56 44 67 44 73 40', 'M51 46C57 50 66 50 72.5 46'],
  },
  neck: {
    body: [
      'M40 2C39 14 45 24 49 28L48 48C46 58 30 62 12 68',
      'M80 2C81 14 75 24 71 28L72 48C74 58 90 62 108 68',
      'M49 28C55 34 65 34 71 28',
      'M30 66C42 68 52 70 57 74',
      'M90 66C78 68 68 70 63 74',
      'M59 38L60 41L61 38',
    ],
    tape: ['M48.6 43C54 47 66 47 71.4 43', 'M48.2 48C54 52 66 52 71.8 48'],
  },
  length: {
    body: [
      'M8 62H112V76H8Z',
      'M16 62V68M24 62V66M32 62V68M40 62V66M48 62V68M56 62V66M64 62V68M72 62V66M80 62V68M88 62V66M96 62V68M104 62V66',
      'M8 40a3 3 0 1 1 6 0a3 3 0 1 1-6 0M106 40a3 3 0 1 1 6 0a3 3 0 1 1-6 0',
      'M15 40a5 5 0 1 1 10 0a5 5 0 1 1-10 0M26 40a5 5 0 1 1 10 0a5 5 0 1 1-10 0M37 40a5 5 0 1 1 10 0a5 5 0 1 1-10 0M48 40a6 6 0 1 1 12 0a6 6 0 1 1-12 0M61 40a6 6 0 1 1 12 0a6 6 0 1 1-12 0M74 40a5 5 0 1 1 10 0a5 5 0 1 1-10 0M85 40a5 5 0 1 1 10 0a5 5 0 1 1-10 0M96 40a4.5 4.5 0 1 1 9 0a4.5 4.5 0 1 1-9 0',
    ],
    tape: ['M8 24H112M8 19V29M112 19V29', 'M8 44V62M112 44V62'],
  },
};

export function MeasurePicture({ of, label }: { readonly of: Measure['of']; readonly label: string }) {
  const { body, tape } = LINES[of];
  return (
    <svg class="sizer-how-picture" viewBox="0 0 120 90" role="img" aria-label={label}>
      <g fill="none" stroke="currentColor" stroke-width="1.4" stroke-linecap="round" stroke-linejoin="round">
        {body.map((line) => (
          <path key={line} d={line} />
        ))}
        <g class="sizer-tape" stroke-width="2">
          {tape.map((line) => (
            <path key={line} d={line} />
          ))}
        </g>
      </g>
    </svg>
  );
}
