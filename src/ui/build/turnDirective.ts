/** `client:turn` on an island: it comes alive when somebody turns to it. */
import type { AstroIntegration } from 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:turn'?: boolean;
  }
}

export function turnDirective(): AstroIntegration {
  return {
    name: 'turn-directive',
    hooks: {
      'astro:config:setup': ({ addClientDirective }) => {
        addClientDirective({ name: 'turn', entrypoint: '#sizer/wake.ts' });
      },
    },
  };
}
